using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Comparison;
using RuleBook.Site.Limits;

namespace RuleBook.Site.Changes;

/// <summary>What a version changes, in figures: the lines that hold no longer, and those that hold from its day on.</summary>
internal sealed record FigureChange(string[] Before, string[] After)
{
    private const string Nothing = "nothing in the book";

    /// <summary>Whether nothing is established after a time of which the book has nothing.</summary>
    public bool IsOpen => Before is [Nothing] && After is ["not established"];

    public static FigureChange Of(SiteBook site, Rule rule, RuleVersion version)
    {
        var at = rule.Versions.IndexOf(version);
        var earlier = rule.Versions.Take(at < 0 ? 0 : at).LastOrDefault(each => each.Decides);
        var day = (version.From ?? version.Announced)?.Earliest ?? site.Day;
        string[] after = [.. Lines(site, rule, version, (version.From ?? version.Announced)?.Latest ?? day)];
        if (earlier is null)
            return new FigureChange([Nothing], after);
        string[] before = [.. Lines(site, rule, earlier, day == DateOnly.MinValue ? day : day.AddDays(-1))];
        return new FigureChange(Told(before.Except(after)), Told(after.Except(before)));
    }

    private static string[] Told(IEnumerable<string> lines) => lines.ToArray() is { Length: > 0 } told ? told : ["no other figure"];

    private static IEnumerable<string> Lines(SiteBook site, Rule rule, RuleVersion version, DateOnly day) =>
        VersionAlone.On(site.Book, rule, version, day).SelectMany(resolved => Lines(site, resolved)).Distinct();

    private static IEnumerable<string> Lines(SiteBook site, ResolvedVersion version) =>
        [.. Content(site, version), .. version.WarningOnly ? ["a breach brings a warning only"] : Array.Empty<string>()];

    private static IEnumerable<string> Content(SiteBook site, ResolvedVersion version) =>
        version.Content switch
        {
            Stated stated => stated
                .Tiers.Select(tier => Line(site, tier))
                .Append($"beyond: {(stated.Beyond is { } beyond ? Say.Short(beyond) : "not established")}"),
            NotRegulated => ["not regulated"],
            _ => ["not established"],
        };

    private static string Line(SiteBook site, Tier tier)
    {
        var when = Say.When(site.Words, tier.When);
        return $"{Say.Short(tier.Pathway)}{(when.Length > 0 ? $" ({when})" : "")}: {TierWords.Of(site, tier, named: false)}";
    }
}
