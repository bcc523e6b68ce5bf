using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A stated end after the start of the next version.</summary>
internal static class VersionsOverlap
{
    internal static readonly CheckInfo Info = new(
        "versions-overlap",
        "two versions are in force at once",
        "Nobody could say which of them decides.",
        "leave 'until' out: a version ends where the next begins"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Dated
            .Pairs(book)
            .Where(pair => pair is { Earlier.Until: { } until, Later.From: { } next } && Dated.Before(next, until))
            .Select(pair =>
                Info.At(book.Key(pair.Earlier.Mark, "until"), $"until {pair.Earlier.Until}, but the next version starts {pair.Later.From}")
            );
}
