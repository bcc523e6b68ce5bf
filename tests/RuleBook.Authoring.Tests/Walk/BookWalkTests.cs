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

    /// <summary>
    /// A rise of 60.1 mm is easier than one of 60 mm, a lowering of 30.1 mm than one of 30 mm; the smaller of them is told, with the place.
    /// </summary>
    [Fact]
    public void What_gets_easier_is_told_with_both_answers_and_the_smallest_change()
    {
        var fault = BookWalk
            .Walk(
                SmallBook.WithVersions(
                    $"- {{from: 2012-01-01, {Sources}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: {{at-least: -20 mm, "
                        + "at-most: 20 mm}}}, {pathway: certificate, when: {suspension-lift: {over: 60 mm}}, within: {body-lift: none}}, "
                        + "{pathway: certificate, when: {suspension-lift: {under: -30 mm}}, within: {body-lift: none}}], beyond: approval}"
                )
            )
            .Faults.ShouldHaveSingleItem();

        fault.Kind.ShouldBe(FaultKind.Easier);
        fault.Rule.ShouldBe("au-qld/ride-height/raise");
        $"{fault.Mark}".ShouldBe("jurisdictions/au-qld/ride-height.yaml:3:5");
        fault.Text.ShouldBe("suspension lift grows, and the answer goes from 'approval' to 'certificate'");
        fault
            .Witness!.Yaml(TestBook.Book.Vocabulary)
            .ShouldBe("registered-in: au-qld\non: 2012-01-01\nvehicle: {}\nmodification:\n  suspension-lift: -30.1 mm\n");
    }

    /// <summary>
    /// Parts of a total make up for each other: with 70 mm of springs a tyre that shrinks less brings more lift, and may be easier. Where
    /// all parts grow, or the others are as built, nothing makes up for it.
    /// </summary>
    [Theory]
    [InlineData("total-lift: {over: 60 mm}", 1)]
    [InlineData("total-lift: {over: 60 mm}, suspension-lift: {over: 60 mm}, tyre-diameter-growth: {under: 0 mm}", 0)]
    public void What_gets_easier_is_looked_for_where_no_other_part_of_the_total_goes_the_other_way(string when, int faults)
    {
        var report = BookWalk.Walk(
            SmallBook.WithVersions(
                $"- {{from: 2012-01-01, {Sources}, measured: {{total: [suspension-lift, tyre-lift]}}, tiers: [{{pathway: no-certificate, "
                    + $"within: {{total-lift: 20 mm}}}}, {{pathway: certificate, when: {{{when}}}, within: {{body-lift: "
                    + "none}}], beyond: approval}"
            )
        );
        report.Faults.Count(fault => fault.Kind == FaultKind.Easier).ShouldBe(faults);
    }

    /// <summary>A height over the ground is no change: there more may well be easier.</summary>
    [Theory]
    [InlineData("frame-height")]
    [InlineData("gvm")]
    public void What_is_no_change_may_allow_more(string measure) =>
        BookWalk
            .Walk(
                SmallBook.WithVersions(
                    $"- {{from: 2012-01-01, {Sources}, tiers: [{{pathway: no-certificate, when: {{{measure}: {{over: 600 "
                        + $"{(measure == "gvm" ? "kg" : "mm")}}}}}, within: {{body-lift: 50 mm}}}}], beyond: prohibited}}"
                )
            )
            .Faults.ShouldBeEmpty();

    /// <summary>A hole is told once, though days within it are walked twice: another rule begins there.</summary>
    [Fact]
    public void Faults_are_told_in_the_order_of_the_book_each_once_with_what_is_wrong()
    {
        var tiers = "tiers: [{pathway: no-certificate, within: {total-lift: 50 mm}}], beyond: prohibited";
        var report = BookWalk.Walk(
            SmallBook.WithVersions(
                $"- {{from: 2010-01-01, until: 2012-01-01, {Sources}, {tiers}}}\n- {{from: 2013-01-01, until: 2014-01-01, {Sources}, "
                    + $"tiers: [{{pathway: certificate, within: {{total-lift: 50 mm}}}}, {{pathway: certificate, name: less, within: "
                    + $"{{total-lift: 40 mm}}}}], beyond: prohibited}}",
                more: $"- {{rule: other, title: Other, versions: [{{from: 2012-06-01, until: 2012-07-01, {Sources}, {tiers}}}]}}"
            )
        );

        report
            .Faults.Select(fault => $"{fault.Mark.Line}:{fault.Mark.Column} {fault.Rule}: {fault.Text}, {fault.Witness?.Day:yyyy-MM-dd}")
            .ShouldBe([
                "3:5 au-qld/ride-height/raise: nothing is recorded between two versions, or after the last, 2012-01-01",
                "7:132 au-qld/ride-height/raise: the tier 'less' is never reached: what it allows is given by tiers before it, ",
                "8:5 au-qld/ride-height/other: nothing is recorded between two versions, or after the last, 2012-07-01",
            ]);
    }

    /// <summary>
    /// A vehicle of category NA has a GVM of at most 3.5 t, one of NB1 over 3.5 t and at most 4.5 t (Vehicle Standard (Australian Design
    /// Rule - Definitions and Vehicle Categories) 2005); other vehicles are not.
    /// </summary>
    [Theory]
    [Trait("Basis", "published")]
    [InlineData("{category: NA, gvm: {at-most: 3000 kg}}", "category NA, gvm 3001 kg")]
    [InlineData("{category: NA, gvm: {at-most: 3500 kg}}", null)]
    [InlineData("{category: NB1, gvm: {over: 3500 kg}}", null)]
    [InlineData("{category: NB1, gvm: {over: 3501 kg}}", "category NB1, gvm 3501 kg")]
    [InlineData("{category: NB1, gvm: {at-most: 4499 kg}}", "category NB1, gvm 4500 kg")]
    [InlineData("{category: NB1, gvm: {at-most: 4500 kg}}", null)]
    public void A_mass_that_no_rule_covers_is_told_where_some_vehicle_of_the_category_has_it(string whom, string? told)
    {
        var faults = BookWalk
            .Walk(
                SmallBook.Of(
                    (
                        "au-qld",
                        $"topic: ride-height\nrules:\n  - {{rule: raise, title: Raising, for: {whom}, versions: [{{from: "
                            + $"2012-01-01, {Sources}, "
                            + "not-regulated: there is no rule}]}\n"
                    )
                )
            )
            .Faults;

        faults.Select(fault => fault.Text).ShouldBe(told is null ? [] : [$"no rule on ride-height covers {told}"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData(
        "- {rule: draft, title: Draft, for: {category: NA}, versions: [{proposed: yes, sources: [{cite: law}], not-regulated: none}]}"
    )]
    [InlineData("- {rule: road, title: On the road, governed-by: travel, from: 2012-01-01, sources: [{cite: law}], not-regulated: none}")]
    public void A_category_that_no_rule_of_a_topic_binds_is_found_where_another_rule_names_it(string more)
    {
        var report = BookWalk.Walk(SmallBook.Of(("au-qld", $"{RideHeight("MC")}\n  {more}"), ("au-vic", RideHeight("MC, NA"))));

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
                      not-regulated: there is no rule}, {proposed: yes, {{Sources}}, not-regulated: none}]}
                """;
    }
}
