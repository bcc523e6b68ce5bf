using RuleBook.Answers;
using RuleBook.Authoring.Pinning;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>
/// A stricter version that spares alterations made before a day, for good or for a time (rules and figures are invented; for a time as in
/// Idaho Code 49-966: vehicles that did not comply on 1 July 1997 had until 1 July 1998).
/// </summary>
public sealed class GraceTests
{
    private const string Before = "altered: { before: 2018-07-01 }";

    /// <summary>50 mm were free before 2018-07-01, 40 mm from then on, but not for what was done before.</summary>
    private static readonly Book Spared = Raise($"when: {{ {Before} }}, within: {{ suspension-lift: 50 mm }}");

    /// <summary>What was done before is free until 2019-07-01, and a version between leaves that as it is.</summary>
    private static readonly Book SparedForATime = Raise(
        $"when: {{ {Before} }}",
        """

        - from: 2019-01-01
          sources: [ { cite: law, clause: "3" } ]
          like: 2018-07-01
        - from: 2019-07-01
          sources: [ { cite: law, clause: "4" } ]
          like: 2018-07-01
          change: [ { tier: earlier, drop: yes } ]
        """
    );

    [Theory]
    [InlineData("2018-06-30", 50, Pathway.NoCertificate)]
    [InlineData("2018-06-30", 51, Pathway.Prohibited)]
    [InlineData("2018-07-01", 40, Pathway.NoCertificate)]
    [InlineData("2018-07-01", 41, Pathway.Prohibited)]
    public void An_alteration_of_before_the_day_keeps_the_limits_of_before(string work, int lift, Pathway gives) =>
        Answer(Spared, Job($"work: {work}, inspection: 2026-11-28", lift)).ShouldBe(Only(gives));

    [Fact]
    public void The_day_of_the_alteration_is_asked_for_where_it_is_not_stated()
    {
        var answer = Assessed(Spared, Job("inspection: 2026-11-28", 45));

        var asked = answer.Undecided.ShouldHaveSingleItem();
        asked.Opening.Name.ShouldBe("dates.work");
        asked.Merged().ShouldBe([("before 2018-07-01", Only(Pathway.NoCertificate)), ("from 2018-07-01", Only(Pathway.Prohibited))]);
    }

    [Theory]
    [InlineData(40, Pathway.NoCertificate)]
    [InlineData(51, Pathway.Prohibited)]
    public void It_is_not_asked_for_where_it_changes_nothing(int lift, Pathway gives) =>
        Answer(Spared, Job("inspection: 2026-11-28", lift)).ShouldBe(Only(gives));

    [Fact]
    public void What_is_spared_for_a_time_is_told_first_with_the_day_on_which_that_ends()
    {
        var book = Raise(
            $"when: {{ {Before} }}",
            """

            - from: 2019-07-01
              sources: [ { cite: law, clause: "3" } ]
              like: 2018-07-01
              change: [ { tier: earlier, drop: yes } ]
            """
        );
        const string Told = "Raising a vehicle: from 2019-07-01 on not allowed, whenever the work was done.";

        Assessed(book, Job("work: 2018-06-30, inspection: 2019-06-30", 45)).ShouldGive(Pathway.NoCertificate, Told);
        Assessed(book, Job("work: 2018-06-30, inspection: 2019-06-30", 40)).ShouldGive(Pathway.NoCertificate);
        Assessed(book, Job("work: 2018-07-01, inspection: 2019-06-30", 45)).ShouldGive(Pathway.Prohibited);
        Assessed(book, Job("work: 2018-06-30, inspection: 2019-07-01", 45)).ShouldGive(Pathway.Prohibited);
    }

    [Theory]
    [InlineData("work: 2018-06-30, inspection: 2019-06-30", true)]
    [InlineData("inspection: 2019-06-30", true)]
    [InlineData("work: 2018-07-01, inspection: 2019-06-30", false)]
    [InlineData("work: 2018-06-30, inspection: 2019-07-01", false)]
    public void What_is_left_says_until_when_it_is_spared(string dates, bool told) =>
        MarginFinder
            .Find(SparedForATime, JobReader.Read(YamlText.Read(Job(dates, 10), "job"), SparedForATime))
            .Cautions.Contains("Raising a vehicle: what is spared here as altered earlier is spared until 2019-07-01 only.")
            .ShouldBe(told);

