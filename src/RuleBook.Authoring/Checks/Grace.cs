using RuleBook.Facts;
using RuleBook.Law;

namespace RuleBook.Authoring.Checks;

/// <summary>Tiers that spare what was altered before a day, and whether a later version of the rule no longer has them.</summary>
internal static class Grace
{
    /// <summary>The tiers of a version that do so, each with the test of the day.</summary>
    internal static IEnumerable<(Tier Tier, FactTest Test)> Of(RuleVersion version) =>
        from tier in version.Content is Stated stated ? stated.Tiers : []
        from test in tier.When.Tests
        where test.Fact == JobFacts.Altered && test.Bounds?.Upper is not null
        select (tier, test);

    /// <summary>The version after this one that states tiers and spares nothing any more; null where none does.</summary>
    internal static RuleVersion? End(Rule rule, RuleVersion version) =>
        rule.Versions.Where(later => later.Decides).SkipWhile(each => each != version).Skip(1).FirstOrDefault(later => !Of(later).Any())
            is { Content: Stated } end
            ? end
            : null;
}
