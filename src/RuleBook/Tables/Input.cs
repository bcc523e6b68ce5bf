using System.Collections.Immutable;

namespace RuleBook.Tables;

/// <summary>What kind of thing an input of a table is.</summary>
public enum InputKind
{
    /// <summary>A word about the vehicle.</summary>
    Word,

    /// <summary>A measure.</summary>
    Measure,

    /// <summary>A condition to be met or shown.</summary>
    Condition,
}

/// <summary>One thing that can be placed into a row of a table.</summary>
/// <param name="Name">Its name in the vocabulary.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Words">The words that it can be, of a word.</param>
/// <param name="At">Its column, or the slot of a measure.</param>
public sealed record Input(string Name, InputKind Kind, ImmutableArray<string> Words, int At);
