using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>What a version says, in one line.</summary>
internal static class Summary
{
    public static string Of(SiteBook site, RuleVersion version) =>
        Of(site, version.Content) + (version.WarningOnly ? "; a breach brings a warning only" : "");

    public static string Of(SiteBook site, Content content) =>
        content switch
        {
            Stated stated => string.Join(
                "; ",
                stated
                    .Tiers.Select(tier => Of(site, tier))
                    .Append($"beyond: {(stated.Beyond is { } beyond ? Phrases.Pathway(beyond) : "not established")}")
            ),
            Adoption adoption => $"adopts {adoption.Rule} "
                + $"{(adoption.AsOf is { } day ? $"as it stood on {Phrases.Day(day)}" : "as amended from time to time")}"
                + (
                    adoption.Exceptions.IsEmpty
                        ? ""
                        : $", except: {string.Join("; ", adoption.Exceptions.Select(change => Of(site, change)))}"
                ),
            NotRegulated => "not regulated",
            _ => "not established",
        };

    public static string Of(SiteBook site, Departure change)
    {
        if (change.Added is { } added)
            return $"own tier {Of(site, added)}";
        if (change.Beyond is { } beyond)
            return $"beyond: {(beyond.Pathway is { } holds ? Phrases.Pathway(holds) : "not established")}";
        if (change.Dropped)
            return $"without the tier {change.Tier}";
        var limits = string.Join(", ", change.Limits.Select(limit => Of(site, limit)));
        var conditions = change.Provided is { } provided ? $"to show: {string.Join(", ", provided.Select(site.ConditionTitle))}" : "";
        var gives = change.Pathway is { } pathway ? Say.Short(pathway) : "";
        var when = change.When is { } opens ? $"for {Say.When(site.Words, opens)}" : "";
        var codes = change.Codes is { } named ? $"codes {string.Join(", ", named)}" : "";
        return $"tier {change.Tier}: {string.Join("; ", new[] { gives, when, limits, conditions, codes }.Where(text => text.Length > 0))}";
    }

    private static string Of(SiteBook site, Tier tier)
    {
        var when = Say.When(site.Words, tier.When);
        var limits = tier.Limits.IsEmpty ? "no limits stated" : string.Join(", ", tier.Limits.Select(limit => Of(site, limit)));
        return $"{Say.Short(tier.Pathway)}{(when.Length > 0 ? $" ({when})" : "")}: {limits}";
    }

    private static string Of(SiteBook site, Limit limit) =>
        site.Words.Measures.TryGetValue(limit.Measure, out var measure) ? $"{measure.Title} {Say.Limit(measure, limit)}" : limit.Measure;
}
