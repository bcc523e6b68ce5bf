using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Tests.Figures;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>
/// The smallest changes as a person reads them. Derived, on limits of a scenario of our own; each figure is reckoned beside it.
/// </summary>
public sealed class RemedyTextTests
{
    /// <summary>2400 kg of tare and a bar of 190 kg make 2590 kg, 90 kg over the GVM of 2500 kg.</summary>
    private const string Overloaded = """
        "vehicle": { "tare": "2400 kg", "tare-axles": { "front": "1300 kg", "rear": "1100 kg" }, "wheelbase": "2850 mm",
          "tanks": [ { "capacity": "10 L", "fuel": "diesel", "behind-front-axle": "1425 mm" } ], "ratings": { "gvm": "2500 kg",
          "front-axle": "1650 kg", "rear-axle": "2100 kg" } },
        "modification": { "accessories": [ { "name": "bar", "mass": "190 kg", "behind-front-axle": "1425 mm" } ] }
        """;

    private static readonly Lazy<(Job Job, Assessment Answer)> Over = new(() =>
    {
        var job = Reckoned.Read(Overloaded);
        return (job, Assessor.Assess(Reckoned.Book, job));
    });

    [Fact]
    [Trait("Basis", "derived")]
    public void A_lift_is_told_with_how_much_less_it_is_and_what_it_leads_to()
    {
        // 60 mm; without a certificate 50 mm, 10 mm less.
        var told = Told(Stating(Tiers), Lift("60 mm"));
        told.ShouldContain("To be allowed without a certificate:");
        told.SkipWhile(line => line != "- suspension lift 50 mm (10 mm less)").ElementAt(1).ShouldBe("then: allowed without a certificate");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rating_is_told_with_how_far_it_is_apart_and_what_is_left_off_with_its_mass()
    {
        var (job, answer) = Over.Value;
        var left = Remedies.Find(Reckoned.Book, job, null, answer).Single();
        var (kg, to) = (Quantity.Parse("90 kg"), "2590 kg");
        var rerated = left with
        {
            Changes = [new RemedyChange(RemedyLever.Gvm, "modification.ratings.gvm", "2500 kg", to, [], kg.Base, kg.Unit)],
        };
        var page = new Told();
        RemedyText.Write(page, answer, [left, rerated]);
        page.Lines.ShouldContain("So that nothing stands in the way:");
        page.Lines.ShouldContain("- re-rate the GVM to 2590 kg (90 kg apart)");
        page.Lines.ShouldContain("- leave off bar (190 kg)");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_comes_first_in_the_answer_to_the_changed_job_alone_is_told_beneath_it()
    {
        const string Ends = "Raising a vehicle: from 2019-07-01 on not allowed, whenever the work was done.";
        var (job, answer) = Over.Value;
        var left = Remedies.Find(Reckoned.Book, job, null, answer).Single();
        var ends = left with { After = left.After with { Foremost = [Ends] } };
        var page = new Told();

        RemedyText.Write(page, answer, [ends]);
        page.Lines.ShouldContain($"but then: {Ends}");
        RemedyText.Line(answer, [ends]).ShouldEndWith(", with more to be told then");
        RemedyText.Line(answer with { Foremost = [Ends] }, [ends]).ShouldNotContain("more to be told");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_a_change_breaks_and_what_is_then_to_be_shown_stand_beneath_it()
    {
        var book = Stating(Tiers);
        var now = Assess(book, Lift("60 mm"));
        var remedy = Remedies.Find(book, Read(book, Lift("60 mm")), null, now).First() with
        {
            Breaks = Over.Value.Answer.Blockers,
            ToShow = ["travel kept", "test"],
        };
        var page = new Told();
        RemedyText.Write(page, now, [remedy]);
        var at = page.Lines.IndexOf("- suspension lift 50 mm (10 mm less)");
        page.Lines[at + 1].ShouldStartWith("then: ");
        page.Lines[at + 2].ShouldStartWith("but then: 90 kg over GVM");
        page.Lines[at + 3].ShouldBe("to show then: travel kept; test");
    }

    /// <summary>70 + 40 mm make 110; under 100 mm in all leave 59 mm of suspension, or 29 mm of blocks.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void The_first_screen_tells_three_ways_at_most_each_with_its_pathway()
    {
        var book = Stating(
            """
            "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "75 mm", "body-lift": "50 mm",
            "total-lift": { "under": "100 mm" } } } ],
            "beyond": "prohibited"
            """
        );
        const string job = """ "modification": { "suspension-lift": "70 mm", "body-lift": "40 mm" } """;
        var now = Assess(book, job);
        Remedy[] found = [.. Remedies.Find(book, Read(book, job), null, now)];
        const string both = "suspension lift 59 mm: certificate, or body lift 29 mm: certificate";
        RemedyText.Line(now, found).ShouldBe(both);
        RemedyText.Line(now, [.. found, found[0], found[1]]).ShouldBe($"{both}, or suspension lift 59 mm: certificate");
    }

    private static List<string> Told(Book book, string job)
    {
        var now = Assess(book, job);
        var page = new Told();
        RemedyText.Write(page, now, [.. Remedies.Find(book, Read(book, job), null, now)]);
        return page.Lines;
    }
}
