using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>What is known of a job: words, measures and what has been shown. What is absent is unknown.</summary>
/// <param name="Words">By fact.</param>
/// <param name="Measures">By measure.</param>
/// <param name="Shown">Conditions known to be met (true) or not met (false).</param>
internal sealed record FactSet(
    ImmutableDictionary<string, string> Words,
    IReadOnlyDictionary<string, Derived> Measures,
    ImmutableDictionary<string, bool> Shown
)
{
    /// <summary>Expanded uncertainties of what was measured, by measure, in base units.</summary>
    public ImmutableDictionary<string, Fraction> Uncertainties { get; init; } = ImmutableDictionary<string, Fraction>.Empty;

    /// <summary>The guard band as a multiple of the expanded uncertainty.</summary>
    public Fraction GuardFactor { get; init; } = Fraction.One;

    /// <summary>Half of the growth in overall diameter.</summary>
    public const string TyreLift = KnownWords.TyreLift;

    /// <summary>The measure of which tyre lift is half.</summary>
    public const string TyreGrowth = KnownWords.TyreGrowth;

    /// <summary>The sum of the parts that a version counts.</summary>
    public const string TotalLift = KnownWords.TotalLift;

    private static readonly ImmutableArray<string> UsualParts = [KnownWords.SuspensionLift, KnownWords.BodyLift, TyreLift];

    /// <summary>Nothing known.</summary>
    public static FactSet Nothing { get; } =
        new(ImmutableDictionary<string, string>.Empty, ImmutableDictionary<string, Derived>.Empty, ImmutableDictionary<string, bool>.Empty);

    /// <summary>The parts of the total: the version's own, or suspension, body and tyre.</summary>
    public static ImmutableArray<string> PartsOf(ImmutableArray<string>? stated) =>
        stated is { IsDefaultOrEmpty: false } own ? own : UsualParts;

    /// <summary>What is known of a measure; a total is the sum of <paramref name="parts"/>.</summary>
    public Interval Measure(string name, ImmutableArray<string> parts)
    {
        if (Measures.TryGetValue(name, out var derived))
            return derived.Value;
        return name switch
        {
            TyreLift => Measure(TyreGrowth, parts) * new Fraction(1, 2),
            TotalLift => Sum(parts),
            _ => Interval.Anything,
        };
    }

    /// <summary>
    /// The expanded uncertainty of a measure; that of a total is the sum over its parts. Zero where nothing was measured.
    /// </summary>
    public Fraction Uncertainty(string name, ImmutableArray<string> parts)
    {
        if (Uncertainties.IsEmpty)
            return Fraction.Zero;
        if (Uncertainties.TryGetValue(name, out var own))
            return own;
        return name switch
        {
            TyreLift => Uncertainty(TyreGrowth, parts) / 2,
            TotalLift when !Measures.ContainsKey(TotalLift) => SumOfUncertainties(parts),
            _ => Fraction.Zero,
        };
    }

    private Interval Sum(ImmutableArray<string> parts) => parts.Aggregate(Interval.Of(0), (sum, part) => sum + Measure(part, parts));

    private Fraction SumOfUncertainties(ImmutableArray<string> parts) =>
        parts.Aggregate(Fraction.Zero, (sum, part) => sum + Uncertainty(part, parts));

    /// <summary>With a word known.</summary>
    public FactSet With(string fact, string word) => this with { Words = Words.SetItem(fact, word) };

    /// <summary>With a measure known.</summary>
    public FactSet With(string measure, Fraction value, string derivation) => With(measure, new Derived(Interval.Of(value), derivation));

    /// <inheritdoc cref="With(string, Fraction, string)"/>
    public FactSet With(string measure, Derived known) =>
        this with
        {
            Measures = new Dictionary<string, Derived>(Measures, StringComparer.Ordinal) { [measure] = known },
        };

    /// <summary>With nothing known of some measures.</summary>
    public FactSet Without(params IEnumerable<string> measures)
    {
        var left = new Dictionary<string, Derived>(Measures, StringComparer.Ordinal);
        foreach (var measure in measures)
            left.Remove(measure);
        return this with { Measures = left };
    }
}
