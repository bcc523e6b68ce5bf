using System.Globalization;
using RuleBook.Evaluation;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>The comparison: a page for the site's day and one for every day on which something changed.</summary>
internal static class ComparePages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site)
    {
        var shown = ChangeDays.At(site.ChangeDays, site.Day);
        yield return () => Of(site, site.Day, "compare.html", shown);
        foreach (var day in site.ChangeDays) yield return () => Of(site, day, Path(day), day);
    }

    public static string Path(DateOnly day) => $"compare/{Written(day)}.html";

    private static Page Of(SiteBook site, DateOnly day, string path, DateOnly change)
    {
        var body = Templates.Render(
            "compare",
            ("root", Page.Root(path)),
            ("day", Phrases.Day(day)),
            ("on", Written(day)),
            ("site_day", Written(site.Day)),
            ("columns", site.Places.Select(place => new Column(place.Id, place.Name, Links.Jurisdiction(place.Id))).ToArray()),
            ("groups", CompareModel.Of(site, day)),
            ("facts", site.Kinds.Facts.Select(fact => new FactChoice(fact.Name, fact.Title, [.. fact.Values])).ToArray()),
            ("days", site.ChangeDays.Select(each => new DayChoice(Written(each), each == change)).ToArray()));
        return new Page(path, day == site.Day ? "The states side by side" : $"The states side by side on {Phrases.Day(day)}", "compare", body, ["compare.js"]);
    }

    private static string Written(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>A fact by which the table is filtered.</summary>
internal sealed record FactChoice(string Name, string Title, string[] Values);

/// <summary>A day on which something changed.</summary>
internal sealed record DayChoice(string Day, bool Shown);
