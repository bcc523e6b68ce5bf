using System.Text.RegularExpressions;
using Fractions;
using RuleBook.Authoring.Changes;
using RuleBook.Facts;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// What Queensland's amendment of 26 October 2018 changed, against the government's own accounts of it: the book without that version
/// compared with the book. Sources by their ids in jurisdictions/au-qld/sources.yaml.
/// </summary>
public sealed partial class QueenslandTests
{
    private static readonly Book Before = Of(path => path == "jurisdictions/au-qld/ride-height.yaml", WithoutTheAmendment);
    private static readonly Book After = TestBook.Book;

    /// <summary>An approval at best.</summary>
    private static readonly Outcome Departments = new(Pathway.Approval, Pathway.Prohibited);

    private static readonly ChangeReport Report = BookChanges.Between(Before, After);

    [Fact]
    public void Every_job_shown_is_answered_as_said_by_the_assessor() // derived: the assessor is asked anew
    {
        Report.Answers.ShouldNotBeEmpty();
        Report.ShouldBeConfirmed(Before, After);
    }

    [Fact]
    public void Only_four_wheel_drives_registered_in_Queensland_are_concerned_and_only_their_ride_height_from_26_October_2018() =>
        Report.Answers.ShouldAllBe(change => // standards-notifications-2018: amended codes LS9 and LS10 in force on 26 October 2018
            change.Jurisdiction == "au-qld"
            && change.Topic == "ride-height"
            && change.From == new DateOnly(2018, 10, 26)
            && change.Until == null
            && Says(change, "four-wheel-drive", "yes")
        );

    [Fact]
    public void With_stability_control_a_lift_that_took_a_certificate_becomes_free_and_without_it_none_does()
    {
        // lift-standards-2018: 50 mm with and 75 mm without stability control uncertified; ministers-release-2018-09-20: 75 mm for both.
        var freed = Report
            .Answers.Where(change => change.Before == Only(Pathway.Certificate) && change.After == Only(Pathway.NoCertificate))
            .ToArray();
        freed
            .ShouldHaveSingleItem()
            .Furthest!.Yaml.ShouldSatisfyAllConditions( // 75 mm = 50 mm of suspension and 25 mm of tyres, half the growth
                job => Total(job).ShouldBe(new Fraction(75)),
                job => job.ShouldContain("suspension-lift: 50 mm"),
                job => job.ShouldContain("tyre-diameter-growth: 50 mm")
            );
        freed.ShouldAllBe(change => Says(change, "stability-control", "yes"));
    }

    [Fact]
    public void Between_125_and_150_mm_what_no_approved_person_certified_becomes_a_certificate()
    {
        // lift-standards-2018: 125 mm certified since 2012; standards-notifications-2018: up to 150 mm. booklet-2008: what the scheme does
        // not reach is for the department, and whether it approved such a lift is not established.
        var opened = Report.Answers.Where(change => change.Before == Departments && change.After == Only(Pathway.Certificate)).ToArray();
        opened.ShouldNotBeEmpty();
        foreach (var change in opened)
        {
            Total(change.Witness.Yaml).ShouldBeGreaterThan(new Fraction(125));
            Total(change.Furthest!.Yaml).ShouldBe(new Fraction(150));
        }
    }

    [Theory] // the figures of the sources named above
    [InlineData("yes", 50, 50, 0, Pathway.Certificate, Pathway.NoCertificate)] // 75 mm = 50 mm of suspension and 25 mm of tyres
    [InlineData("no", 50, 50, 0, Pathway.NoCertificate, Pathway.NoCertificate)]
    [InlineData("yes", 50, 0, 0, Pathway.NoCertificate, Pathway.NoCertificate)]
    public void The_jobs_that_the_sources_describe_change_as_they_say(
        string control,
        int suspension,
        int growth,
        int body,
        Pathway before,
        Pathway after
    )
    {
        var job = $$"""
            registered-in: au-qld
            on: 2018-10-26
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: {{control}} }
            modification: { suspension-lift: {{suspension}} mm, tyre-diameter-growth: {{growth}} mm, body-lift: {{body}} mm }
            """;
        Answer(Before, job).ShouldBe(Only(before));
        Answer(After, job).ShouldBe(Only(after));
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("no")]
    public void A_lift_of_150_mm_was_for_the_department_and_takes_a_certificate_since(string control) // the same sources
    {
        var job = $$"""
            registered-in: au-qld
            on: 2018-10-26
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: {{control}} }
            modification: { suspension-lift: 75 mm, tyre-diameter-growth: 50 mm, body-lift: 50 mm }
            """;
        Answer(Before, job).ShouldBe(Departments);
        Answer(After, job).ShouldBe(Only(Pathway.Certificate));
    }

    [Fact]
    public void The_rule_that_decides_is_named_with_its_place_in_the_file() => // derived: the file is read here
        Report.Answers.ShouldAllBe(change =>
            change.Rule == "au-qld/ride-height/raise-four-wheel-drive"
            && change.Mark.File == "jurisdictions/au-qld/ride-height.yaml"
            && change.Mark.Line > Array.FindIndex(Lines(change.Mark.File), line => line.Contains("from: 2018-10-26"))
        );

    private static string[] Lines(string file) => File.ReadAllLines(Path.Combine(TestBook.Folder, file));

    private static bool Says(AnswerChange change, string fact, string word) =>
        change.Vehicles.Any(said => said.Fact == fact && said.Words.Length == 1 && said.Words[0] == word);

    private static Fraction Total(string job)
    {
        var read = JobReader.Read(YamlText.Read(job, "job"), After);
        return Of("suspension-lift") + Of("body-lift") + (Of(FactSet.TyreGrowth) / 2);

        Fraction Of(string measure) => read.Measures.TryGetValue(measure, out var stated) ? stated.Base : Fraction.Zero;
    }

    private static string WithoutTheAmendment(string text)
    {
        var at = text.IndexOf("      - from: 2018-10-26", StringComparison.Ordinal);
        var without = text.Remove(at, text.IndexOf("  - rule: raise-other-vehicle", StringComparison.Ordinal) - at);
        // The sources that stand on the rule name the versions that they are about.
        return OfTheAmendment().Replace(without.Replace(", 2018-10-26]", "]", StringComparison.Ordinal), "");
    }

    [GeneratedRegex(@"\n      - \{[^{}]*of: 2018-10-26 \}")]
    private static partial Regex OfTheAmendment();
}
