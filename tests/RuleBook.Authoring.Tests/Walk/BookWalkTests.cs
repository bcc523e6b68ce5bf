using RuleBook.Authoring.Walk;

namespace RuleBook.Authoring.Tests.Walk;

/// <summary>Faults put into small books on purpose (derived).</summary>
public sealed class BookWalkTests
{
    private const string Sources = "sources: [{cite: law}]";

    [Fact]
    public void A_sound_book_has_no_fault() =>
        BookWalk
            .Walk(
                SmallBook.WithVersions(
                    $"- {{from: 2012-01-01, {Sources}, tiers: [{{pathway: no-certificate, within: {{total-lift: 50 mm}}}}, "
                        + $"{{pathway: certificate, within: {{total-lift: 75 mm}}}}], beyond: prohibited}}"
                )
            )
            .Faults.ShouldBeEmpty();

    [Fact]
    public void A_tier_that_lies_within_an_easier_one_is_never_reached()
    {
        var report = BookWalk.Walk(
            SmallBook.WithVersions(
                $"- {{from: 2012-01-01, {Sources}, tiers: [{{pathway: no-certificate, within: {{total-lift: 50 mm}}}}, {{pathway: "
                    + $"certificate, within: {{total-lift: 40 mm}}}}], beyond: prohibited}}"
            )
        );

        report
            .Faults.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                fault => fault.Kind.ShouldBe(FaultKind.Unreachable),
                fault => fault.Text.ShouldContain("'certificate'")
            );
    }

    [Fact]
    public void A_year_between_two_versions_in_which_nothing_is_recorded_is_found_with_a_day_in_it()
    {
        var tiers = "tiers: [{pathway: no-certificate, within: {total-lift: 50 mm}}], beyond: prohibited";
        var report = BookWalk.Walk(
            SmallBook.WithVersions(
                $"- {{from: 2010-01-01, until: 2012-01-01, {Sources}, {tiers}}}\n- {{from: 2013-01-01, {Sources}, {tiers}}}"
            )
        );

        report
            .Faults.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                fault => fault.Kind.ShouldBe(FaultKind.Hole),
                fault => fault.Witness!.Day.ShouldBe(new DateOnly(2012, 1, 1))
            );
    }

    [Fact]
    public void A_verdict_that_gets_easier_as_the_lift_grows_is_found_with_the_lift()
    {
        var report = BookWalk.Walk(
            SmallBook.WithVersions(
                $"- {{from: 2012-01-01, {Sources}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: {{over: 60 mm, "
                    + $"at-most: 75 mm}}}}}}, {{pathway: certificate, within: {{suspension-lift: 75 mm}}}}], beyond: prohibited}}"
            )
        );

        report
            .Faults.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                fault => fault.Kind.ShouldBe(FaultKind.Easier),
                fault => fault.Witness!.Yaml(TestBook.Book.Vocabulary).ShouldContain("suspension-lift: 60.1 mm")
            );
    }

    [Fact]
    public void A_category_that_no_rule_of_a_topic_binds_is_found_where_another_rule_names_it()
    {
        var report = BookWalk.Walk(SmallBook.Of(("au-qld", RideHeight("MC")), ("au-vic", RideHeight("MC, NA"))));

        report
            .Faults.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                fault => fault.Kind.ShouldBe(FaultKind.NotCovered),
                fault => fault.Rule.ShouldBe("au-qld/ride-height"),
                fault => fault.Text.ShouldContain("NA")
            );

        static string RideHeight(string categories) =>
            $$"""
                topic: ride-height
                rules:
                  - {rule: raise, title: Raising, for: {category: [{{categories}}]}, versions: [{from: 2012-01-01, {{Sources}},
                      not-regulated: there is no rule}]}
                """;
    }
}
