using System.Collections.Immutable;
using CsCheck;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>A random job: facts by their path in the job, with the values as they are written.</summary>
/// <param name="Place">Where the vehicle is registered.</param>
/// <param name="Facts">By path.</param>
/// <param name="Accessories">Masses of fixed accessories midway between the axles, kg.</param>
internal sealed record RandomJob(string Place, ImmutableSortedDictionary<string, string> Facts, ImmutableArray<int> Accessories)
{
    private static readonly string[] Places =
    [
        "au-nsw",
        "au-vic",
        "au-qld",
        "au-sa",
        "au-wa",
        "au-tas",
        "au-nt",
        "au-act",
        "nz",
        "us-wv",
        "us-ca",
    ];

    private static readonly (string Path, string[] Values)[] All =
    [
        ("vehicle.category", ["MC", "NA", "MA"]),
        ("vehicle.four-wheel-drive", ["yes", "no"]),
        ("vehicle.stability-control", ["yes", "no"]),
        ("vehicle.first-registered", ["2012-05-03", "2021-03-15"]),
        ("vehicle.tare", ["2100 kg", "2700 kg"]),
        ("vehicle.tare-axles.front", ["1100 kg"]),
        ("vehicle.tare-axles.rear", ["1000 kg"]),
        ("vehicle.wheelbase", ["2800 mm"]),
        ("vehicle.ratings.gvm", ["2200 kg", "3000 kg"]),
        ("vehicle.ratings.gcm", ["6000 kg"]),
        ("vehicle.ratings.front-axle", ["1200 kg", "1500 kg"]),
        ("vehicle.ratings.rear-axle", ["2000 kg"]),
        ("vehicle.ratings.braked-tow", ["3000 kg"]),
        ("modification.suspension-lift", ["-30 mm", "30 mm", "50 mm", "50.1 mm", "90 mm", "200 mm"]),
        ("modification.body-lift", ["20 mm", "60 mm"]),
        ("modification.tyre-diameter-growth", ["14 mm", "50 mm", "60 mm"]),
        ("modification.track-increase", ["25 mm", "60 mm"]),
        ("modification.ratings.gvm", ["2900 kg", "3400 kg"]),
        ("modification.ratings.gcm", ["6500 kg"]),
        ("modification.ratings.front-axle", ["1600 kg"]),
        ("modification.ratings.rear-axle", ["2300 kg"]),
        ("modification.ratings.braked-tow", ["3500 kg"]),
        ("modification.ratings.ball", ["400 kg"]),
        ("modification.ratings.unbraked-tow", ["900 kg"]),
        ("vehicle.tyres", ["[265/65R17 112S]", "[245/70R16 111S, 265/65R17 112S]"]),
        ("modification.tyres", ["265/70R17 115S", "285/70R17 117Q", "245/65R17 111S"]),
        ("modification.leaf-spring-block", ["25 mm"]),
        ("modification.tanks", ["[ { name: long-range, capacity: 140 L, fuel: diesel, behind-front-axle: 2300 mm } ]"]),
        ("trailer.mass", ["2400 kg"]),
        ("trailer.ball-load", ["240 kg"]),
        ("measured.weighbridge.mass", ["2300 kg", "2990 kg"]),
        ("shown.lane-change-test", ["yes", "no"]),
    ];

    /// <summary>Jobs in Australia, New Zealand and two American states, each fact stated or not.</summary>
    public static Gen<RandomJob> Jobs { get; } =
        Gen.Select(
            Gen.Int[0, Places.Length - 1].Select(i => Places[i]),
            Gen.Int[0, 11].Array[All.Length],
            Gen.Int[10, 900].Array[0, 2],
            (place, picks, accessories) =>
                new RandomJob(
                    place,
                    All.Zip(picks)
                        .Where(each => each.Second < 6)
                        .ToImmutableSortedDictionary(
                            each => each.First.Path,
                            each => each.First.Values[each.Second % each.First.Values.Length]
                        )
                        .Consistent(),
                    [.. accessories]
                )
        );

    /// <summary>The modifications stated.</summary>
    public IEnumerable<string> Modifications => Facts.Keys.Where(path => path.StartsWith("modification.", StringComparison.Ordinal));

    /// <summary>With another value of one fact.</summary>
    public RandomJob With(string path, string value) => this with { Facts = Facts.SetItem(path, value) };

    /// <summary>
    /// A vehicle that is all known and of which only heights, tyres and accessories change: what a workshop quotes every day.
    /// </summary>
    public RandomJob WithoutRatings() =>
        this with
        {
            Facts = Facts
                .RemoveRange(
                    Modifications.Where(path =>
                        path is not ("modification.suspension-lift" or "modification.body-lift" or "modification.tyre-diameter-growth")
                    )
                )
                .RemoveRange(
                    Facts.Keys.Where(path =>
                        path.StartsWith("trailer.", StringComparison.Ordinal) || path.StartsWith("shown.", StringComparison.Ordinal)
                    )
                )
                .SetItem("vehicle.category", "MC")
                .SetItem("vehicle.four-wheel-drive", "yes")
                .SetItem("vehicle.stability-control", "yes"),
        };

    /// <summary>Without one fact.</summary>
    public RandomJob Without(string path) => this with { Facts = Facts.Remove(path) };

    /// <summary>The job as it is typed.</summary>
    public override string ToString()
    {
        var facts = Accessories.IsEmpty
            ? Facts
            : Facts.Add(
                "modification.accessories",
                $"[{string.Join(", ", Accessories.Select(kg => $"{{ name: item, mass: {kg} kg, behind-front-axle: 1400 mm }}"))}]"
            );
        return $"registered-in: {Place}\non: "
            + $"2026-11-20\n{Yaml(facts.Add("vehicle.tanks", "[ { capacity: 10 L, fuel: diesel, behind-front-axle: 1400 mm } ]"), "")}";
    }

    private static string Yaml(IEnumerable<KeyValuePair<string, string>> facts, string indent) =>
        string.Concat(
            facts
                .GroupBy(fact => fact.Key.Split('.')[0])
                .Select(same =>
                    same.First().Key == same.Key
                        ? $"{indent}{same.Key}: {same.First().Value}\n"
                        : $"{indent}{same.Key}:\n{Yaml(same.Select(fact => Within(fact, same.Key)), indent + "  ")}"
                )
        );

    private static KeyValuePair<string, string> Within(KeyValuePair<string, string> fact, string key) =>
        KeyValuePair.Create(fact.Key[(key.Length + 1)..], fact.Value);
}

/// <summary>Facts that a job may not contradict.</summary>
internal static class RandomFacts
{
    /// <summary>The axles' tare is that of the vehicle, or is left out; a growth in diameter stands without a tyre.</summary>
    public static ImmutableSortedDictionary<string, string> Consistent(this ImmutableSortedDictionary<string, string> facts) =>
        (
            facts.GetValueOrDefault("vehicle.tare") == "2100 kg"
            && facts.ContainsKey("vehicle.tare-axles.front")
            && facts.ContainsKey("vehicle.tare-axles.rear")
                ? facts
                : facts.RemoveRange(["vehicle.tare-axles.front", "vehicle.tare-axles.rear"])
        ).RemoveRange(facts.ContainsKey("modification.tyres") ? ["modification.tyre-diameter-growth"] : []);
}
