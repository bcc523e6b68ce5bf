using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>What a tier says of a measure.</summary>
public enum LimitKind
{
    /// <summary>A range.</summary>
    Bounded,

    /// <summary>The rule says that there is no limit.</summary>
    None,

    /// <summary>There is or may be a limit; nobody has established it.</summary>
    NotEstablished,
}

/// <summary>A bound on a measure within a tier.</summary>
/// <param name="Measure">Name in the vocabulary.</param>
/// <param name="Kind">A range, none, or not established.</param>
/// <param name="Bounds">The range; null unless <paramref name="Kind"/> is <see cref="LimitKind.Bounded"/>.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Limit(string Measure, LimitKind Kind, Bounds? Bounds, Mark Mark)
{
    /// <summary>The two measures, where it bounds a share: <see cref="Measure"/> is then the share's own name.</summary>
    internal MeasureShare? Share { get; init; }

    /// <summary>The measures of which it speaks: its own, and the two of a share.</summary>
    public IEnumerable<string> Names => Share is null ? [Measure] : [Measure, Share.Part, Share.Whole];
}
