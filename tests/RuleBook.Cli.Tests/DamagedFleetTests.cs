using System.Globalization;
using System.Text;
using RuleBook.Authoring.Inspecting;
using RuleBook.Cli.Fleets;
using RuleBook.Text;

namespace RuleBook.Cli.Tests;

/// <summary>
/// Files that are cut, badly encoded, with open quotes, lost columns, cells of a megabyte, NUL bytes and mixed line ends: each is refused
/// at a place, or answered so that nothing is lost. RULEBOOK_DAMAGED_FILES sets how many, RULEBOOK_RANDOM_SEED where to begin.
/// </summary>
public sealed class DamagedFleetTests(ITestOutputHelper output)
{
    private static readonly int Files = Number("RULEBOOK_DAMAGED_FILES", 150);
    private static readonly int Seed = Number("RULEBOOK_RANDOM_SEED", 20_261_128);
    private static readonly Law.Book Book = BookReading.Open(Authoring.Books.BookFolder.Load(Invocation.Root));

    [Fact]
    public void A_damaged_file_is_refused_at_a_place_or_every_row_of_it_is_answered_or_put_aside()
    {
        var (refused, answered, aside, wrong) = (0, 0L, 0L, new List<string>());
        for (var at = 0; at < Files; at++)
        {
            var damaged = new DamagedFleet(unchecked(Seed + at));
            try
            {
                var (rows, rejected) = Checked(damaged);
                (answered, aside) = (answered + rows, aside + rejected);
            }
            catch (InputException refusal)
            {
                refused++;
                if (
                    refusal.Problems.Any(problem =>
                        problem.Mark is not { Line: > 0, Column: > 0 } || problem.Text.Length == 0 || problem.Tip.Length == 0
                    )
                )
                    wrong.Add($"seed {Seed + at} ({damaged.What}): {refusal.Message}");
            }
            catch (Exception fault) when (fault is not OperationCanceledException)
            {
                wrong.Add(
                    $"seed {Seed + at} ({damaged.What}): "
                        + $"{fault.Message.ReplaceLineEndings(" ")[..Math.Min(300, fault.Message.ReplaceLineEndings(" ").Length)]} "
                        + $"{fault.StackTrace?.Split('\n')[0]}"
                );
            }
        }

        output.WriteLine($"{Files} files: {refused} refused whole, {answered} rows answered, {aside} put aside");
        wrong.ShouldBeEmpty();
    }

    private static (long Answered, long Rejected) Checked(DamagedFleet damaged)
    {
        using var reader = new FleetReader("fleet.csv", new MemoryStream(damaged.Bytes), isJson: false);
        var run = new FleetRun(reader, new FleetAnswers(Book, "fleet.csv", reader.Columns, new DateOnly(2026, 11, 20)), null, null);
        var (written, rejected) = (new MemoryStream(), new MemoryStream());
        run.Run(bytes => written.Write(bytes.Span), bytes => rejected.Write(bytes.Span), null, TestContext.Current.CancellationToken);
        var told = Rows(Encoding.UTF8.GetString(written.ToArray()));
        var refused = Rows(Encoding.UTF8.GetString(rejected.ToArray()));
        var counts = run.Summary.Counts;
        (told.Count - 1L, refused.Count - 1L).ShouldBe((counts.Rows, counts.Rejected), "rows written against rows counted");
        told.Where(row => row.Length != told[0].Length).Select(row => string.Join('|', row)).ShouldBeEmpty("rows of another width");
        refused.Where(row => row.Length != 6 || row[4].Length == 0).Select(row => string.Join('|', row)).ShouldBeEmpty("no reason told");
        var places = refused
            .Skip(1)
            .Select(row => (Line: int.Parse(row[1], CultureInfo.InvariantCulture), Column: int.Parse(row[2], CultureInfo.InvariantCulture)))
            .ToArray();
        places.Where(place => place.Line < 2 || place.Column < 1).ShouldBeEmpty("no place told");

        // Every line that is as it was, under the header that it had, is answered or put aside under its own number.
        if (!damaged.HasHeader)
            return (counts.Rows, counts.Rejected);
        var ids = told.Skip(1).Select(row => row[0]).ToHashSet(StringComparer.Ordinal);
        var aside = places.Select(place => place.Line).ToHashSet();
        var inCells = LinesInCells(Encoding.UTF8.GetString(damaged.Bytes), told[0].Length - Answered.Columns.Length);
        foreach (var (line, id) in damaged.Whole().Where(each => !inCells.Contains(each.Line)))
            (ids.Contains(id) || aside.Contains(line)).ShouldBeTrue($"line {line}, {id}, is lost");
        return (counts.Rows, counts.Rejected);
    }

    /// <summary>
    /// Lines that two quotes have made part of a cell: by RFC 4180 the row over them is as wide as the header, and nothing can tell it from
    /// one that was meant.
    /// </summary>
    private static HashSet<int> LinesInCells(string text, int width)
    {
        var (inside, line) = (new HashSet<int>(), 1);
        foreach (var row in Rows(text))
        {
            var lines = row.Sum(cell => cell.Count(letter => letter == '\n'));
            if (row.Length == width)
                inside.UnionWith(Enumerable.Range(line + 1, lines));
            line += 1 + lines;
        }

        return inside;
    }

    /// <summary>Rows of CSV by RFC 4180, read letter by letter: nothing of the project's own reading is leant on.</summary>
    private static List<string[]> Rows(string text)
    {
        var (rows, cells, cell, quoted) = (new List<string[]>(), new List<string>(), new StringBuilder(), false);
        for (var at = 0; at < text.Length; at++)
        {
            var letter = text[at];
            if (quoted && letter == '"' && at + 1 < text.Length && text[at + 1] == '"')
                cell.Append(text[++at]);
            else if (letter == '"')
                quoted = !quoted;
            else if (quoted)
                cell.Append(letter);
            else if (letter == ',')
                End();
            else if (letter == '\n')
            {
                End();
                rows.Add([.. cells]);
                cells.Clear();
            }
            else if (letter != '\r')
                cell.Append(letter);
        }

        return rows;

        void End()
        {
            cells.Add(cell.ToString());
            cell.Clear();
        }
    }

    private static int Number(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : usual;
}
