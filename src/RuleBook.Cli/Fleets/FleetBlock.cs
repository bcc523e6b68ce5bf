namespace RuleBook.Cli.Fleets;

/// <summary>Rows of a CSV file that stand one after another.</summary>
/// <param name="Text">As they are written.</param>
/// <param name="First">Number of the first.</param>
/// <param name="Lines">The lines on which they start.</param>
internal sealed record FleetBlock(string Text, long First, IReadOnlyList<int> Lines);
