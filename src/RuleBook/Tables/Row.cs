using Fractions;
using RuleBook.Facts;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// What is known of one job, placed into the cells of a table. Meant to be used again for the next job (<see cref="Clear"/>); placing and judging
/// then allocate nothing. Not safe for several threads at once.
/// </summary>
/// <remarks>
/// Measures are exact and in base units: mm, kg, L, per cent; a day is its number since 0001-01-01 (<see cref="DateOnly.DayNumber"/>). What
/// is not set is unknown, but for a measure that is unchanged where a job does not state it (its <c>if-absent</c> in the vocabulary). Tyre lift and
/// total lift follow from their parts unless they are set themselves; conditions are to be shown unless set.
/// </remarks>
public sealed class Row
{
    private readonly ulong[] cells;
    private readonly ExactRange[] stated;
    private readonly bool[] isStated;
    private readonly int[] changed; // the slots that differ from those of a job that states nothing
    private int changes;
    private bool sums = true;

    internal Row(DecisionTable table)
    {
        Table = table;
        cells = new ulong[table.Width];
        (stated, isStated, changed) = (new ExactRange[table.Slots], new bool[table.Slots], new int[table.Slots]);
        table.Absent(stated, isStated);
        Clear();
    }

    /// <summary>The table whose columns it has.</summary>
    public DecisionTable Table { get; }

    /// <summary>The cells possible in each column, a bit each.</summary>
    internal ReadOnlySpan<ulong> Cells
    {
        get
        {
            if (sums) AddUp();
            return cells;
        }
    }

    /// <summary>Forgets the job.</summary>
    public void Clear()
    {
        Table.Blank.CopyTo(cells);
        if (changes == changed.Length) Table.Absent(stated, isStated);
        else
            foreach (var slot in changed.AsSpan(0, changes)) (stated[slot], isStated[slot]) = Table.Absent(slot);
        (changes, sums) = (0, true);
    }

    /// <summary>Sets a word.</summary>
    /// <exception cref="ArgumentException">The input is not a word, or cannot be this one.</exception>
    public void Set(Input input, string word)
    {
        var at = input.Words.IndexOf(word);
        if (at < 0) throw new ArgumentException($"'{word}' is not one of the words of '{input.Name}'", nameof(word));
        cells[input.At] = 1ul << at;
    }

    /// <summary>Sets a measure, in base units.</summary>
    public void Set(Input input, Fraction value) => Put(input, new ExactRange(Exact.Of(value)));

    /// <summary>Sets a measure to <paramref name="numerator"/> / <paramref name="denominator"/> base units; the quickest way to place one.</summary>
    /// <param name="input">The measure.</param>
    /// <param name="numerator">Any number.</param>
    /// <param name="denominator">Positive.</param>
    public void Set(Input input, long numerator, long denominator = 1) => Put(input, new ExactRange(new Exact(numerator, denominator)));

    /// <summary>Sets what is known of a measure: both ends included, a missing end unbounded. Where both are missing nothing is known of it, and a sum follows from its parts.</summary>
    public void Set(Input input, Interval known) => Put(input, ExactRange.Of(known));

    /// <summary>Sets whether a condition is met; null where it is still to be shown.</summary>
    public void Set(Input input, bool? met) => cells[Of(input, InputKind.Condition)] = met is false ? DecisionTable.NotMet : DecisionTable.MetOrToShow;

    /// <summary>Makes an input unknown, whatever it was.</summary>
    public void Forget(Input input)
    {
        if (input.Kind == InputKind.Word) cells[input.At] = Table.Blank[input.At];
        else if (input.Kind == InputKind.Measure) Set(input, Interval.Anything);
        else Set(input, (bool?)null);
    }

    /// <summary>Puts all that a job makes known, in place of what was set before.</summary>
    public void Set(FactSet facts)
    {
        Table.Blank.CopyTo(cells);
        foreach (var input in Table.Inputs)
            switch (input.Kind)
            {
                case InputKind.Word:
                    if (facts.Words.TryGetValue(input.Name, out var word)) cells[input.At] = input.Words.IndexOf(word) is >= 0 and var at ? 1ul << at : 0;
                    break;
                case InputKind.Measure:
                    isStated[input.At] = facts.Measures.TryGetValue(input.Name, out var derived);
                    if (isStated[input.At]) stated[input.At] = ExactRange.Of(derived!.Value);
                    break;
                default:
                    if (facts.Shown.TryGetValue(input.Name, out var met) && !met) cells[input.At] = DecisionTable.NotMet;
                    break;
            }

        foreach (var axis in Table.Axes)
            if (axis.Sum.Terms.Length == 0) axis.Put(cells, Known(axis.Sum));
        (changes, sums) = (changed.Length, true);
    }

    /// <summary>A row of its own on which the same is known.</summary>
    internal Row Copy()
    {
        var copy = new Row(Table);
        cells.CopyTo(copy.cells, 0);
        stated.CopyTo(copy.stated, 0);
        isStated.CopyTo(copy.isStated, 0);
        (copy.changes, copy.sums) = (changed.Length, sums);
        return copy;
    }

    /// <summary>Sets the cells possible in one column.</summary>
    internal void SetCells(int column, ulong possible) => cells[column] = possible;

    /// <summary>Sets what is known of a measure by its slot.</summary>
    internal void Set(int slot, in ExactRange known)
    {
        if (changes < changed.Length) changed[changes++] = slot;
        (stated[slot], isStated[slot]) = (known, known.IsKnown);
        if (Table.AxisOf(slot) is { } axis) axis.Put(cells, known);
        sums = true;
    }

    /// <summary>What is known of a measure, added up where it follows from others.</summary>
    internal ExactRange Known(MeasureSum sum)
    {
        if (isStated[sum.Slot]) return stated[sum.Slot];
        if (sum.Terms.Length == 0) return ExactRange.Anything;
        var known = new ExactRange(new Exact(0));
        foreach (var (part, factor) in sum.Terms) known += Known(part) * factor;
        return known;
    }

    /// <summary>What was set of a measure; null where nothing was.</summary>
    internal ExactRange? Stated(int slot) => isStated[slot] ? stated[slot] : null;

    /// <summary>Whether the measure itself was set.</summary>
    internal bool IsStated(MeasureSum sum) => isStated[sum.Slot];

    private static int Of(Input input, InputKind kind) =>
        input.Kind == kind ? input.At : throw new ArgumentException($"'{input.Name}' is not a {kind}", nameof(input));

    private void Put(Input input, in ExactRange known) => Set(Of(input, InputKind.Measure), known);

    private void AddUp()
    {
        foreach (var axis in Table.Sums) axis.Put(cells, Known(axis.Sum));
        sums = false;
    }
}
