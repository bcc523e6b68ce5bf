using RuleBook.Answers;
using RuleBook.Authoring.Resolved;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>A bound that is a share of another measure (the rules are invented; the products are worked by hand).</summary>
public sealed class ShareTests
{
    private static readonly Book OneFifth = With("front-bumper-height: { at-most: { share: 20 %, of: wheelbase } }");
    private static readonly Book Lesser = With("front-bumper-height: { at-most: [600 mm, { share: 20 %, of: wheelbase }] }");

    [Theory]
    [InlineData("2800 mm", "560 mm", Pathway.NoCertificate)] // 20 % of 2800 mm is 560 mm
    [InlineData("2800 mm", "560.001 mm", Pathway.Prohibited)]
    [InlineData("2799.995 mm", "560 mm", Pathway.Prohibited)]
    [InlineData("110 in", "22 in", Pathway.NoCertificate)] // 20 % of 110 in is 22 in
    [InlineData("110 in", "22.001 in", Pathway.Prohibited)]
    public void A_bumper_at_most_a_fifth_of_the_wheelbase_high_is_judged_by_the_exact_product(
        string wheelbase,
        string height,
        Pathway gives
    ) => Answer(OneFifth, Job(wheelbase, height)).ShouldBe(Only(gives));

    [Theory]
    [InlineData("2800 mm", "560.1 mm", Pathway.Prohibited)] // 20 % of 2800 mm is less than 600 mm
    [InlineData("3200 mm", "600 mm", Pathway.NoCertificate)] // 20 % of 3200 mm is 640 mm
    [InlineData("3200 mm", "600.1 mm", Pathway.Prohibited)]
    public void Of_a_quantity_and_a_share_in_a_list_the_lesser_binds(string wheelbase, string height, Pathway gives) =>
        Answer(Lesser, Job(wheelbase, height)).ShouldBe(Only(gives));

    [Theory]
    [InlineData("540 mm", "560 mm", Pathway.NoCertificate)]
    [InlineData("560 mm", "560 mm", Pathway.NoCertificate)]
    [InlineData("560.1 mm", "560 mm", Pathway.Prohibited)]
    public void Two_measures_compared_are_a_share_of_100_percent(string front, string rear, Pathway gives) =>
        Answer(
                With("front-bumper-height: { at-most: { share: 100 %, of: rear-bumper-height } }"),
                $"{{ registered-in: au-qld, on: 2026-11-28, measured: {{ front-bumper-height: {front}, rear-bumper-height: {rear} }} }}"
            )
            .ShouldBe(Only(gives));

    [Theory]
    [InlineData("", "560 mm", "vehicle.wheelbase")]
    [InlineData("2800 mm", "", "measured.front-bumper-height")]
    public void Without_one_of_the_two_measures_nothing_is_free_and_that_one_is_asked_for(string wheelbase, string height, string asked)
    {
        var answer = Assessed(OneFifth, Job(wheelbase, height));

        answer.Between.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        answer.Undecided.Select(effect => effect.Opening.Name).ShouldBe([asked]);
        answer
            .Undecided.SelectMany(effect => effect.Merged())
            .Select(each => each.Label)
            .ShouldContain("front bumper height as a share of the wheelbase at most 20 %");
    }

    [Fact]
    public void A_range_of_which_both_ends_are_shares_is_one_range()
    {
        var book = With("front-bumper-height: { over: { share: 15 %, of: wheelbase }, under: { share: 20 %, of: wheelbase } }");

        Answer(book, Job("3000 mm", "450 mm")).ShouldBe(Only(Pathway.Prohibited)); // 15 % is 450 mm, and it must be over that
        Answer(book, Job("3000 mm", "450.1 mm")).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job("3000 mm", "600 mm")).ShouldBe(Only(Pathway.Prohibited)); // 20 % is 600 mm, and it must be under that
    }

    [Fact]
    public void The_share_is_told_beside_its_limit_in_words_in_JSON_and_in_the_resolved_text()
    {
        var answer = Assessed(OneFifth, Job("2800 mm", "588 mm"));

        string.Join("\n", Telling.ReadAnswer.Of(answer).Parts.SelectMany(part => part.Lines))
            .ShouldContain("front bumper height as a share of the wheelbase 21 %, limit 20 %");
        AssessmentJson.Write(answer).ShouldContain("\"front-bumper-height-per-wheelbase\"");
        AssessmentJson.Write(answer).ShouldContain("588 of 2800 mm");
        ResolvedText.Of(OneFifth, OneFifth.Jurisdiction("au-qld")!).ShouldContain("front-bumper-height-per-wheelbase: at most 20 %");
    }

    [Fact]
    public void A_share_that_is_amended_shows_in_the_answers_with_a_job_for_it()
    {
        var after = With("front-bumper-height: { at-most: { share: 25 %, of: wheelbase } }");

        var report = Between(OneFifth, after);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(OneFifth, after);
    }

    [Fact]
    public void A_figure_that_becomes_a_share_or_a_share_a_figure_shows_in_the_answers()
    {
        var figure = With("front-bumper-height: 700 mm");

        foreach (var (before, after) in new[] { (figure, OneFifth), (OneFifth, figure) })
        {
            var report = Between(before, after);
            report.Answers.ShouldNotBeEmpty();
            report.ShouldBeConfirmed(before, after);
        }
    }

    private static Book With(string limits) =>
        SmallBook.WithVersions(
            $$"""
            - from: 2011-01-01
              sources: [ { cite: law, clause: "1" } ]
              tiers: [ { pathway: no-certificate, within: { {{limits}} } } ]
              beyond: prohibited
            """
        );

    private static Assessment Assessed(Book book, string job) => Assessor.Assess(book, JobReader.Read(YamlText.Read(job, "job"), book));

    private static string Job(string wheelbase, string height) =>
        $"{{ registered-in: au-qld, on: 2026-11-28, vehicle: {{ category: "
        + $"MC{(wheelbase.Length > 0 ? $", wheelbase: {wheelbase}" : "")} }}, modification: {{ suspension-lift: 10 mm "
        + $"}}{(height.Length > 0 ? $", measured: {{ front-bumper-height: {height} }}" : "")} }}";
}
