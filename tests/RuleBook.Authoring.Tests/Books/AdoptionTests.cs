using RuleBook.Answers;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.InForce;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>A maintainer's pull request in one file: the worked example of DEVELOPERS.md, made on a copy of the book.</summary>
public sealed class AdoptionTests : IDisposable
{
    private const string File = "jurisdictions/au-tas/ride-height.yaml";
    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    public AdoptionTests()
    {
        foreach (var file in BookFolder.Load(RealBook.Root).Files)
        {
            var path = Path.Combine(folder, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            System.IO.File.WriteAllText(path, file.Text);
        }
    }

    [Fact]
    public void A_proposed_adoption_changes_no_verdict_and_is_shown_as_proposed()
    {
        Edit(0);
        Verdict("2027-07-01", "80 mm").ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        Position("2027-07-01").ShouldBe("proposed");
    }

    [Theory]
    [InlineData("2027-06-30", "50 mm", Pathway.NoCertificate, Pathway.Prohibited)] // the day before: not established
    [InlineData("2027-07-01", "50 mm", Pathway.NoCertificate, Pathway.NoCertificate)] // the national rule as amended: 50 mm
    [InlineData("2027-07-01", "125 mm", Pathway.Certificate, Pathway.Certificate)] // the exception: up to 125 mm
    // Beyond it nothing is established, though the nation goes to 150 mm.
    [InlineData("2027-07-01", "125.1 mm", Pathway.Approval, Pathway.Prohibited)]
    public void An_adoption_with_one_exception_is_one_edit_of_at_most_twelve_lines(string on, string lift, Pathway best, Pathway worst)
    {
        Edit(1).ShouldBeLessThanOrEqualTo(12);
        Inspection.Run(folder, new DateOnly(2026, 11, 25)).Problems.Where(problem => problem.Mark.File == File).ShouldBeEmpty();
        Verdict(on, lift).ShouldBe(new Outcome(best, worst));
    }

    [Theory]
    [InlineData("-50 mm", "0 mm", Pathway.NoCertificate)] // the nation's limit on the way down
    [InlineData("-50 mm", "-0.2 mm", Pathway.Certificate)] // further down in total: how far a certificate reaches is not established
    public void An_exception_on_the_way_up_leaves_the_nations_limit_on_the_way_down(string suspension, string growth, Pathway best)
    {
        Edit(1);
        Verdict("2027-07-01", $"{suspension}, tyre-diameter-growth: {growth}").Best.ShouldBe(best);
        if (best == Pathway.Certificate)
            Verdict("2027-07-01", $"{suspension}, tyre-diameter-growth: {growth}").Worst.ShouldBe(Pathway.Prohibited);
    }

    [Fact]
    public void The_timeline_tells_since_when_the_rule_is_in_force_with_exceptions()
    {
        Edit(1);
        Position("2027-06-30").ShouldBe("not-established");
        Position("2027-07-01").ShouldBe("in force with exceptions since 2027-07-01");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Puts the block of that number from DEVELOPERS.md after the rule's last version; returns its lines.</summary>
    private int Edit(int block)
    {
        var developers = System.IO.File.ReadAllText(Path.Combine(RealBook.Root, "DEVELOPERS.md"));
        var lines = developers[developers.IndexOf("### Worked example", StringComparison.Ordinal)..]
            .Split("```yaml\n")[block + 1]
            .Split("```")[0];
        var path = Path.Combine(folder, File);
        var text = System.IO.File.ReadAllText(path);
        var next = text.IndexOf(
            "  - rule: ",
            text.IndexOf("  - rule: raise-four-wheel-drive", StringComparison.Ordinal) + 1,
            StringComparison.Ordinal
        );
        System.IO.File.WriteAllText(path, text.Insert(next, lines));
        return lines.Count(character => character == '\n');
    }

    private Outcome Verdict(string on, string lift)
    {
        var book = BookReading.Open(folder);
        var job = JobReader.Read(
            YamlText.Read(
                $"{{ registered-in: au-tas, on: {on}, vehicle: {{ category: MC, four-wheel-drive: yes, stability-control: no }}, "
                    + $"modification: {{ suspension-lift: {lift} }} }}",
                "job"
            ),
            book
        );
        return Assessor.Assess(book, job).Between;
    }

    private string Position(string on)
    {
        var book = BookReading.Open(folder);
        return History.Position(
            book,
            book.Rule("au/ride-height/raise-four-wheel-drive")!,
            book.Jurisdiction("au-tas")!,
            DateOnly.ParseExact(on, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
        );
    }
}
