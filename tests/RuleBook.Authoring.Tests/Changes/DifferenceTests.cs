using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Tables;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>Small edits of small books, each with the job that must show it (derived from the figures edited).</summary>
public sealed class DifferenceTests
{
    private const string Sources = "sources: [{cite: law}]";

    [Theory]
    [InlineData("50 mm", "50.1 mm", "suspension-lift: 50.1 mm")] // the new limit is the only tenth of a millimetre that is freed
    [InlineData("50.1 mm", "50 mm", "suspension-lift: 50.1 mm")]
    [InlineData("50 mm", "75 mm", "suspension-lift: 50.1 mm")] // the first tenth above the old limit
    [InlineData("{ under: 50 mm }", "50 mm", "suspension-lift: 50 mm")] // at the limit itself
    [InlineData("50.7 mm", "2 in", "suspension-lift: 50.8 mm")] // 2 in = 50.8 mm (the inch of 25.4 mm)
    public void The_smallest_job_stands_at_the_edge_that_moved(string before, string after, string shows)
    {
        var (old, now) = (Limit(before), Limit(after));
        var report = Between(old, now);

        var change = report.Answers.ShouldHaveSingleItem();
        change.Witness.Yaml.ShouldContain(shows + "\n");
        report.ShouldBeConfirmed(old, now);
    }

    [Fact]
    public void A_condition_that_is_added_shows_where_it_is_not_met()
    {
        var (old, now) = (Limit("50 mm"), Limit("50 mm", "provided: [tyres-suit-rims]"));
        var report = Between(old, now);

        var change = report.Answers.ShouldHaveSingleItem();
        (change.Before, change.After).ShouldBe((Only(Pathway.NoCertificate), Only(Pathway.Prohibited)));
        change.Witness.Yaml.ShouldContain("tyres-suit-rims: no");
        report.ShouldBeConfirmed(old, now);
    }

    [Fact]
    public void A_change_that_a_later_version_takes_back_ends_there()
    {
        var old = SmallBook.WithVersions(Version("2012-01-01", "50 mm"));
        var now = SmallBook.WithVersions(
            $"{Version("2012-01-01", "50 mm")}\n{Version("2018-07-01", "75 mm")}\n{Version("2020-07-01", "50 mm")}"
        );

        var change = Between(old, now).Answers.ShouldHaveSingleItem();

        (change.From, change.Until).ShouldBe((new DateOnly(2018, 7, 1), new DateOnly(2020, 7, 1)));
    }

    /// <summary>Another rule begins anew on the second day; it says the same on either side.</summary>
    [Fact]
    public void A_change_that_goes_on_is_told_once_though_another_rule_has_a_boundary_within()
    {
        static Book Of(string limit) =>
            SmallBook.WithVersions(
                Version("2012-01-01", limit),
                more: $"- {{rule: other, title: Other, versions: [{{from: 2010-01-01, {Sources}, not-regulated: it is not}}, "
                    + $"{{from: 2015-01-01, {Sources}, not-regulated: it is not}}]}}"
            );

        var change = Between(Of("50 mm"), Of("60 mm")).Answers.ShouldHaveSingleItem();
        (change.From, change.Until, change.Witness.Says).ShouldBe((new DateOnly(2012, 1, 1), null, "suspension lift 50.1 mm"));
    }

    [Fact]
    public void The_same_change_for_other_vehicles_from_a_day_on_is_another()
    {
        static string On(string day, string driven, string other) =>
            $"- {{from: {day}, {Sources}, beyond: prohibited, tiers: [{{pathway: no-certificate, name: driven, when: "
            + "{four-wheel-drive: yes}, "
            + $"within: {{suspension-lift: {driven}}}}}, {{pathway: no-certificate, when: {{four-wheel-drive: no}}, within: "
            + "{suspension-lift: "
            + $"{other}}}}}]}}";

        Between(
            SmallBook.WithVersions($"{On("2012-01-01", "50 mm", "50 mm")}\n{On("2015-01-01", "50 mm", "50 mm")}"),
            SmallBook.WithVersions($"{On("2012-01-01", "60 mm", "50 mm")}\n{On("2015-01-01", "50 mm", "60 mm")}")
        )
            .Answers.Select(change => $"{ChangeWords.Vehicles(change)} {ChangeWords.Days(change)}: {change.Witness.Says}")
            .ShouldBe([
                "four-wheel drive yes from 1 January 2012 until 1 January 2015: suspension lift 50.1 mm",
                "four-wheel drive no from 1 January 2015: suspension lift 50.1 mm",
            ]);
    }

    [Fact]
    public void A_change_of_the_national_rule_shows_in_a_state_that_adopts_it_as_amended_and_not_in_one_that_took_it_as_it_stood()
    {
        var (old, now) = (
            Nation(Version("2012-01-01", "50 mm")),
            Nation($"{Version("2012-01-01", "50 mm")}\n{Version("2018-07-01", "75 mm")}")
        );
        var report = Between(old, now);

        report.Answers.Select(change => change.Jurisdiction).ShouldBe(["au", "au-vic"]);
        report.Answers[1].Rule.ShouldBe("au-vic/ride-height/raise");
        report.Answers[1].Mark.File.ShouldBe("jurisdictions/au/ride-height.yaml");
        report.ShouldBeConfirmed(old, now);
    }

