using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;

namespace RuleBook.Authoring.Pinning;

/// <summary>Where alone a change can be felt, so that the rest need not be looked at.</summary>
internal abstract record Focus
{
    /// <summary>Anywhere.</summary>
    public static Focus Everywhere { get; } = new Anywhere();

    /// <summary>Whether a version can give something else of a job.</summary>
    /// <param name="facts">What is known of the job.</param>
    /// <param name="version">The version, as it was or as it becomes.</param>
    public abstract bool Reaches(FactSet facts, ResolvedVersion version);

    /// <summary>Whether a job is known to lie there, as measures are usually counted.</summary>
    public abstract bool IsOn(FactSet facts);

    private sealed record Anywhere : Focus
    {
        public override bool IsOn(FactSet facts) => true;

        public override bool Reaches(FactSet facts, ResolvedVersion version) => true;
    }
}

/// <summary>Only where a measure lies between the bound as it was and as it becomes.</summary>
/// <param name="Measure">Name of the measure.</param>
/// <param name="Low">The lesser of the two, in base units.</param>
/// <param name="High">The greater.</param>
internal sealed record OnMeasure(string Measure, Fraction Low, Fraction High) : Focus
{
    public override bool Reaches(FactSet facts, ResolvedVersion version)
    {
        var known = facts.Measure(Measure, version.Parts);
        return Moves(version) || (!(known.High < Low) && !(known.Low > High));
    }

    /// <summary>Whether a version takes a measure so that limits reach elsewhere than where they are written.</summary>
    public static bool Moves(ResolvedVersion version) => version.Measured is { Allowances.IsEmpty: false };

    public override bool IsOn(FactSet facts) =>
        facts.Measure(Measure, FactSet.PartsOf(null)) is { Low: { } low, High: { } high } && low >= Low && high <= High;
}

/// <summary>Only for vehicles with a word.</summary>
/// <param name="Fact">Name of the fact.</param>
/// <param name="Word">The word.</param>
internal sealed record OnWord(string Fact, string Word) : Focus
{
    public override bool Reaches(FactSet facts, ResolvedVersion version) => !facts.Words.TryGetValue(Fact, out var known) || known == Word;

    public override bool IsOn(FactSet facts) => facts.Words.GetValueOrDefault(Fact) == Word;
}
