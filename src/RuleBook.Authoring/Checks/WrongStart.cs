using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A wrong combination of from, in-force-by, announced and proposed.</summary>
internal static class WrongStart
{
    internal static readonly CheckInfo Info = new(
        "wrong-start",
        "a version's start is not clear",
        "On the days around it nobody could say which version is in force.",
        "give 'from: DATE'; or 'from: unknown' with 'in-force-by: DATE'; or 'announced: DATE'; or 'proposed: yes'"
    );

    private static readonly string[] Ways = ["from", "announced", "proposed"];

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Versions.Select(pair => pair.Version.Mark)
            .Concat(book.SchemeVersions.Select(pair => pair.Version.Mark))
            .Select(mark => (mark, wrong: Wrong(book, mark)))
            .Where(pair => pair.wrong is not null)
            .Select(pair => Info.At(pair.mark, pair.wrong!));

    private static string? Wrong(Inspected book, Mark mark)
    {
        string[] ways = [.. Ways.Where(key => book.Text(mark, key) is not null and not "no")];
        return (ways, book.Text(mark, "from"), book.Text(mark, "in-force-by")) switch
        {
            ([], _, _) => "the version says neither since when it is in force nor that it is only announced",
            ({ Length: > 1 }, _, _) => $"{string.Join(" and ", ways)} cannot both be given",
            (["from"], "unknown", null) => "the start is unknown, and nothing says by when it is seen in force",
            (["from"], not "unknown", not null) => "in-force-by is for an unknown start only",
            (["announced" or "proposed"], _, not null) => "what is only announced or proposed is not in force by any day",
            (["announced" or "proposed"], _, _) when book.Text(mark, "until") is not null =>
                "what is only announced or proposed does not end",
            _ => null,
        };
    }
}
