using RuleBook.Authoring.Walk;

namespace RuleBook.Authoring.Tests.Walk;

/// <summary>Faults put into small books on purpose (derived); and the book of this repository, in which there should be none.</summary>
public sealed class BookWalkTests(ITestOutputHelper output)
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

    [Fact]
    public void The_book_has_an_answer_everywhere_and_none_gets_easier_when_a_measure_grows()
    {
        var report = BookWalk.Walk(TestBook.Book);

        output.WriteLine(
            $"{report.Rules} rules, {report.Spans} stretches of days, {report.Cells} cells, {report.Tiers} tiers reached, "
                + $"{report.Partial} comparisons of partial with full knowledge"
        );
        report.Cells.ShouldBeGreaterThan(100_000);
        report
            .Faults.Where(fault => !IsOfHeavyVehicles(fault) && !IsAnOpenQuestion(fault))
            .Select(fault => $"{fault.Mark}: {fault.Kind} {fault.Rule}: {fault.Text}\n{fault.Witness?.Yaml(TestBook.Book.Vocabulary)}")
            .ShouldBeEmpty();
    }

    /// <summary>
    /// Vehicles of more than 4.5 t (NB2, MD4, and any whose GVM says so: Vehicle Standard (Australian Design Rule - Definitions and Vehicle
    /// Categories) 2005) are outside the rules for light vehicles; where a place has no rule of its own for them, an answer says that
    /// nobody judged.
    /// </summary>
    private static bool IsOfHeavyVehicles(WalkFault fault) =>
        fault is { Kind: FaultKind.NotCovered, Witness: { } vehicle }
        && (
            vehicle.Words.GetValueOrDefault("category") is "MD4" or "NB2"
            || vehicle.Measures.Any(pair => pair.Key.Name == "gvm" && pair.Value > 4500)
        );

    /// <summary>
    /// South Australia's guide of 2026 gives 50 mm to a "4WD" without saying whether an all-wheel-drive car is one: the tier opens the
    /// answer and allows nothing.
    /// </summary>
    private static bool IsAnOpenQuestion(WalkFault fault) =>
        fault is { Kind: FaultKind.Unreachable, Rule: "au-sa/tyres-and-wheels/tyre-diameter-four-wheel-drive-car" }
        && fault.Text.Contains("'as-a-four-wheel-drive'", StringComparison.Ordinal);
}
