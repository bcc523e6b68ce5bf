using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Partly known dates that do not tell the order.</summary>
internal static class PartialDatesOverlap
{
    internal static readonly CheckInfo Info = new(
        "partial-dates-overlap",
        "two dates of versions may be either way round",
        "Where a date is known only in part, the order of the versions must still be known.",
        "give the dates more exactly; leave out 'until' where the next version ends this one"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Dated.Pairs(book).SelectMany(pair => Found(book, pair.Earlier, pair.Later));

    private static IEnumerable<Problem> Found(Inspected book, Dated earlier, Dated later)
    {
        if (later.From is not { } next)
            yield break;
        if (earlier.From is { } from && from.Earliest <= next.Latest && next.Earliest < from.Latest)
            yield return Info.At(book.Key(later.Mark, "from"), $"{next} may be before or after {from}, where the version before it starts");
        if (earlier.Until is { } until && until.Text != next.Text && !Dated.Before(until, next) && !Dated.Before(next, until))
            yield return Info.At(book.Key(earlier.Mark, "until"), $"{until} may be before or after {next}, where the next version starts");
    }
}
