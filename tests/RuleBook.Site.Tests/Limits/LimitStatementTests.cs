namespace RuleBook.Site.Tests.Limits;

/// <summary>Which tiers of a rule are told: those that some vehicle of the rule can open (an invented place).</summary>
public sealed class LimitStatementTests
{
    [Theory]
    [InlineData("", "{ category: [MA] }", true)]
    [InlineData("{ category: [MA] }", "{ category: [MA, MB] }", true)]
    [InlineData("{ category: [MA] }", "{ category: [MB] }", false)]
    [InlineData("{ any-of: [{ category: [MA] }, { category: [MB] }] }", "{ category: [MB] }", true)]
    [InlineData("", "{ category: [TC] }", false)] // a trailer is bound only where a rule names it
    [InlineData("{ any-of: [{ category: [MA] }, { category: [TC] }] }", "{ category: [TC] }", true)]
    [InlineData("{ category: [MA], gvm: { at-most: 3500 kg } }", "{ gvm: { over: 3500 kg } }", true)] // by words alone
    public void A_tier_that_no_vehicle_of_its_rule_opens_is_told_nowhere(string binds, string opens, bool told)
    {
        var vehicles = binds.Length > 0 ? $"for: {binds}, " : "";
        var site = InventedPlace.With(
            "ride-height",
            $"  - {{ rule: raise, title: Raising, from: 2010-01-01, sources: [{{ cite: code }}], {vehicles}beyond: prohibited, tiers: "
                + $"[{{ pathway: certificate, when: {opens}, within: {{ total-lift: 40 mm }} }}] }}\n"
        );
        site.Lines.Select(line => line.Measure).ShouldBe(told ? ["total-lift", "beyond"] : ["beyond"]);
    }
}
