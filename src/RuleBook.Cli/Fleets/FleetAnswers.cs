using System.Text;
using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Authoring.Records;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Answers rows as <c>assess</c> does; rows that state the same are judged once. Safe for any number of threads.</summary>
internal sealed class FleetAnswers
{
    /// <summary>How many answers are kept; when there are more, all are forgotten, so that the memory stays the same.</summary>
    private const int MostKept = 50_000;

    /// <summary>How many errors of one row are told in words; the others are counted.</summary>
    private const int MostTold = 5;

    private readonly Book book;
    private readonly string file;
    private readonly FleetColumns? columns;
    private readonly DateOnly today;
    private readonly KeptFew<string, Answered> kept = new(MostKept);

    /// <param name="book">The book.</param>
    /// <param name="file">Name of the input, for places.</param>
    /// <param name="columns">The columns; null of NDJSON.</param>
    /// <param name="today">The day of a row that states none.</param>
    public FleetAnswers(Book book, string file, FleetColumns? columns, DateOnly today)
    {
        (this.book, this.file, this.columns, this.today) = (book, file, columns, today);
        Like = columns is null ? null : new LikeRows(book, columns);
    }

    /// <summary>Which rows are alike; null of NDJSON.</summary>
    public LikeRows? Like { get; }

    /// <summary>The answer, or why the row could not be read.</summary>
    public (Answered? Answer, Problem? Wrong) Of(FleetRow row)
    {
        if (columns is null || row.Wrong is not null)
            return Caught(row, () => Answered.Of(Assessor.Assess(book, Job(row)), book.Vocabulary));
        var stated = columns.Combination(row);
        return kept.TryGet(stated, out var known) ? (known, null) : Caught(row, () => kept.Keep(stated, Like!.Of(row, Job).Own));
    }

    /// <summary>The answer to a row of CSV with the rows that are like it, or why the row could not be read.</summary>
    public (Likeness? Answer, Problem? Wrong) Liken(FleetRow row) => Caught<Likeness?>(row, () => Like!.Of(row, Job));

    /// <summary>The row as the job that <c>assess</c> would be given.</summary>
    /// <exception cref="InputException">It is none.</exception>
    public Mapping Node(FleetRow row)
    {
        var node = row.Wrong is { } wrong ? throw new InputException(wrong) : columns?.Job(row) ?? Json(row);
        return node.Find("on") is null && node.Find("dates") is null ? SavedRecord.AsOn(node, today) : node;
    }

    private static (T? Answer, Problem? Wrong) Caught<T>(FleetRow row, Func<T> answer)
    {
        if (row.Wrong is { } wrong)
            return (default, wrong);
        try
        {
            return (answer(), null);
        }
        catch (InputException refused)
        {
            return (default, Joined([.. refused.Problems.Where(problem => problem.Severity == Severity.Error)]));
        }
    }

    /// <summary>The first of a row's errors, which tells the others too: a row is put aside once.</summary>
    private static Problem Joined(Problem[] errors) =>
        errors is [var only]
            ? only
            : errors[0] with
            {
                Text =
                    string.Join(
                        "; also in column ",
                        errors.Take(MostTold).Select((error, at) => at == 0 ? Told(error) : $"{error.Mark.Column} {Told(error)}")
                    ) + (errors.Length > MostTold ? $"; {errors.Length - MostTold} more" : ""),
                Tip = "",
            };

    private static string Told(Problem error) => error.Tip.Length > 0 ? $"{error.Text} ({error.Tip})" : error.Text;

    private Job Job(FleetRow row) => JobReader.Read(Node(row), book);

    private Mapping Json(FleetRow row)
    {
        try
        {
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(row.Cells[0]));
            return reader.Read() && JsonNodes.Read(ref reader, file) is Mapping job && !reader.Read()
                ? Placed(job, row.Line)
                : throw new InputException(
                    Problem.Error(
                        "wrong-shape",
                        new Mark(file, row.Line, 1),
                        "a line is one job: keys with values",
                        "write {\"registered-in\": ...}"
                    )
                );
        }
        catch (JsonException broken)
        {
            throw new InputException(
                Problem.Error(
                    "not-json",
                    new Mark(file, row.Line, (int)(broken.BytePositionInLine ?? 0) + 1),
                    "the line is not JSON",
                    "a line is one job, whole"
                )
            );
        }
    }

    /// <summary>The job with the places of the file instead of those of the line alone.</summary>
    private Mapping Placed(Mapping job, int line) => (Mapping)Placed((Node)job, line);

    private Node Placed(Node node, int line) =>
        node switch
        {
            Mapping map => map with
            {
                Mark = At(map.Mark, line),
                Entries =
                [
                    .. map.Entries.Select(each =>
                        KeyValuePair.Create(each.Key with { Mark = At(each.Key.Mark, line) }, Placed(each.Value, line))
                    ),
                ],
            },
            Sequence list => list with { Mark = At(list.Mark, line), Items = [.. list.Items.Select(item => Placed(item, line))] },
            _ => node with { Mark = At(node.Mark, line) },
        };

    private Mark At(Mark mark, int line) => new(file, line, Math.Max(1, mark.Column));
}
