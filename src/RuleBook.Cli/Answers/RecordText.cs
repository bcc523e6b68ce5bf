using System.Globalization;
using RuleBook.Authoring.Records;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Cli.Answers;

/// <summary>Kept answers against those of a book.</summary>
internal static class RecordText
{
    /// <summary>One record asked again.</summary>
    public static void Replayed(AnswerPage page, SavedRecord kept, Book book, AnswerComparison comparison, string tool)
    {
        page.Title(
            comparison.Same ? "The same answer, to the byte."
                : comparison.OnlyWords ? "The same answer in other words: nothing that decides differs."
                : comparison.Decision is { } decision ? $"ANOTHER ANSWER: {decision.Before} -> {decision.Now}."
                : "The same decision; what it rests on differs.",
            comparison.Same || comparison.OnlyWords ? VerdictColour.Free : VerdictColour.Open
        );
        page.Line($"Kept: {Phrases.Day(kept.Made)}, {EditionWords.Called(kept.Edition, kept.Book)}, rulebook {kept.Tool}.");
        page.Line($"Asked again: {EditionWords.Called(book.Edition?.Name, book.Digest)}, rulebook {tool}.");
        foreach (var difference in comparison.Differences)
            page.Item(Words(difference));
        if (kept.Book != book.Digest)
            page.Aside("With the edition that it was made with: --book FILE, the file that 'rulebook pack' wrote.", 0);
    }

    /// <summary>A line a record, then what differs.</summary>
    public static void Rechecked(AnswerPage page, IReadOnlyList<Rechecked> all, Book book)
    {
        var (changed, moved, refused) = (
            all.Count(one => one.Changed),
            all.Count(one => one is { Changed: false, MovedOn: true }),
            all.Count(one => one.Problem is not null)
        );
        page.Title(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{all.Count} kept answers by {EditionWords.Called(book.Edition?.Name, book.Digest)}: {changed} no longer stand, "
                    + $"{moved} would be others today, {refused} not asked."
            ),
            changed + moved + refused == 0 ? VerdictColour.Free : VerdictColour.Open
        );
        foreach (var one in all)
        {
            var name = Path.GetFileName(one.File);
            page.Item(
                one switch
                {
                    { Problem: { } problem } => $"{name}: {problem.Text}",
                    { Changed: true, OwnDay.Decision: { } decision } => $"{name}: NO LONGER STANDS: {decision.Before} -> {decision.Now}",
                    { Changed: true } => $"{name}: the same decision; what it rests on differs",
                    { Today.Decision: { } decision } => $"{name}: stands for its day; today: {decision.Now}",
                    { OwnDay.OnlyWords: true } => $"{name}: stands, in other words",
                    _ => $"{name}: stands",
                },
                one.Problem is not null ? "?"
                    : one.Changed ? "x"
                    : one.MovedOn ? "!"
                    : "ok"
            );
            foreach (
                var difference in (
                    one.Changed ? one.OwnDay
                    : one.MovedOn ? one.Today
                    : null
                )?.Differences
                    ?? []
            )
                page.Aside(Words(difference));
        }
    }

    /// <summary>A difference in a line.</summary>
    public static string Words(AnswerDifference difference)
    {
        var kind = difference.Kind switch
        {
            DifferenceKind.RuleChanged => "rule changed",
            DifferenceKind.FigureCorrected => "figure corrected",
            DifferenceKind.Condition => "condition",
            DifferenceKind.Reckoned => "reckoned differently",
            _ => "stands in the way",
        };
        var rule = difference.Rule.Length > 0 ? $"{difference.Rule}, " : "";
        return $"{kind}: {rule}{difference.What}: {difference.Before ?? "not there"} -> {difference.Now ?? "not there"}";
    }
}
