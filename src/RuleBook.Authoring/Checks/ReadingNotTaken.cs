using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A dispute settled for a reading that it does not have.</summary>
internal static class ReadingNotTaken
{
    internal static readonly CheckInfo Info = new(
        "reading-not-taken",
        "what is taken is none of the readings",
        "A reader could not tell which source was followed.",
        "give under 'taken' one of the texts under 'says', word for word"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        from dispute in pair.Version.Disputes
        where dispute.Readings.All(reading => reading.Says != dispute.Taken)
        select Info.At(book.Value(dispute.Mark, "taken"), $"'{dispute.Taken}' is none of the readings");
}
