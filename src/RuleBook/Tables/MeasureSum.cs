namespace RuleBook.Tables;

/// <summary>A measure of a row: as stated, or the sum of what it follows from.</summary>
/// <param name="Name">The measure, with what it is added up from where versions count that differently.</param>
/// <param name="Slot">Where what is stated of it is kept.</param>
/// <param name="Terms">What it follows from where it is not stated, each times a positive factor; empty where it follows from nothing.</param>
internal sealed record MeasureSum(string Name, int Slot, (MeasureSum Part, Exact Factor)[] Terms);
