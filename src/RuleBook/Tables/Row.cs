using System.Runtime.CompilerServices;
using Fractions;
using RuleBook.Facts;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// What is known of one job, placed into the cells of a table. Meant to be used again for the next job (<see cref="Clear"/>); placing and
/// judging then allocate nothing. Not safe for several threads at once.
/// </summary>
/// <remarks>
/// Measures are exact and in base units: mm, kg, L, per cent; a day is its number since 0001-01-01 (<see cref="DateOnly.DayNumber"/>). What
/// is not set is unknown, but for a measure that is unchanged where a job does not state it (its <c>if-absent</c> in the vocabulary). Tyre
/// lift and total lift follow from their parts unless they are set themselves; conditions are to be shown unless set.
/// </remarks>
public sealed class Row
{
    private readonly ulong[] cells;
    private readonly long[] steps; // where each slot lies on the grid
    private Dictionary<int, ExactRange>? ranges; // of what lies off it; made when something first does
    private bool sums = true;
    private ulong moved; // the movements of the table that it makes, a bit each

    internal Row(DecisionTable table)
    {
        Table = table;
        cells = new ulong[table.Width];
        steps = new long[table.Slots];
        Clear();
    }

    /// <summary>The table whose columns it has.</summary>
    public DecisionTable Table { get; }

    /// <summary>The cells possible in each column, a bit each.</summary>
    internal ReadOnlySpan<ulong> Cells
    {
        get
        {
            if (sums)
                AddUp();
            return cells;
        }
    }

    /// <summary>What the job touches.</summary>
    internal Touched Touched
    {
        get
        {
            if (sums)
                AddUp();
            return Table.Movements.Length > 64 ? Table.Touched(cells) : Table.Touched(moved);
        }
    }

    /// <summary>Forgets the job.</summary>
    public void Clear()
    {
        Table.Blank.CopyTo(cells);
        Table.AbsentSteps.CopyTo(steps);
        foreach (var slot in Table.AbsentRanges)
            Ranges[slot] = Table.Absent(slot)!.Value;
        (sums, moved) = (true, 0);
    }

    /// <summary>Sets a word.</summary>
    /// <param name="input">The fact.</param>
    /// <param name="word">One of <see cref="Input.Words"/>.</param>
    /// <exception cref="ArgumentException">The input is not a word, or cannot be this one.</exception>
    public void Set(Input input, string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var at = 0;
        var words = input.Words.AsSpan();
        while (at < words.Length && !(words[at].Length == word.Length && words[at][^1] == word[^1] && words[at] == word))
            at++; // most words are told apart by their length or their end
        if (at == words.Length || input.Kind != InputKind.Word)
            throw new ArgumentException($"'{word}' is not one of the words of '{input.Name}'", nameof(word));
        cells[input.At] = 1ul << at;
    }

    /// <summary>Sets a measure, in base units.</summary>
    /// <exception cref="ArgumentException">The input is not a measure.</exception>
    public void Set(Input input, Fraction value) => Set(Of(input, InputKind.Measure), value);

    /// <summary>
    /// Sets a measure to <paramref name="numerator"/> / <paramref name="denominator"/> base units; the quickest way to place one.
    /// </summary>
    /// <param name="input">The measure.</param>
    /// <param name="numerator">Any number.</param>
    /// <param name="denominator">Positive.</param>
    /// <exception cref="ArgumentException">The input is not a measure.</exception>
    public void Set(Input input, long numerator, long denominator = 1)
    {
        var slot = Of(input, InputKind.Measure);
        if (Table.Grid.Holds(numerator, denominator, out var at))
            SetSteps(slot, at);
        else
            SetOffGrid(slot, numerator, denominator);
    }

    /// <summary>
    /// Sets what is known of a measure: both ends included, a missing end unbounded. Where both are missing nothing is known of it, and a
    /// sum follows from its parts.
    /// </summary>
    /// <exception cref="ArgumentException">The input is not a measure.</exception>
    public void Set(Input input, Interval known) => Set(Of(input, InputKind.Measure), ExactRange.Of(known));

    /// <summary>Sets whether a condition is met; null where it is still to be shown.</summary>
    /// <exception cref="ArgumentException">The input is not a condition.</exception>
    public void Set(Input input, bool? met) =>
        cells[Of(input, InputKind.Condition)] = met is false ? DecisionTable.NotMet : DecisionTable.MetOrToShow;

    /// <summary>Makes an input unknown, whatever it was.</summary>
    public void Forget(Input input)
    {
        if (input.Kind == InputKind.Word)
            cells[input.At] = Table.Blank[input.At];
        else if (input.Kind == InputKind.Measure)
            Set(input, Interval.Anything);
        else
            Set(input, (bool?)null);
    }

