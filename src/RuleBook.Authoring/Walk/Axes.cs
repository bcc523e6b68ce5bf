using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>The measures on which some limits bear, and the planes at which the limits change sides.</summary>
/// <param name="Measures">One for each axis; totals and halves are resolved into what they are made of.</param>
/// <param name="Planes">All edges, and on every axis what no job states: unchanged, or the least that is plausible.</param>
internal sealed record Axes(ImmutableArray<Measure> Measures, ImmutableArray<LimitBoundary> Planes)
{
    public static Axes Of(IEnumerable<ResolvedVersion> versions, Vocabulary vocabulary)
    {
        var edges = versions.SelectMany(Edges).Distinct().ToArray();
        ImmutableArray<Measure> measures =
        [
            .. edges
                .SelectMany(edge => edge.Parts)
                .Select(part => part.Measure)
                .Distinct()
                .OrderBy(name => name == FactSet.TyreGrowth)
                .ThenBy(name => name, StringComparer.Ordinal)
                .Select(name => vocabulary.Measures[name]),
        ];
        var names = measures.Select(measure => measure.Name).ToList();
        var planes = edges
            .Select(edge => Of(edge, names))
            .Concat(
                Enumerable
                    .Range(0, measures.Length)
                    .Where(axis => !measures[axis].IsDate)
                    .Select(axis => new LimitBoundary(
                        [.. measures.Select((_, i) => new Fraction(i == axis ? 1 : 0))],
                        Start(measures[axis], edges)
                    ))
            )
            .Concat(TyreSense.Edge(names));
        return new Axes(measures, [.. planes.Distinct()]);
    }

    /// <summary>Whether there is a cell below the lowest edge of an axis; below the least that is plausible there is none.</summary>
    public bool GoesBelow(int axis, Fraction lowest) =>
        Negative(axis)
        || Measures[axis].IsDate
        || lowest.IsPositive && (Measures[axis].IfAbsent is not null || lowest != Measures[axis].Plausible.Low);

    public bool Negative(int axis) => Measures[axis].BelowZero != BelowZero.Never;

    /// <summary>Where the points of an axis lie: none is below zero where there is an edge at zero.</summary>
    public Interval Range(int axis) =>
        Negative(axis) || Measures[axis].IfAbsent is { IsZero: false } ? Interval.Anything : new Interval(Fraction.Zero, null);

    /// <summary>
    /// The step that matters on an axis: the measure's own, or a tenth of a millimetre or of a per cent, a kilogram, a day.
    /// </summary>
    public Fraction Step(int axis) => StepOf(Measures[axis]);

    /// <inheritdoc cref="Step"/>
    public static Fraction StepOf(Measure measure) =>
        measure.Step
        ?? (measure.IsDate || measure.Unit.Dimension is not (Dimension.Length or Dimension.Ratio) ? Fraction.One : new Fraction(1, 10));

    /// <summary>Where a measure as a version counts it lies between two values.</summary>
    public SumRange Between(string measure, ResolvedVersion version, Fraction low, Fraction high) =>
        new(Weights([.. Parts(measure, version)], [.. Measures.Select(axis => axis.Name)]), low, high);

    /// <summary>
    /// What a job states least: no change; of what is never below zero the least that is plausible, if no edge lies at or below that:
    /// what is not plausible is judged all the same.
    /// </summary>
    private static Fraction Start(Measure measure, IEnumerable<Edge> edges) =>
        measure.IfAbsent
        ?? (
            measure is { BelowZero: BelowZero.Never, Plausible.Low: { IsPositive: true } least }
            && !edges.Any(edge => edge.Value <= least && edge.Parts.Any(part => part.Measure == measure.Name))
                ? least
                : Fraction.Zero
        );

    private static LimitBoundary Of(Edge edge, List<string> names) => new LimitBoundary(Weights(edge.Parts, names), edge.Value).Scaled();

    private static ImmutableArray<Fraction> Weights(ImmutableArray<Part> parts, List<string> names)
    {
        var weights = new Fraction[names.Count];
        foreach (var (measure, weight) in parts)
            weights[names.IndexOf(measure)] += weight;
        return [.. weights];
    }

    private static IEnumerable<Edge> Edges(ResolvedVersion version) =>
        version
            .Rule.For.Tests.Concat(Tiers(version).SelectMany(tier => tier.When.Tests))
            .Select(test => (test.Fact, test.Bounds))
            .Concat(Tiers(version).SelectMany(tier => tier.Limits).Select(limit => (limit.Measure, limit.Bounds)))
            .SelectMany(pair =>
                new[] { pair.Bounds?.Lower, pair.Bounds?.Upper }
                    .OfType<Bound>()
                    .Select(bound => new Edge([.. Parts(pair.Item1, version)], bound.Value))
            );

    private static ImmutableArray<Tier> Tiers(ResolvedVersion version) => version.Content is Stated stated ? stated.Tiers : [];

    private static IEnumerable<Part> Parts(string measure, ResolvedVersion version) =>
        measure switch
        {
            FactSet.TotalLift => version.Parts.SelectMany(part => Parts(part, version)),
            FactSet.TyreLift => [new Part(FactSet.TyreGrowth, new Fraction(1, 2))],
            _ => [new Part(measure, Fraction.One)],
        };

    private readonly record struct Part(string Measure, Fraction Weight);

    private readonly record struct Edge(ImmutableArray<Part> Parts, Fraction Value);
}