    /// <summary>
    /// Invented: motor cycles without a side-car need not be named any more, or have to be from now on; one rule does name them.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_category_that_a_rule_binds_only_where_named_in_one_of_the_books_is_answered_otherwise_and_no_other(bool freed)
    {
        var lowering =
            "- rule: lower\n  title: Lowering\n  for: { category: [LC, LD], suspension-lift: { under: 0 mm } }\n"
            + $"  versions: [{{from: 2012-01-01, {Sources}, not-regulated: there is no rule}}]";
        var named = SmallBook.WithVersions(Version("2012-01-01", "50 mm"), more: lowering);
        var free = NeedNotBeNamed(named, "LC");

        var report = freed ? Between(named, free) : Between(free, named);

        report
            .Answers.Select(change => freed ? (change.Before, change.After) : (change.After, change.Before))
            .ShouldBe(
                [
                    (new Outcome(Pathway.NoCertificate, Pathway.Prohibited), Only(Pathway.NoCertificate)),
                    (new Outcome(Pathway.NoCertificate, Pathway.Prohibited), Only(Pathway.Prohibited)),
                ],
                ignoreOrder: true
            );
        report.Answers.ShouldAllBe(change => change.Rule == "au-qld/ride-height/raise");
        report
            .Answers.SelectMany(change => change.Vehicles)
            .ShouldAllBe(word => word.Fact == "category" && string.Join(" ", word.Words) == "LC");
        report.Answers.ShouldAllBe(change => change.Witness.Yaml.Contains("category: LC"));
        report.ShouldBeConfirmed(freed ? named : free, freed ? free : named);
    }

    private static Book NeedNotBeNamed(Book book, string category)
    {
        var fact = book.Vocabulary.Facts["category"];
        var named = fact.WhereNamed.Remove(category);
        return book with
        {
            Vocabulary = book.Vocabulary with
            {
                Facts = book.Vocabulary.Facts.SetItem(
                    fact.Name,
                    fact with
                    {
                        Values = [.. fact.Values.Except(named), .. named],
                        WhereNamed = named,
                    }
                ),
            },
        };
    }

    [Fact]
    public void A_rule_that_is_taken_away_leaves_the_answer_open_and_is_named_with_its_old_place()
    {
        var other =
            "- rule: lower\n  title: Lowering\n  for: { suspension-lift: { under: 0 mm } }\n"
            + $"  versions: [{{from: 2012-01-01, {Sources}, not-regulated: there is no rule}}]";
        var old = SmallBook.WithVersions(Version("2012-01-01", "50 mm"), more: other);
        var now = SmallBook.Of(("au-qld", $"topic: ride-height\nrules:\n  {other.Replace("\n", "\n  ", StringComparison.Ordinal)}"));

        var report = Between(old, now);

        report.Answers.ShouldContain(change => change.Removed && change.Rule == "au-qld/ride-height/raise" && change.Mark.Line > 1);
        report.Remarks.ShouldContain(remark =>
            remark.About == "au-qld/ride-height/raise" && remark.Text.Contains("vanished", StringComparison.Ordinal)
        );
        report.ShouldBeConfirmed(old, now);
    }

    [Fact]
    public void A_limit_on_a_rating_is_shown_with_the_ratings_that_a_job_can_state()
    {
        // derived: an increase is the rating asked for less the rating before
        var now = Of(
            path => path == "jurisdictions/au-sa/mass-ratings.yaml",
            text => text.Replace("4500 kg", "4400 kg", StringComparison.Ordinal)
        );
        var report = BookChanges.Between(TestBook.Book, now);

        report.Answers.ShouldContain(change => change.Jurisdiction == "au-sa" && change.Topic == "mass-ratings");
        report.ShouldBeConfirmed(TestBook.Book, now);
    }

    [Fact]
    public void A_limit_on_the_width_of_tyres_is_shown_with_tyre_sizes()
    {
        // derived: 33x12.50R15LT and 35x12.50R17LT are 317.5 mm wide, 155 % of 205 mm and 163 % of 195 mm
        var now = Of(
            path => path == "jurisdictions/au/tyres-and-wheels.yaml",
            text => text.Replace("150 %", "165 %", StringComparison.Ordinal)
        );
        var report = BookChanges.Between(TestBook.Book, now);

        report.Answers.ShouldContain(change =>
            change.Topic == "tyres-and-wheels" && change.Witness.Says.StartsWith("tyres ", StringComparison.Ordinal)
        );
        report.ShouldBeConfirmed(TestBook.Book, now);
    }

