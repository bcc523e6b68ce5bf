using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>The comparison: a page for the site's day and one for every day on which something changed.</summary>
internal static class ComparePages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site)
    {
        var groups = CompareGroup.Of(site);
        foreach (var group in groups)
        {
            var shown = ChangeDays.At(group.Days, site.Day);
            yield return () => Of(site, groups, group, site.Day, group.Path, shown);
            foreach (var day in group.Days) yield return () => Of(site, groups, group, day, Path(group, day), day);
        }
    }

    private static string Path(CompareGroup group, DateOnly day) => $"compare/{Links.Slug(group.Id)}/{Written(day)}.html";

    private static Page Of(SiteBook site, ImmutableArray<CompareGroup> groups, CompareGroup group, DateOnly day, string path, DateOnly change)
    {
        var model = CompareModel.Of(site, group, day);
        var body = Templates.Render(
            "compare",
            ("root", Page.Root(path)),
            ("day", Phrases.Day(day)),
            ("on", Written(day)),
            ("fresh", group.Path),
            ("folder", $"compare/{Links.Slug(group.Id)}/"),
            ("near", path.StartsWith($"compare/{Links.Slug(group.Id)}/", StringComparison.Ordinal) ? "" : $"{Page.Root(path)}compare/{Links.Slug(group.Id)}/"),
            ("others", groups.Where(other => other != group).Select(other => Other(other, group)).ToArray()),
            ("columns", group.Places.Select(place => new Column(place.Id, place.Name, Links.Jurisdiction(place.Id))).ToArray()),
            ("groups", model.Groups),
            ("wheres", model.Where),
            ("facts", group.Kinds.Facts.Select(fact => new FactChoice(fact.Name, fact.Title, [.. fact.Values])).ToArray()),
            ("days", group.Days.Select(each => new DayChoice(Written(each), each == change)).ToArray()));
        var title = $"Side by side: {group.Name}{(path == group.Path ? "" : $", {Phrases.Day(day)}")}";
        return new Page(path, title, "compare", body, ["compare.js"]);
    }

    private static OtherComparison Other(CompareGroup other, CompareGroup group) => new(
        other.Name,
        other.Path,
        [.. other.Places.Except(group.Places).Select(place => new Column(place.Id, place.Name, Links.Jurisdiction(place.Id)))]);

    private static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>Another nation's comparison, of which columns can be set beside this one's.</summary>
internal sealed record OtherComparison(string Text, string Url, Column[] Columns);

/// <summary>A fact by which the table is filtered.</summary>
internal sealed record FactChoice(string Name, string Title, string[] Values);

/// <summary>A day on which something changed.</summary>
internal sealed record DayChoice(string Day, bool Shown);
