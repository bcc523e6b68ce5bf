using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>One row of a fleet.</summary>
/// <param name="Number">Which row it is, from 1; the header is none.</param>
/// <param name="Line">The line on which it starts, from 1.</param>
/// <param name="Cells">Its cells as written; of NDJSON the one line.</param>
/// <param name="Wrong">Why it cannot be a job at all; null where it can be read as one.</param>
internal sealed record FleetRow(long Number, int Line, string[] Cells, Problem? Wrong = null);