    [Fact]
    public void A_jurisdiction_that_is_added_is_told_and_compared_with_nothing()
    {
        var (old, now) = (SmallBook.WithVersions(Version("2012-01-01", "50 mm")), Nation(Version("2012-01-01", "50 mm")));

        Between(old, now)
            .Remarks.Select(remark => (remark.Kind, remark.Jurisdiction))
            .ShouldBe(
                [
                    (RemarkKind.JurisdictionAdded, "au"),
                    (RemarkKind.JurisdictionAdded, "au-nt"),
                    (RemarkKind.JurisdictionAdded, "au-vic"),
                    (RemarkKind.JurisdictionRemoved, "au-qld"),
                ],
                ignoreOrder: true
            );
    }

    [Fact]
    public void Another_mass_at_which_a_lift_is_measured_is_told_beside_the_answers()
    {
        var (old, now) = (
            Limit("50 mm", measured: "measured: { mass-state: tare }"),
            Limit("50 mm", measured: "measured: { mass-state: unladen }")
        );
        var report = Between(old, now);

        report.Answers.ShouldBeEmpty();
        var remark = report.Remarks.ShouldHaveSingleItem();
        remark.Kind.ShouldBe(RemarkKind.Measured);
        remark.Text.ShouldContain("unladen instead of at tare");
    }

    /// <summary>Neither what is proposed nor what follows is measured otherwise.</summary>
    [Fact]
    public void How_a_lift_is_measured_is_told_where_the_version_stands_that_measures_otherwise()
    {
        static Book Measured(string state) =>
            SmallBook.WithVersions(
                $"- {{from: unknown, in-force-by: 2014-02-03, {Lift(50, state)}}}\n- {{from: 2018-01-01, {Lift(75, "unladen")}}}\n"
                    + $"- {{proposed: yes, {Lift(90, "unladen")}}}"
            );
        static string Lift(int mm, string state) =>
            $"{Sources}, measured: {{mass-state: {state}}}, tiers: [{{pathway: no-certificate, within: {{suspension-lift: {mm} mm}}}}], "
            + "beyond: prohibited";
        var now = Measured("unladen");

        var remark = Between(Measured("tare"), now).Remarks.ShouldHaveSingleItem();

        remark.Text.ShouldBe("measured at unladen instead of at tare");
        remark.Mark.ShouldBe(now.Rule("au-qld/ride-height/raise")!.Versions[0].Mark);
    }

    [Fact]
    public void A_measure_that_now_asks_for_a_rule_of_its_own_leaves_open_what_no_rule_speaks_of()
    {
        // derived: the rule speaks of the suspension alone, so a body lift was allowed by its silence
        var old = Limit("50 mm");
        var measures = old.Vocabulary.Measures;
        var asking = measures.SetItem("body-lift", measures["body-lift"] with { NeedsOwnRule = true });
        var now = old with { Vocabulary = old.Vocabulary with { Measures = asking } };
        var report = Between(old, now);

        var change = report.Answers.ShouldHaveSingleItem();
        (change.Before, change.After).ShouldBe((Only(Pathway.NoCertificate), new Outcome(Pathway.NoCertificate, Pathway.Prohibited)));
        change.Witness.Says.ShouldStartWith("body lift ");
        report.ShouldBeConfirmed(old, now);
    }

    [Fact]
    public void A_rule_of_use_that_changes_is_told_though_it_enters_no_verdict()
    {
        var now = Of(
            path => path == "jurisdictions/au-sa/towing.yaml",
            text => text.Replace("{ trailer-mass: 750 kg }", "{ trailer-mass: 760 kg }", StringComparison.Ordinal)
        );

        var change = BookChanges.Between(TestBook.Book, now).Answers.ShouldHaveSingleItem();

        (change.Jurisdiction, change.Topic).ShouldBe(("au-sa", "towing"));
        (change.Before, change.After).ShouldBe((Only(Pathway.Prohibited), Only(Pathway.NoCertificate)));
        change.Witness.Yaml.ShouldContain("mass: 751 kg"); // derived: the first kilogram above the old limit
        change.Witness.Yaml.ShouldContain("trailer-braked: no");
    }

    private static Book Limit(string limit, string provided = "", string measured = "") =>
        SmallBook.WithVersions(Version("2012-01-01", limit, provided, measured));

    private static string Version(string from, string limit, string provided = "", string measured = "") =>
        $"- {{from: {from}, {Sources}, "
        + $"{(measured.Length > 0 ? measured + ", " : "")}tiers: [{{pathway: no-certificate, "
        + $"within: {{suspension-lift: {limit}}}{(provided.Length > 0 ? ", " + provided : "")}}}], beyond: prohibited}}";

    private static Book Nation(string versions)
    {
        return SmallBook.Of(("au", File(versions)), ("au-nt", File(Adopts("2015-01-01"))), ("au-vic", File(Adopts("amended"))));

        static string File(string versions) =>
            "topic: ride-height\nrules:\n  - rule: raise\n    title: Raising\n    versions:\n      "
            + $"{versions.Replace("\n", "\n      ", StringComparison.Ordinal)}";

        static string Adopts(string asOf) => $"- {{from: 2012-01-01, {Sources}, adopts: {{rule: au/ride-height/raise, as-of: {asOf}}}}}";
    }
}
