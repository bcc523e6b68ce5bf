using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A fact of the vocabulary that no job can state.</summary>
internal static class FactUnread
{
    internal static readonly CheckInfo Info = new(
        "fact-unread",
        "nothing reads a fact where a job is to state it",
        "It would stay unknown in every job, and each rule that asks for it open for ever.",
        "write 'job: vehicle.NAME' or 'job: modification.NAME': facts are read there, and no deeper",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Book.Vocabulary.Facts.Values.Where(fact => fact.Job.Split('.') is not ["vehicle" or "modification", _])
            .Select(fact => Info.At(book.Value(fact.Mark, "job"), $"no job is read at '{fact.Job}', so that '{fact.Name}' is never known"));
}
