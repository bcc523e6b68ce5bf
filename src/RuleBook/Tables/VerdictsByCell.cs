using System.Numerics;

namespace RuleBook.Tables;

/// <summary>
/// What the rules of a topic give, by the cells in which a row lies: judged when a row first lies there, and looked up from then on. Cells
/// of a column that no test of the topic tells apart count as one, so that there are few.
/// </summary>
internal sealed class VerdictsByCell
{
    /// <summary>Set in what is known, since a packed outcome can be zero.</summary>
    public const byte Judged = 1 << 7;

    private const int CellsOfColumn = 64;
    private const int Most = 1 << 20;

    private readonly (int At, int FirstShare)[] columns = [];
    private readonly int[] shares = []; // by column and cell, what it adds to the index

    /// <param name="tests">All that a verdict on the topic can hang on.</param>
    /// <param name="everything">All cells of each column of the table.</param>
    public VerdictsByCell(IEnumerable<Test> tests, ulong[] everything)
    {
        var (size, all, added) = (1, new List<(int, int)>(), new List<int>());
        foreach (var column in tests.GroupBy(test => test.Column, test => test.Passes))
        {
            all.Add((column.Key, added.Count));
            ulong[] passes = [.. column.Distinct()];
            var kinds = new List<string>();
            for (var cell = 0; cell < CellsOfColumn && everything[column.Key] >> cell != 0; cell++)
            {
                var kind = string.Concat(passes.Select(each => each >> cell & 1));
                if (!kinds.Contains(kind))
                    kinds.Add(kind);
                added.Add(size * kinds.IndexOf(kind));
            }

            size *= kinds.Count;
            if (size > Most)
                return;
        }

        (columns, shares, Known) = ([.. all], [.. added, .. new int[CellsOfColumn]], new byte[size]);
    }

    /// <summary>
    /// By index, <see cref="Judged"/> with the packed outcome; zero where nothing was judged yet. Empty where that is too much.
    /// </summary>
    public byte[] Known { get; } = [];

    /// <summary>Where a row lies; -1 where it can lie in several places, or there are too many to keep.</summary>
    public int IndexOf(ReadOnlySpan<ulong> row)
    {
        var (at, others) = (0, 0);
        foreach (var (column, first) in columns)
        {
            var possible = row[column];
            others |= BitOperations.PopCount(possible) - 1;
            at += shares[first + BitOperations.TrailingZeroCount(possible)]; // 64 of none is followed by more, too
        }

        return others == 0 && Known.Length > 0 ? at : -1;
    }
}
