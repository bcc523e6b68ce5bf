using System.Collections.Immutable;
using Fractions;
using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;

namespace RuleBook.Cli.Fleets;

/// <summary>The answer to a row, and to which other rows it is the same but for the margin.</summary>
/// <param name="Own">The answer with the row's own margin.</param>
/// <param name="Same">Tells which rows are like it; null where they cannot be told by their cells.</param>
/// <param name="Like">What those in the same cells share; null where only a row that states just the same is answered alike.</param>
internal readonly record struct Likeness(Answered Own, SameCells? Same, SharedAnswer? Like);

/// <summary>What rows in the same cells share.</summary>
/// <param name="Told">The answer to one of them.</param>
/// <param name="Limits">Its limits, with what their versions count towards a total.</param>
internal sealed record SharedAnswer(Answered Told, ImmutableArray<(LimitCheck Check, ImmutableArray<string> Parts)> Limits);

/// <summary>
/// Answers of rows that differ from one before only in plain measures which lie in the same cells of the rules: the same answer with
/// another margin, without an assessment of their own. Safe for any number of threads.
/// </summary>
internal sealed class LikeRows
{
    /// <summary>How many of each are kept; when there are more, all are forgotten, so that the memory stays the same.</summary>
    private const int Most = 50_000;

    private readonly Book book;
    private readonly FleetColumns columns;
    private readonly KeptFew<(int Column, string Text), Fraction?> amounts = new(Most);
    private readonly KeptFew<string, SameCells?> kinds = new(Most);
    private readonly KeptFew<(SameCells Kind, UInt128 Cells), SharedAnswer> answers = new(Most);

    public LikeRows(Book book, FleetColumns columns)
    {
        (this.book, this.columns) = (book, columns);
        Plain =
        [
            .. from column in columns.Asked
            from measure in book.Vocabulary.Measures.Values
            where measure.Job == columns.Header[column] && SameCells.IsPlain(measure, book.Vocabulary)
            select (column, measure),
        ];
    }

    /// <summary>The columns of plain measures.</summary>
    public ImmutableArray<(int Column, Measure Measure)> Plain { get; }

    /// <summary>The answer to a row; an equal one is not looked for.</summary>
    /// <param name="row">The row.</param>
    /// <param name="read">Reads it as a job.</param>
    /// <exception cref="Text.InputException">It cannot be read.</exception>
    public Likeness Of(FleetRow row, Func<FleetRow, Job> read)
    {
        var job = new Lazy<Job>(() => read(row));
        var (varying, values) = (ImmutableArray.CreateBuilder<string>(), new Fraction[Plain.Length]);
        var cells = (string[])row.Cells.Clone();
        foreach (var (column, measure) in Plain)
        {
            // What is hardly possible is told with its figure.
            if (Amount(column, measure.Name, row.Cells[column], job) is not { } amount || !measure.Plausible.Contains(amount))
                continue;
            values[varying.Count] = amount;
            varying.Add(measure.Name);
            cells[column] = "\u0001"; // stated, and placed by its value
        }

        if (varying.Count == 0)
            return new Likeness(Answered.Of(Assess(job), book.Vocabulary), null, null);
        var stated = values.AsSpan(0, varying.Count);
        var same = Kept(kinds, columns.Combination(row with { Cells = cells }), _ => SameCells.Of(book, job.Value, varying.ToImmutable()));
        if (same is null)
            return new Likeness(Answered.Of(Assess(job), book.Vocabulary), null, null);
        var at = (same, same.Key(stated));
        if (answers.TryGet(at, out var like))
            return new Likeness(like.Told.With(same.Tightest(like.Limits, stated)), same, like);
        var assessment = Assess(job);
        var told = Answered.Of(assessment, book.Vocabulary);
        // What is past a rule of use is told with its figures, and so is what goes down and is not judged.
        var down = Array.Exists(values, value => value.IsNegative);
        if (assessment.Blockers.Any(blocker => down || blocker.Kind != BlockerKind.NotJudged))
            return new Likeness(told, same, null);
        var shared = new SharedAnswer(
            told,
            [.. assessment.Findings.SelectMany(finding => finding.Limits.Select(check => (check, finding.Version.Parts)))]
        );
        return new Likeness(told, same, answers.Keep(at, shared));
    }

    private Assessment Assess(Lazy<Job> job) => Assessor.Assess(book, job.Value);

    /// <summary>What a cell states of its measure, read as a job reads it; null where it states no amount.</summary>
    private Fraction? Amount(int column, string measure, string text, Lazy<Job> job) =>
        text.Length == 0
            ? null
            : Kept(amounts, (column, text), _ => job.Value.Measures.TryGetValue(measure, out var quantity) ? quantity.Base : null);

    private static TValue Kept<TKey, TValue>(KeptFew<TKey, TValue> kept, TKey key, Func<TKey, TValue> make)
        where TKey : notnull => kept.TryGet(key, out var known) ? known : kept.Keep(key, make(key));
}
