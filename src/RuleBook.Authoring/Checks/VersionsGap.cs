using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A stated end before the start of the next version.</summary>
internal static class VersionsGap
{
    internal static readonly CheckInfo Info = new(
        "versions-gap",
        "no version is in force for a time",
        "A gap must be said, not left: what applied then is either known or not established.",
        "leave 'until' out, or add a version for the time between (not-established or not-regulated)"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Dated
            .Pairs(book)
            .Where(pair => pair is { Earlier.Until: { } until, Later.From: { } next } && Dated.Before(until, next))
            .Select(pair =>
                Info.At(
                    book.Key(pair.Earlier.Mark, "until"),
                    $"until {pair.Earlier.Until}, but the next version starts only {pair.Later.From}"
                )
            );
}
