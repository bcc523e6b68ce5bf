using CsCheck;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.Jobs.Reading;
using RuleBook.Tables;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>Properties over random jobs on the book of this repository.</summary>
public sealed class MonotoneProperties
{
    private static readonly string[] Places = [.. RealBook.Book.Jurisdictions.Where(place => place.Registers).Select(place => place.Id)];

    private static readonly string[] Items =
    [
        "{ name: a, mass: 60 kg, behind-front-axle: -900 mm }",
        "{ name: b, mass: 90.5 kg, behind-front-axle: 3750 mm }",
        "{ name: c, mass: 75 kg, behind-front-axle: 1600 mm }",
        "{ name: d, mass: 33.3 kg, behind-front-axle: 700 mm }",
    ];

    private static readonly Gen<string> Place = Among(Places);

    private static readonly Gen<string> Kind = Among(
        "category: MC, stability-control: yes",
        "category: MC, stability-control: no",
        "category: NA, stability-control: yes"
    );

    [Fact]
    public void More_suspension_lift_never_makes_a_verdict_easier() => Harder("suspension-lift: {0} mm", 0, 200);

    [Fact]
    public void More_body_lift_never_makes_a_verdict_easier() => Harder("suspension-lift: 20 mm, body-lift: {0} mm", 0, 120);

    [Fact]
    public void More_growth_never_makes_a_verdict_easier() => Harder("tyre-diameter-growth: {0} mm", 0, 120);

    [Fact]
    public void A_higher_gvm_never_makes_a_verdict_easier() => Harder("ratings: {{ gvm: {0} kg }}", 3000, 4700);

    [Fact]
    public void More_mass_aboard_changes_no_pathway_and_mends_no_overload() =>
        Gen.Select(Place, Gen.Int[0, 900], Gen.Int[0, 900])
            .Sample(
                (place, one, other) =>
                {
                    var (light, heavy) = (Loaded(place, Math.Min(one, other)), Loaded(place, Math.Max(one, other)));
                    return light.Between == heavy.Between
                        && light
                            .Masses!.Failing.Select(each => each.Check.What)
                            .Except(heavy.Masses!.Failing.Select(each => each.Check.What))
                            .All(Lightened);
                },
                iter: 100
            );

    [Fact]
    public void The_order_of_items_changes_no_total() =>
        Gen.Shuffle(Items)
            .Sample(
                items =>
                {
                    var unladen = Assess("au-qld", "category: MC", $"accessories: [ {string.Join(", ", items)} ]").Masses!.Unladen;
                    return unladen.TotalKg == (Fractions.Fraction)(2600m + 60m + 90.5m + 75m + 33.3m) && unladen.Axles == Expected;
                },
                iter: 24
            );

    // Derived, by moments about the front axle: (-900 x 60 + 3750 x 90.5 + 1600 x 75 + 700 x 33.3) / 2850 on the rear.
    private static Physics.Masses.AxleMasses Expected { get; } = Sum();

    private static Physics.Masses.AxleMasses Sum()
    {
        var rear = new Fractions.Fraction(4286850, 28500);
        return new Physics.Masses.AxleMasses(1350 + (Fractions.Fraction)258.8m - rear, 1250 + rear);
    }

    /// <summary>A load behind the rear axle takes mass off the front one.</summary>
    private static bool Lightened(string what) => what.StartsWith("front axle", StringComparison.Ordinal);

    private static void Harder(string modification, int from, int to) =>
        Gen.Select(Place, Kind, Gen.Int[from * 2, to * 2], Gen.Int[from * 2, to * 2])
            .Sample(
                (place, kind, one, other) =>
                {
                    var (less, more) = (At(Math.Min(one, other)), At(Math.Max(one, other)));
                    return less.Best <= more.Best && less.Worst <= more.Worst;

                    Outcome At(int halves) =>
                        Assess(
                            place,
                            kind,
                            string.Format(System.Globalization.CultureInfo.InvariantCulture, modification, halves / 2m)
                        ).Between;
                },
                iter: 150
            );

    private static Assessment Loaded(string place, int goods) =>
        Judged(
            $$"""
            registered-in: {{place}}
            on: 2026-11-20
            vehicle: { {{Vehicle("category: MC")}} }
            load: { goods: [ { mass: {{goods}} kg, behind-front-axle: 3100 mm } ] }
            """
        );

    private static Assessment Assess(string place, string kind, string modification) =>
        Judged(
            $$"""
            registered-in: {{place}}
            on: 2026-11-20
            vehicle: { {{Vehicle(kind)}} }
            modification: { {{modification}} }
            """
        );

    private static string Vehicle(string kind) =>
        $"{kind}, four-wheel-drive: yes, first-registered: 2020-03-02, wheelbase: 2850 mm, tare: 2600 kg, tare-axles: {{ front: "
        + $"1350 kg, rear: 1250 kg }}, "
        + "tanks: [ { capacity: 10 L, fuel: diesel } ], ratings: { gvm: 3000 kg, front-axle: 1500 kg, rear-axle: 1800 kg }";

    private static Assessment Judged(string job) =>
        Assessor.Assess(RealBook.Book, JobReader.Read(YamlText.Read(job, "job"), RealBook.Book));

    private static Gen<string> Among(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);
}
