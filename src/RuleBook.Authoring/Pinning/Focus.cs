using Fractions;

namespace RuleBook.Authoring.Pinning;

/// <summary>Where alone a change can be felt, so that the rest need not be looked at.</summary>
internal abstract record Focus
{
    /// <summary>Anywhere.</summary>
    public static Focus Everywhere { get; } = new Anywhere();

    private sealed record Anywhere : Focus;
}

/// <summary>Only where a measure lies between the bound as it was and as it becomes.</summary>
/// <param name="Measure">Name of the measure.</param>
/// <param name="Low">The lesser of the two, in base units.</param>
/// <param name="High">The greater.</param>
internal sealed record OnMeasure(string Measure, Fraction Low, Fraction High) : Focus;

/// <summary>Only for vehicles with a word.</summary>
/// <param name="Fact">Name of the fact.</param>
/// <param name="Word">The word.</param>
internal sealed record OnWord(string Fact, string Word) : Focus;
