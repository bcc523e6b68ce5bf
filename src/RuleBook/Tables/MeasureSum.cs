namespace RuleBook.Tables;

/// <summary>A measure of a row: as stated, or the sum of what it follows from.</summary>
/// <param name="Slot">Where what is stated of it is kept.</param>
/// <param name="Terms">What it follows from where it is not stated, each times a positive factor; empty where it follows from nothing.</param>
internal sealed record MeasureSum(int Slot, (MeasureSum Part, Exact Factor)[] Terms);
