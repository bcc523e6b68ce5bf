using RuleBook.Tables;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// The cells in which some rules of a table are tested otherwise than others that have the same versions and tiers, with the same
/// pathways: where none of them is possible, both give the same.
/// </summary>
internal sealed class DifferingCells
{
    private const ulong Every = ulong.MaxValue;

    private readonly ulong[] columns;

    private DifferingCells(DecisionTable table) => columns = new ulong[table.Width];

    /// <summary>Those between rules one by one; null where something else than a test differs.</summary>
    public static DifferingCells? Between(DecisionTable table, ReadOnlySpan<RuleLine> left, ReadOnlySpan<RuleLine> right)
    {
        var cells = new DifferingCells(table);
        if (left.Length != right.Length)
            return null;
        for (var i = 0; i < left.Length; i++)
            if (!cells.Add(table, left[i], right[i]))
                return null;
        return cells;
    }

    /// <summary>Whether some of them is possible.</summary>
    public bool Any(ReadOnlySpan<ulong> row)
    {
        for (var column = 0; column < columns.Length; column++)
            if ((row[column] & columns[column]) != 0)
                return true;
        return false;
    }

    /// <summary>
    /// The parts of a row on which some of them, and nothing else, is possible in a column: one for each column that has some. In the first
    /// column nothing is ever known, so that what differs there differs on the whole row.
    /// </summary>
    public IEnumerable<ulong[]> Within(ulong[] row)
    {
        if ((row[0] & columns[0]) != 0)
        {
            yield return [.. row];
            yield break;
        }

        for (var column = 1; column < columns.Length; column++)
            if ((row[column] & columns[column]) is not 0 and var possible)
            {
                ulong[] part = [.. row];
                part[column] = possible;
                yield return part;
            }
    }

    private bool Add(DecisionTable table, RuleLine left, RuleLine right)
    {
        var versions = left.EndVersion - left.FirstVersion;
        if (left.Topic != right.Topic || right.EndVersion - right.FirstVersion != versions)
            return false;
        for (var i = 0; i < versions; i++)
            if (!Add(table, table.Versions[left.FirstVersion + i], table.Versions[right.FirstVersion + i]))
                return false;
        return true;
    }

    private bool Add(DecisionTable table, VersionLine left, VersionLine right)
    {
        var tiers = left.EndTier - left.FirstTier;
        if (
            (left.Kind, left.Beyond, left.Speaks, left.OrFor.Length) != (right.Kind, right.Beyond, right.Speaks, right.OrFor.Length)
            || right.EndTier - right.FirstTier != tiers
        )
            return false;
        foreach (var (one, other) in left.Descriptions.Zip(right.Descriptions))
            Add(table.TestsOf(one), table.TestsOf(other));
        for (var i = 0; i < tiers; i++)
        {
            var (one, other) = (table.Tiers[left.FirstTier + i], table.Tiers[right.FirstTier + i]);
            if (one.Pathway != other.Pathway)
                return false;
            Add(table.TestsOf(one.When), table.TestsOf(other.When));
            Add(table.TestsOf(one.Within), table.TestsOf(other.Within));
        }

        return true;
    }

    /// <summary>The tests on a column in their order; one that has no counterpart is compared with one that always passes.</summary>
    private void Add(ReadOnlySpan<Test> left, ReadOnlySpan<Test> right)
    {
        var rest = right.ToArray().ToList();
        foreach (var test in left)
        {
            var at = rest.FindIndex(other => other.Column == test.Column);
            columns[test.Column] |= test.Passes ^ (at < 0 ? Every : rest[at].Passes);
            if (at >= 0)
                rest.RemoveAt(at);
        }

        foreach (var test in rest)
            columns[test.Column] |= test.Passes ^ Every;
    }
}
