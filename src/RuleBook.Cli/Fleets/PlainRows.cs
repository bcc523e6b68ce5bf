using RuleBook.Answers;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// Answers rows without quotes as bytes: a row that is like one before is looked up, placed and written without becoming text. Anything
/// else about a row (signs that a spreadsheet would run, letters beyond ASCII, another width, an amount not seen before) is answered as any
/// row is, and learnt from. Belongs to one thread at a time.
/// </summary>
internal sealed class PlainRows
{
    private const int Longest = 1024;
    private const int MostColumns = 256;
    private const int MostKept = 50_000;
    private const byte Amount = 1; // stands for a cell that is placed by its value

    private readonly FleetReader reader;
    private readonly FleetAnswers answers;
    private readonly FleetWriter writer;
    private readonly bool[] asked;
    private readonly PlainColumn?[] amounts;
    private readonly int varying;
    private readonly bool isPlain;
    private readonly Dictionary<byte[], Kind> kinds = new(ByteKeys.Same);
    private readonly Dictionary<byte[], SameAnswer> same = new(ByteKeys.Same);
    private readonly Dictionary<byte[], Kind>.AlternateLookup<ReadOnlySpan<byte>> kindOf;
    private readonly Dictionary<byte[], SameAnswer>.AlternateLookup<ReadOnlySpan<byte>> sameOf;
    private readonly List<PlainAnswer> given = [];
    private int shared;

    public PlainRows(FleetReader reader, FleetAnswers answers, FleetWriter writer)
    {
        (this.reader, this.answers, this.writer) = (reader, answers, writer);
        var width = reader.Columns!.Header.Length;
        (asked, amounts) = (new bool[width], new PlainColumn?[width]);
        foreach (var column in reader.Columns.Asked)
            asked[column] = true;
        var plain = answers.Like!.Plain;
        if (plain.DistinctBy(each => each.Column).Count() == plain.Length)
            foreach (var (column, measure) in plain)
                amounts[column] = new PlainColumn(measure);
        varying = plain.Length;
        isPlain = reader.Separator.Separator == ',' && width <= MostColumns;
        (kindOf, sameOf) = (kinds.GetAlternateLookup<ReadOnlySpan<byte>>(), same.GetAlternateLookup<ReadOnlySpan<byte>>());
    }

    /// <summary>Answers the rows of a block.</summary>
    public void Answer(PlainBlock block, AnsweredBlock into)
    {
        var left = block.Bytes.AsSpan(0, block.Length);
        for (var at = 0; !left.IsEmpty; at++)
        {
            var row = FleetReader.NextLine(ref left);
            if (!Known(row, into))
                Learn(row, block.First + at, block.Line + at, into);
        }

        foreach (var answer in given)
        {
            into.Count(answer.Answer, answer.Times);
            answer.Times = 0;
        }

        given.Clear();
        if (shared + same.Count + kinds.Count <= MostKept)
            return;
        kinds.Clear();
        same.Clear();
        shared = 0;
    }

    private bool Known(ReadOnlySpan<byte> row, AnsweredBlock into)
    {
        if (!IsPlain(row))
            return false;
        Span<byte> key = stackalloc byte[Longest + MostColumns];
        Span<long> values = stackalloc long[varying];
        if (Key(row, key, values, true) is not var (length, stated))
            return false;
        PlainAnswer? answer = kindOf.TryGetValue(key[..length], out var kind)
            ? kind.Answers.GetValueOrDefault(kind.Cells.Key(values[..stated]))
            : null;
        if (answer is null)
        {
            if (stated > 0)
                length = Key(row, key, values, false)!.Value.Length;
            if (!sameOf.TryGetValue(key[..length], out var known))
                return false;
            answer = known;
        }

        Write(row, answer, values[..stated], into);
        return true;
    }

