namespace RuleBook.Tables;

/// <summary>One test of a rule on one column: it passes in some of its cells.</summary>
/// <param name="Column">Index of the column.</param>
/// <param name="Passes">The cells in which it passes, a bit each.</param>
internal readonly record struct Test(ushort Column, ulong Passes);

/// <summary>Tests that stand one after another in the table.</summary>
/// <param name="First">Index of the first.</param>
/// <param name="End">Index behind the last.</param>
internal readonly record struct Tests(int First, int End);