    [Fact]
    public void The_end_of_what_is_spared_is_told_across_a_version_that_leaves_it_as_it_is() =>
        Assessed(SparedForATime, Job("work: 2018-06-30, inspection: 2018-12-31", 45))
            .ShouldGive(Pathway.NoCertificate, "Raising a vehicle: from 2019-07-01 on not allowed, whenever the work was done.");

    [Fact]
    public void The_end_of_what_is_spared_is_told_where_the_rule_is_adopted_as_amended()
    {
        var law = SmallBook.Raise(
            $$"""
            - from: 2018-07-01
              sources: [ { cite: law, clause: "2" } ]
              tiers:
                - { pathway: no-certificate, name: earlier, when: { {{Before}} } }
                - { pathway: no-certificate, within: { suspension-lift: 40 mm } }
              beyond: prohibited
            - from: 2019-07-01
              sources: [ { cite: law, clause: "3" } ]
              like: 2018-07-01
              change: [ { tier: earlier, drop: yes } ]
            """
        );
        var adoption = SmallBook.Raise(
            """
            - from: 2018-07-01
              sources: [ { cite: law, clause: "9" } ]
              adopts: { rule: au/ride-height/raise, as-of: amended }
            """
        );
        var book = SmallBook.Of(("au", law), ("au-qld", DecidedByInspection(adoption)));

        Assessed(book, Job("work: 2018-06-30, inspection: 2019-06-30", 45))
            .ShouldGive(Pathway.NoCertificate, "Raising a vehicle: from 2019-07-01 on not allowed, whenever the work was done.");
    }

    [Fact]
    public void A_change_of_the_day_shows_in_the_answers_with_a_job_that_states_it()
    {
        var later = Raise("when: { altered: { before: 2019-07-01 } }, within: { suspension-lift: 50 mm }");

        var report = Between(Spared, later);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(Spared, later);
    }

    [Fact]
    public void The_day_has_to_be_held_by_a_case() =>
        new Pinner(Spared, []).Run((_, _) => true).Unnoticed.Select(one => one.What).ShouldContain("altered under 2018-07-01");

    /// <summary>45 mm and 35 mm are the same to the version in force, and not to the one that comes.</summary>
    [Fact]
    public void Jobs_that_differ_to_the_version_that_comes_share_no_answer()
    {
        var job = JobReader.Read(YamlText.Read(Job("inspection: 2018-06-30", 35), "job"), Spared);
        var after = JobReader.Read(YamlText.Read(Job("inspection: 2018-07-01", 35), "job"), Spared);

        SameCells.Of(Spared, job, ["suspension-lift"]).ShouldBeNull();
        SameCells.Of(Spared, after, ["suspension-lift"]).ShouldNotBeNull();
    }

    private static Book Raise(string earlier, string after = "") =>
        SmallBook.Of(
            (
                "au-qld",
                DecidedByInspection(
                    SmallBook.Raise(
                        $$"""
                        - from: 2011-01-01
                          sources: [ { cite: law, clause: "1" } ]
                          tiers: [ { pathway: no-certificate, within: { suspension-lift: 50 mm } } ]
                          beyond: prohibited
                        - from: 2018-07-01
                          sources: [ { cite: law, clause: "2" } ]
                          tiers:
                            - { pathway: no-certificate, name: earlier, {{earlier}} }
                            - { pathway: no-certificate, within: { suspension-lift: 40 mm } }
                          beyond: prohibited
                        """ + after
                    )
                )
            )
        );

    private static string DecidedByInspection(string file) =>
        file.Replace("    title:", "    decided-by: inspection\n    title:", StringComparison.Ordinal);

    private static string Job(string dates, int lift) =>
        $"{{ registered-in: au-qld, dates: {{ {dates} }}, vehicle: {{ category: MC }}, modification: {{ suspension-lift: {lift} mm }} }}";

    private static Assessment Assessed(Book book, string job) => Assessor.Assess(book, JobReader.Read(YamlText.Read(job, "job"), book));
}

file static class Given
{
    public static void ShouldGive(this Assessment answer, Pathway pathway, params string[] told)
    {
        answer.Between.ShouldBe(Only(pathway));
        answer.Foremost.ShouldBe(told);
    }
}
