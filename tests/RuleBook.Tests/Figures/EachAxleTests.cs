using Fractions;
using RuleBook.Answers;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Answers;
using RuleBook.Tests.Jobs.Reading;
using RuleBook.Units;

namespace RuleBook.Tests.Figures;

/// <summary>
/// A limit on lift binds each axle; what is not measured or only predicted is known within bounds. Derived: differences of heights.
/// </summary>
public sealed class EachAxleTests
{
    private static readonly Book Book = Scenario.Stating(
        """
        "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "at-least": "-50 mm", "at-most": "50 mm" } } } ],
        "beyond": "prohibited"
        """
    ) with
    {
        Reference = JobBook.Book.Reference with
        {
            Uncertainties = JobBook.Book.Reference.Uncertainties.Add("predicted-lift", new Uncertainty("predicted-lift", 10, "ours")),
        },
    };

    private const string Before =
        """ "before": { "mass-state": "unladen", "front-left": "500 mm", "front-right": "500 mm", "rear-left": "500 mm","""
        + """ "rear-right": "500 mm" } """;

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(530, 470, 30)] // 50 mm either way: both within
    [InlineData(530, 440, -60)] // the rear is lowered by 60 mm beside a front that is raised
    [InlineData(440, 530, -60)]
    [InlineData(440, 480, -60)] // both lowered: the lower one
    [InlineData(560, 440, 60)]
    public void An_axle_that_is_lowered_is_judged_beside_one_that_is_raised(int front, int rear, int decides)
    {
        var answer = AssessorOf(
            $$"""
            "measured": { {{Before}}, "after": { "mass-state": "unladen", "front-left": "{{front}} mm", "front-right": "{{front}} mm",
              "rear-left": "{{rear}} mm", "rear-right": "{{rear}} mm" } }
            """
        );
        answer.Verdict.ShouldBe(decides is >= -50 and <= 50 ? Pathway.NoCertificate : Pathway.Prohibited);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_front_beyond_the_limit_decides_though_the_rear_is_not_measured()
    {
        AssessorOf(Front(560)).Verdict.ShouldBe(Pathway.Prohibited);
        AssessorOf(Front(560)).Undecided.ShouldBeEmpty();
        AssessorOf(Front(560)).Heights!.DecidingAxle.ShouldBe(Axle.Front);
        AssessorOf(Front(530)).Verdict.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_corner_that_lacks_is_what_is_asked_for()
    {
        AssessorOf(Front(530)).Undecided.ShouldHaveSingleItem().Opening.Name.ShouldBe("measured.after.rear-left");
        AssessorOf(Front(530, """, "rear-left": "520 mm" """))
            .Undecided.ShouldHaveSingleItem()
            .Opening.Name.ShouldBe("measured.after.rear-right");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(20, 0)]
    [InlineData(21, 1)] // 20 mm left to right: the most that one maker allows (workshop manual)
    public void A_corner_far_from_its_neighbour_is_told(int apart, int told)
    {
        var uneven = AssessorOf(
            $$"""
            "measured": { {{Before}}, "after": { "mass-state": "unladen", "front-left": "{{500
                + apart}} mm", "front-right": "500 mm", "rear-left": "500 mm", "rear-right": "500 mm" } }
            """
        ).Heights!.Uneven;
        uneven.Length.ShouldBe(told);
        if (told > 0)
            (uneven[0].Axle, uneven[0].ApartMm).ShouldBe((Axle.Front, (Fraction)apart));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("35 mm", "no-certificate")] // 25 to 45 mm
    [InlineData("45 mm", "open")] // 35 to 55 mm: too near to the 50 mm to be decided before it is measured
    [InlineData("65 mm", "prohibited")] // 55 to 75 mm
    public void A_predicted_lift_is_judged_within_its_uncertainty(string gain, string verdict)
    {
        // 98.0665 N/mm carry 20 kg a mm (g 9.80665 m/s2); the axle has the load at which the height is gained, so the gain is the lift.
        var answer = AssessorOf(Springs(gain));
        (answer.Verdict?.ToString() ?? "open").ShouldBe(
            verdict switch
            {
                "no-certificate" => "NoCertificate",
                "prohibited" => "Prohibited",
                _ => "open",
            }
        );
        if (verdict == "open")
            answer.Undecided.ShouldHaveSingleItem().Opening.Name.ShouldBe("measured.after");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("45 mm", false)]
    [InlineData("55 mm", false)] // within 10 mm of 45
    [InlineData("56 mm", true)]
    [InlineData("0 mm", true)]
    public void A_stated_lift_that_the_springs_cannot_give_is_denied(string stated, bool denied)
    {
        var answer = AssessorOf(Springs("45 mm", $$""" "suspension-lift": "{{stated}}", """));
        (answer.Heights!.Denied is not null).ShouldBe(denied);
        if (denied)
            answer.Heights.Denied!.Predicted.ShouldBe(new Interval(35, 55));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_axle_load_that_is_known_only_to_be_at_least_so_much_bounds_the_predicted_lift_from_above()
    {
        // 1100 kg at tare and a tank of unknown size: at least 1100 kg, so at most 80 - 50 / 20 = 77.5 mm and the uncertainty of 10.
        var job = Scenario.Read(
            Book,
            """
            "vehicle": { "tare": "2300 kg", "tare-axles": { "front": "1200 kg", "rear": "1100 kg" }, "wheelbase": "2800 mm",
            "tanks": [ { "fuel": "diesel", "behind-front-axle": "2000 mm" } ] },
            "modification": { "springs": { "rear": { "wheel-rate": "98.0665 N/mm", "height-gained": "80 mm", "at-axle-load": "1050 kg" } } }
            """
        );
        JobFacts
            .Of(job with { Plan = job.Plan with { JudgedAxle = Axle.Rear } }, Book.Vocabulary, job.Dates.For(null), DiameterBasis.Handbook)
            .Measure("suspension-lift", [])
            .ShouldBe(new Interval(null, new Fraction(875, 10)));
    }

    private static string Springs(string gain, string more = "") =>
        $$"""
            "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm",
            "tanks": [ { "capacity": "10 L", "fuel": "diesel", "behind-front-axle": "2000 mm" } ] },
            "modification": { {{more}} "springs": { "rear": { "wheel-rate": "98.0665 N/mm", "height-gained": "{{gain}}",
              "at-axle-load": "1050 kg" } } }
            """;

    private static string Front(int mm, string more = "") =>
        $$""" "measured": { {{Before}}, "after": { "mass-state": "unladen", "front-left": "{{mm}} mm", "front-right": "{{mm}}"""
        + $$""" mm" {{more}} } } """;

    private static Assessment AssessorOf(string more) => Scenario.Assess(Book, more);
}
