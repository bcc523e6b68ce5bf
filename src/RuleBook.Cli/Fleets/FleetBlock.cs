namespace RuleBook.Cli.Fleets;

/// <summary>Rows of a fleet that stand one after another.</summary>
/// <param name="First">Number of the first.</param>
/// <param name="Count">How many rows there are, blank ones too.</param>
internal abstract record FleetBlock(long First, int Count);

/// <summary>Rows as they are written, whole lines without a quote.</summary>
/// <param name="Bytes">Pooled; whoever answers the block gives them back.</param>
/// <param name="Length">How many of the bytes are used.</param>
/// <param name="First">Number of the first.</param>
/// <param name="Count">How many rows there are, blank ones too.</param>
/// <param name="Line">The line on which the first starts.</param>
internal sealed record PlainBlock(byte[] Bytes, int Length, long First, int Count, int Line) : FleetBlock(First, Count);

/// <summary>Rows that were looked at one by one.</summary>
/// <param name="Text">The rows, each with a line feed behind it.</param>
/// <param name="First">Number of the first.</param>
/// <param name="Lines">The lines on which they start.</param>
internal sealed record QuotedBlock(string Text, long First, IReadOnlyList<int> Lines) : FleetBlock(First, Lines.Count);

/// <summary>Jobs as JSON, one a line.</summary>
/// <param name="Rows">The lines.</param>
internal sealed record JsonBlock(IReadOnlyList<FleetRow> Rows) : FleetBlock(Rows[0].Number, Rows.Count);
