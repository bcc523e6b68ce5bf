using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Tests.Figures;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>
/// The smallest changes that mend a job. Derived, on limits of a scenario of our own: every figure is reckoned beside its check.
/// </summary>
public sealed class RemedyTests
{
    private const string Blocks = """
        "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "50 mm", "body-lift": "0 mm" } },
                   { "pathway": "certificate", "within": { "suspension-lift": "75 mm", "body-lift": "50 mm",
                   "total-lift": { "under": "100 mm" } } } ], "beyond": "prohibited"
        """;

    private const string Vehicle =
        """ "vehicle": { "tare": "2400 kg", "tare-axles": { "front": "1300 kg", "rear": "1100 kg" }, "wheelbase": "2850 mm","""
        + """ "tanks": [ { "capacity": "10 L", "fuel": "diesel", "behind-front-axle": "1425 mm" } ], """;

    [Fact]
    [Trait("Basis", "derived")]
    public void The_lift_that_is_left_is_the_limit_itself_and_not_a_step_below()
    {
        var remedies = Find(Tiers, Lift("60 mm"));
        Told(remedies).ShouldBe([(Pathway.NoCertificate, "suspension lift 50 mm")]);
        remedies[0].After.Verdict.ShouldBe(Pathway.NoCertificate);
        remedies[0].Changes[0].Cost!.Value.ShouldBe(10);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_no_single_change_is_enough_two_together_are_proposed()
    {
        // 60 mm and blocks of 25 mm: without a certificate only 50 mm and no blocks; with one everything holds already (85 mm under 100
        // mm).
        var remedies = Find(Blocks, """ "modification": { "suspension-lift": "60 mm", "body-lift": "25 mm" } """);
        Told(remedies).ShouldBe([(Pathway.NoCertificate, "suspension lift 50 mm and no body lift")]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_open_limit_is_kept_from_inside()
    {
        // 70 + 40 mm make 110; under 100 mm in all leave less than 60 mm of suspension, or less than 30 mm of blocks.
        var remedies = Find(Blocks, """ "modification": { "suspension-lift": "70 mm", "body-lift": "40 mm" } """)
            .Where(remedy => remedy.Goal.Within == Pathway.Certificate);
        Told(remedies).ShouldBe([(Pathway.Certificate, "suspension lift 59 mm"), (Pathway.Certificate, "body lift 29 mm")]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_load_over_the_GVM_is_mended_by_the_fewest_accessories_and_the_least_mass()
    {
        // 2400 + 40 + 60 + 90 = 2590 of 2500 kg: 90 kg over. The tent alone is enough; bar and drawers would be two.
        var job = Reckoned.Read(
            Vehicle
                + """
                "ratings": { "gvm": "2500 kg" } }, "modification": { "accessories": [
                    { "name": "bar", "mass": "40 kg", "behind-front-axle": "1425 mm" }, { "name": "drawers", "mass": "60 kg",
                    "behind-front-axle": "1425 mm" },
                    { "name": "tent", "mass": "90 kg", "behind-front-axle": "1425 mm" } ] }
                """
        );
        var now = Assessor.Assess(Reckoned.Book, job);
        now.Blockers.Select(blocker => blocker.Id).ShouldBe(["over-rating/gvm/unladen"]);
        var left = Remedies.Find(Reckoned.Book, job, null, now).Single(remedy => remedy.Changes[0].Lever == RemedyLever.Accessories);
        left.Changes[0].Names.ShouldBe(["tent"]);
        RemedyText.Changes(left).ShouldBe("leave off tent (90 kg)");
        left.After.Blockers.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_not_known_to_weigh_anything_is_never_left_off_and_no_GVM_is_asked_for_that_may_not_carry_it()
    {
        var job = Reckoned.Read(
            Vehicle
                + """
                "ratings": { "gvm": "2450 kg" } }, "modification": { "accessories": [ { "name": "bar", "mass": "100 kg",
                "behind-front-axle": "0 mm" }, { "name": "winch", "behind-front-axle": "0 mm" } ] }
                """
        );
        var now = Assessor.Assess(Reckoned.Book, job);
        now.Blockers.ShouldContain(blocker => blocker.Subject == "gvm" && blocker.AtLeast);
        var remedies = Remedies.Find(Reckoned.Book, job, null, now);
        remedies
            .SelectMany(remedy => remedy.Changes)
            .ShouldNotContain(change => change.Lever == RemedyLever.Gvm || change.Names.Contains("winch"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_that_nothing_mends_says_what_stands_in_the_way()
    {
        var book = Stating(
            """ "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": "75 mm" }, "provided": [ "lane-change-test" ]"""
                + """ } ], "beyond": "prohibited" """
        );
        var job = Read(book, Lift("40 mm") + """, "shown": { "lane-change-test": "no" } """);
        var now = Assessor.Assess(book, job);
        var remedies = Remedies.Find(book, job, null, now);
        remedies.ShouldBeEmpty();
        RemedyText.Nothing(now, remedies).ShouldBe("No change was found that mends it. In the way stands: condition not met: test.");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_that_is_allowed_as_planned_has_nothing_to_mend()
    {
        var book = Stating(Tiers);
        var job = Read(book, Lift("40 mm"));
        var now = Assessor.Assess(book, job);
        RemedyText.Nothing(now, Remedies.Find(book, job, null, now)).ShouldStartWith("There is nothing to mend");
    }

    private static Remedy[] Find(string content, string more)
    {
        var book = Stating(content);
        var job = Read(book, more);
        return [.. Remedies.Find(book, job, null, Assessor.Assess(book, job))];
    }

    private static IEnumerable<(Pathway?, string)> Told(IEnumerable<Remedy> remedies) =>
        remedies.Select(remedy => (remedy.Goal.Within, RemedyText.Changes(remedy)));
}
