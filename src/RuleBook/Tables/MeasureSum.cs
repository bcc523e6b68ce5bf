namespace RuleBook.Tables;

/// <summary>A measure of a row: as stated, or the sum of what it follows from.</summary>
internal sealed record MeasureSum
{
    /// <param name="name">The measure, with what it is added up from where versions count that differently.</param>
    /// <param name="slot">Where what is stated of it is kept.</param>
    /// <param name="terms">
    /// What it follows from where it is not stated, each times a positive factor; empty where it follows from nothing.
    /// </param>
    public MeasureSum(string name, int slot, params (MeasureSum Part, int Over, int Under)[] terms)
    {
        (Name, Slot, Terms) = (name, slot, [.. terms.Select(term => new SumTerm(term.Part, term.Over, term.Under))]);
        Parts = Terms.Aggregate(1, (all, term) => Grid.Common(all, term.Under * term.Part.Parts));
        Times = Math.Max(1, Terms.Sum(term => term.Over * term.Part.Times));
    }

    public string Name { get; }

    public int Slot { get; }

    public SumTerm[] Terms { get; }

    /// <summary>Into how many parts what is stated is divided.</summary>
    public int Parts { get; }

    /// <summary>How many times as large as the largest of what is stated the sum can be.</summary>
    public int Times { get; }
}

/// <summary>A part of a sum: <c>Over / Under</c> times a measure.</summary>
internal readonly record struct SumTerm(MeasureSum Part, int Over, int Under)
{
    public Exact Factor => new(Over, Under);
}
