using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Authoring.Records;

/// <summary>A kept answer asked again.</summary>
/// <param name="File">The file of the record.</param>
/// <param name="Kept">The record; null where it cannot be read.</param>
/// <param name="Now">The record of the answer for the same job and day; null where there is none.</param>
/// <param name="OwnDay">How the kept answer and the one for its own day compare.</param>
/// <param name="Today">How the answers for its own day and for the same work today compare.</param>
/// <param name="Asked">The answer for the same work today.</param>
/// <param name="Problem">Why there is no answer; null where there is one.</param>
public sealed record Rechecked(
    string File,
    SavedRecord? Kept,
    SavedRecord? Now,
    AnswerComparison? OwnDay,
    AnswerComparison? Today,
    Assessment? Asked,
    Problem? Problem
)
{
    /// <summary>The decision is another one, or a figure that decides, for the day of the job: the kept answer no longer stands.</summary>
    public bool Changed => OwnDay is { Same: false, OnlyWords: false };

    /// <summary>The same work today would get another decision.</summary>
    public bool MovedOn => Today?.Decision is not null;

    /// <summary>Asks again.</summary>
    /// <param name="file">The file of the record.</param>
    /// <param name="kept">The record.</param>
    /// <param name="book">Today's book.</param>
    /// <param name="tool">Version of the command.</param>
    /// <param name="today">Today.</param>
    /// <exception cref="InputException">The book does not understand the job any more.</exception>
    public static Rechecked Of(string file, SavedRecord kept, Book book, string tool, DateOnly today)
    {
        var again = kept.Ask(book);
        var now = SavedRecord.Of(book, kept.Job, kept.Place, again, tool, today);
        var asked = kept.Ask(book, today);
        return new Rechecked(
            file,
            kept,
            now,
            AnswerComparison.Of(kept.Answer, now.Answer),
            AnswerComparison.Of(now.Answer, AssessmentJson.Write(asked).TrimEnd('\n')),
            asked,
            null
        );
    }

    /// <summary>A record that cannot be asked again.</summary>
    public static Rechecked Refused(string file, Problem problem) => new(file, null, null, null, null, null, problem);
}
