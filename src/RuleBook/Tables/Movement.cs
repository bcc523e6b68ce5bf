namespace RuleBook.Tables;

/// <summary>How a row tells that a job moves a measure, and what that touches.</summary>
/// <param name="Measure">Name of the measure.</param>
/// <param name="Column">The column in which it shows.</param>
/// <param name="Unchanged">The cell in which the measure is where nothing changes it, as a bit.</param>
/// <param name="Unknown">The cells where it is unknown and does not count for that; zero where an unknown value counts as moved.</param>
/// <param name="Topics">The topics that it touches: of the rules that read it, and those that the vocabulary names.</param>
/// <param name="Suggested">Of these the topics that the vocabulary names.</param>
/// <param name="Own">Its bit where it asks for a rule of its own; zero otherwise.</param>
internal readonly record struct Movement(
    string Measure,
    int Column,
    ulong Unchanged,
    ulong Unknown,
    ulong Topics,
    ulong Suggested,
    ulong Own
)
{
    /// <summary>Whether a row moves it.</summary>
    public bool Moves(ReadOnlySpan<ulong> row) => row[Column] != Unchanged & row[Column] != Unknown;

    /// <summary>Whether it is not known that a row moves it.</summary>
    public bool MayBeUnchanged(ReadOnlySpan<ulong> row) => (row[Column] & Unchanged) != 0 && row[Column] != Unchanged;
}

/// <summary>What a row touches.</summary>
/// <param name="Topics">Topics, a bit each.</param>
/// <param name="Own">Measures moved that ask for a rule of their own, a bit each.</param>
internal readonly record struct Touched(ulong Topics, ulong Own);
