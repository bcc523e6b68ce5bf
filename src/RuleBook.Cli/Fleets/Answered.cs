using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>The answer to a row, in the columns that are appended to it.</summary>
/// <param name="State">The jurisdiction whose rules decide.</param>
/// <param name="Verdict">What the first line of the answer says, as in JSON.</param>
/// <param name="Cells">One cell for each of <see cref="Columns"/>.</param>
/// <param name="Reasons">Why the row is not simply allowed: what stands in the way, or what is not known; empty where nothing does.</param>
internal sealed record Answered(string State, string Verdict, ImmutableArray<string> Cells, ImmutableArray<string> Reasons)
{
    private const int TightestAt = 2;

    private Around? around;

    /// <summary>The headers of the columns.</summary>
    public static readonly ImmutableArray<string> Columns =
    [
        "verdict",
        "headline",
        "tightest-limit",
        "margin",
        "blockers",
        "missing",
        "to-show",
        "beside-the-verdict",
        "weakest-evidence",
    ];

    /// <summary>Header of the column that has the verdict of an earlier book, where one is asked.</summary>
    public const string Before = "verdict-before";

    /// <summary>The cells as the end of a line, without its line end.</summary>
    public string Line { get; private init; } = Join(Cells);

    /// <summary>How many of them a spreadsheet would have run.</summary>
    public int Defused { get; private init; } = Cells.Count(FleetWriter.IsDefused);

    /// <summary>What is told of an assessment.</summary>
    public static Answered Of(Assessment assessment, Vocabulary vocabulary)
    {
        var headline = assessment.Headline;
        string[] missing =
        [
            .. assessment.Undecided.Select(effect => Questions.Ask(effect, vocabulary)),
            .. assessment.Gaps.Select(gap => gap.What),
        ];
        var told = new Answered(
            assessment.Jurisdiction,
            Headlines.Word(headline),
            [
                Headlines.Word(headline),
                ShortAnswer.Of(assessment),
                "",
                "",
                string.Join("; ", assessment.Blockers.Select(BlockerText.Short)),
                string.Join("; ", missing),
                string.Join("; ", FirstScreen.ToShow(assessment)),
                string.Join(
                    " ",
                    [.. assessment.Warnings.Select(warning => $"Check the row: {warning.Text}."), .. FirstLines.Beside(assessment)]
                ),
                assessment.WeakestEvidence is { } weakest ? $"{Phrases.Standing(weakest.Standing)} ({weakest.Rule.Id})" : "",
            ],
            headline switch
            {
                Headline.Blocked =>
                [
                    .. assessment.Blockers.Select(blocker => $"{BlockerKinds.Word(blocker.Kind)}: {blocker.What}").Distinct(),
                ],
                Headline.Undecided => [.. missing.Distinct()],
                Headline.Prohibited =>
                [
                    .. assessment
                        .Findings.Where(finding => finding.Outcome.Best == Pathway.Prohibited)
                        .Select(finding => finding.Version.Rule.Id)
                        .Distinct(),
                ],
                _ => [],
            }
        );
        return told.With(TightestLimits.Of(assessment).FirstOrDefault());
    }

    /// <summary>The line before the tightest limit, without the comma between.</summary>
    public string BeforeLimit => Parts.Before;

    /// <summary>The line behind the margin, without the comma between.</summary>
    public string BehindMargin => Parts.Behind;

    private Around Parts => around ??= new Around(Join(Cells[..TightestAt]), Join(Cells[(TightestAt + 2)..]));

    /// <summary>
    /// The same with another limit as the tightest; null where there is none. What the two do not tell apart is not written anew.
    /// </summary>
    public Answered With(LimitCheck? tightest)
    {
        string[] told = tightest is null ? ["", ""] : [Limit(tightest), Phrases.Amount(tightest.Margin!.Value, tightest.Measure.Unit)];
        return this with
        {
            Cells = Cells.SetItem(TightestAt, told[0]).SetItem(TightestAt + 1, told[1]),
            Line = $"{BeforeLimit},{Join(told)},{BehindMargin}",
            Defused = Defused - Cells.AsSpan(TightestAt, 2).ToArray().Count(FleetWriter.IsDefused) + told.Count(FleetWriter.IsDefused),
        };
    }

    /// <summary>The cell that names a limit.</summary>
    public static string Limit(LimitCheck check) => $"{check.Measure.Title}: {LimitPhrases.Range(check)}";

    private static string Join(IEnumerable<string> cells) => string.Join(',', cells.Select(Csv.Cell));

    private sealed record Around(string Before, string Behind);
}