    private void Write(ReadOnlySpan<byte> row, PlainAnswer answer, ReadOnlySpan<long> values, AnsweredBlock into)
    {
        var room = into.Room(row.Length + answer.Most);
        row.CopyTo(room);
        var (length, defused) = answer.Write(room[row.Length..], values);
        into.Wrote(row.Length + length);
        into.Defused += defused;
        if (answer.Times++ == 0)
            given.Add(answer);
    }

    private void Learn(ReadOnlySpan<byte> row, long number, int line, AnsweredBlock into)
    {
        if (reader.Row(row, number, line) is not { } read)
            return;
        var (likeness, wrong) = answers.Liken(read);
        if (likeness is not { } told)
        {
            into.Refused.Add((read, wrong!));
            return;
        }

        var (text, defused) = writer.Row(read, told.Own, null);
        into.Write(text);
        into.Defused += defused;
        into.Count(told.Own);
        if (IsPlain(row))
            Keep(row, told);
    }

    /// <summary>Whether it can be written as it stands: nothing in it is to be shown otherwise.</summary>
    private bool IsPlain(ReadOnlySpan<byte> row) =>
        isPlain
        && row.Length <= Longest
        && !row.ContainsAnyExceptInRange((byte)' ', (byte)'~')
        && row.IndexOf("::"u8) < 0
        && row.IndexOf("##["u8) < 0;

    private void Keep(ReadOnlySpan<byte> row, Likeness told)
    {
        Span<byte> key = stackalloc byte[Longest + MostColumns];
        Span<long> values = stackalloc long[varying];
        if (Key(row, key, values, false) is not var (whole, _))
            return;
        var all = key[..whole].ToArray();
        Extend(row);
        var (length, stated) = Key(row, key, values, true)!.Value;
        if (
            told is not { Same: { } cells, Like: { } like }
            || Of(key[..length], cells, stated) is not { } kind
            || MarginAnswer.Of(like, kind.Cells) is not { } margin
        )
        {
            same[all] = new SameAnswer(told.Own);
            return;
        }

        if (kind.Answers.TryAdd(kind.Cells.Key(values[..stated]), margin))
            shared++;
    }

    /// <summary>The kind of a row; null where not all of its amounts are placed.</summary>
    private Kind? Of(ReadOnlySpan<byte> key, SameCells cells, int stated)
    {
        if (kindOf.TryGetValue(key, out var known))
            return known;
        if (cells.OnGrid() is not { } grid || grid.Measures != stated)
            return null;
        var kind = new Kind(grid, []);
        kindOf[key] = kind;
        return kind;
    }

    private void Extend(ReadOnlySpan<byte> row)
    {
        var column = 0;
        foreach (var cell in row.Split((byte)','))
            amounts[column++]?.Extend(row[cell]);
    }

    /// <summary>
    /// The cells that decide as one key, amounts left out where <paramref name="placed"/>; null of a row that is not plain.
    /// </summary>
    private (int Length, int Stated)? Key(ReadOnlySpan<byte> row, Span<byte> key, Span<long> values, bool placed)
    {
        var (length, stated) = (0, 0);
        for (var column = 0; column < asked.Length; column++)
        {
            var comma = row.IndexOf((byte)',');
            if (comma < 0 != (column == asked.Length - 1))
                return null;
            var cell = comma < 0 ? row : row[..comma];
            if (cell is [(byte)'=' or (byte)'+' or (byte)'-' or (byte)'@', ..])
                return null;
            if (asked[column])
            {
                if (placed && amounts[column]?.Read(cell) is { } amount)
                {
                    values[stated++] = amount;
                    key[length++] = Amount;
                }
                else
                {
                    cell.CopyTo(key[length..]);
                    length += cell.Length;
                }

                key[length++] = 0;
            }

            row = row[(comma + 1)..];
        }

        return (length, stated);
    }

    /// <summary>Rows that differ only in amounts.</summary>
    private sealed record Kind(GridCells Cells, Dictionary<ulong, MarginAnswer> Answers);
}