    /// <summary>Puts all that a job makes known, in place of what was set before.</summary>
    internal void Set(FactSet facts)
    {
        Clear();
        foreach (var input in Table.Inputs)
            switch (input.Kind)
            {
                case InputKind.Word:
                    if (facts.Words.TryGetValue(input.Name, out var word))
                        cells[input.At] = input.Words.IndexOf(word) is >= 0 and var at ? 1ul << at : 0;
                    break;
                case InputKind.Measure:
                    if (!facts.Measures.TryGetValue(input.Name, out var derived))
                        SetRange(input.At, ExactRange.Anything, Grid.Nowhere);
                    else if (Derivations.IsUnstated(derived))
                        continue; // the row has it so
                    else if (derived.Value.Exact is { } exact)
                        Set(input.At, exact);
                    else
                        SetRange(input.At, ExactRange.Of(derived.Value), Grid.Off);
                    break;
                default:
                    if (!facts.Shown.IsEmpty && facts.Shown.TryGetValue(input.Name, out var met) && !met)
                        cells[input.At] = DecisionTable.NotMet;
                    break;
            }
    }

    /// <summary>A row of its own on which the same is known.</summary>
    internal Row Copy()
    {
        var copy = new Row(Table);
        cells.CopyTo(copy.cells, 0);
        steps.CopyTo(copy.steps, 0);
        copy.ranges = ranges is null ? null : new(ranges);
        (copy.sums, copy.moved) = (sums, moved);
        return copy;
    }

    /// <summary>Sets the cells possible in one column.</summary>
    internal void SetCells(int column, ulong possible) => cells[column] = possible;

    /// <summary>Sets what is known of a measure by its slot.</summary>
    internal void Set(int slot, in ExactRange known) => SetRange(slot, known, known.IsKnown ? Grid.Off : Grid.Nowhere);

    /// <summary>What is known of a measure, added up where it follows from others.</summary>
    internal ExactRange Known(MeasureSum sum)
    {
        if (Stated(sum.Slot) is { } stated)
            return stated;
        if (sum.Terms.Length == 0)
            return ExactRange.Anything;
        var known = new ExactRange(new Exact(0));
        foreach (var term in sum.Terms)
            known += Known(term.Part) * term.Factor;
        return known;
    }

    /// <summary>What was set of a measure; null where nothing was.</summary>
    internal ExactRange? Stated(int slot) =>
        steps[slot] switch
        {
            Grid.Nowhere => null,
            Grid.Off => ranges![slot],
            var at => new ExactRange(Table.Grid.Value(at)),
        };

    /// <summary>Whether the measure itself was set.</summary>
    internal bool IsStated(MeasureSum sum) => steps[sum.Slot] != Grid.Nowhere;

    private Dictionary<int, ExactRange> Ranges => ranges ??= [];

    private static int Of(Input input, InputKind kind) => input.Kind == kind ? input.At : throw Not(input, kind);

    private static ArgumentException Not(Input input, InputKind kind) => new($"'{input.Name}' is not a {kind}", nameof(input));

    private void Set(int slot, Fraction value)
    {
        if (Table.Grid.Holds(value, out var at))
            SetSteps(slot, at);
        else
            Set(slot, new ExactRange(Exact.Of(value)));
    }

    private void SetRange(int slot, in ExactRange known, long at)
    {
        (steps[slot], sums) = (at, true);
        if (at == Grid.Off)
            Ranges[slot] = known;
        if (Table.AxisOf(slot) is { } axis)
            Put(axis, known);
    }

    private void SetOffGrid(int slot, long numerator, long denominator) => Set(slot, new ExactRange(new Exact(numerator, denominator)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void SetSteps(int slot, long at)
    {
        (steps[slot], sums) = (at, true);
        if (Table.AxisOf(slot) is { } axis)
            Put(axis, at);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Put(Axis axis, long at)
    {
        if (axis.IsOnGrid)
            axis.Put(cells, at);
        else
            PutOffGrid(axis, at);
        Move(axis);
    }

    private void PutOffGrid(Axis axis, long at) => axis.Put(cells, new ExactRange(Table.Grid.Value(at)));

    private void Put(Axis axis, in ExactRange known)
    {
        axis.Put(cells, known);
        Move(axis);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Move(Axis axis)
    {
        if (axis.Movement is >= 0 and < 64 and var at)
            moved = moved & ~(1ul << at) | (Table.Movements[at].Moves(cells) ? 1ul : 0) << at;
    }

    private void AddUp()
    {
        foreach (var axis in Table.Sums)
            if (axis.IsOnGrid && AddUp(axis.Sum, out var at))
                Put(axis, at);
            else
                PutKnown(axis);
        sums = false;
    }

    private void PutKnown(Axis axis) => Put(axis, Known(axis.Sum));

    /// <summary>The steps of a sum; false where some part does not lie on the grid or is not known.</summary>
    private bool AddUp(MeasureSum sum, out long at)
    {
        at = steps[sum.Slot];
        if (at != Grid.Nowhere)
            return at != Grid.Off;
        at = 0;
        foreach (ref readonly var term in sum.Terms.AsSpan())
        {
            var part = steps[term.Part.Slot];
            if (part == Grid.Off || part == Grid.Nowhere && !AddUp(term.Part, out part))
                return false;
            at += term.Under == 1 ? part * term.Over : part * term.Over / term.Under;
        }

        return sum.Terms.Length > 0;
    }
}
