using Fractions;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Answers;
using RuleBook.Tests.Jobs;
using RuleBook.Tests.Jobs.Reading;

namespace RuleBook.Tests.Figures;

/// <summary>
/// Answers to jobs in a scenario of our own: the figures of the reference are invented, their form is that of the real rules.
/// </summary>
internal static class Reckoned
{
    internal static readonly Book Book = JobBook.Book with
    {
        Reference = JobBook.Book.Reference with
        {
            Clearance = new ClearanceRule("xa", new Fraction(100, 3), 100, "loaded", "unladen", []),
            Towing = [new DefaultTowing("xa", new Fraction(3, 2), 1, []), new DefaultTowing("xb", 1, new Fraction(1, 2), [])],
            Speedometer =
            [
                new SpeedometerPeriod(
                    "xa",
                    null,
                    Made.Day("2006-07-01"),
                    [new NamedSpeedometerRule("old", new SpeedometerRule(10, 10, 0))],
                    []
                ),
                new SpeedometerPeriod(
                    "xa",
                    Made.Day("2006-07-01"),
                    null,
                    [new NamedSpeedometerRule("new", new SpeedometerRule(0, 10, 4))],
                    []
                ),
            ],
            TyreSpeeds = [new TyreSpeedRule(null, "tyre-speed-kept", [new TyreSpeedKind(["MC"], 140), new TyreSpeedKind([], 120)], [])],
        },
    };

    public const string Wagon = """
        "tare": "2650 kg", "tare-axles": { "front": "1400 kg", "rear": "1250 kg" },
        "wheelbase": "2850 mm", "ball-behind-rear-axle": "1200 mm",
        "ratings": { "gvm": "3500 kg", "gcm": "7000 kg", "front-axle": "1650 kg", "rear-axle": "2100 kg",
          "braked-tow": "3500 kg", "ball": "350 kg" },
        "tanks": [ { "capacity": "110 L", "fuel": "diesel", "behind-front-axle": "2000 mm" } ]
        """;

    public static Job Read(string more) => JobReader.Read(Nodes.Of($$"""{ "registered-in": "xa", "on": "2026-11-25", {{more}} }"""), Book);

    public static Assessment Assess(string more) => Assessor.Assess(Book, Read(more));

    public static MassAnswer MassesOf(string more, string place = "xa") => MassReckoning.Of(Read(more), place).ShouldNotBeNull();

    public static TyreAnswer TyresOf(string more) => Assess(more).Tyres.ShouldNotBeNull();
}
