using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Site;
using RuleBook.Telling;

namespace RuleBook.Cli.Commands;

/// <summary>What the book changes against an earlier edition, as the site tells it.</summary>
internal static class EarlierEdition
{
    /// <summary>Compares the book with an earlier edition.</summary>
    /// <param name="name">A folder or a revision.</param>
    /// <param name="folder">The folder of the book.</param>
    /// <param name="book">The book.</param>
    /// <param name="compare">Compares the earlier edition, given first, with the book.</param>
    /// <exception cref="RuleBook.Text.InputException">There is no such edition, or it cannot be read.</exception>
    public static EditionChanges Of(string name, string folder, Book book, Func<Book, Book, ChangeReport> compare)
    {
        var earlier = Revision.Open(name, folder);
        var report = compare(earlier, book);
        return new EditionChanges(
            Called(name),
            earlier.Digest,
            [.. report.Answers.Select(Told)],
            [.. report.Remarks.Where(remark => remark.Kind != RemarkKind.Evidence).Select(Told)]
        );
    }

    /// <summary>A revision as given, a folder by its last name: where it lies on this machine is nobody's business.</summary>
    private static string Called(string name) =>
        Directory.Exists(name) ? Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(name))) : name;

    private static ChangedAnswer Told(AnswerChange change) =>
        new(
            change.Jurisdiction,
            change.TopicTitle,
            ChangeWords.Vehicles(change),
            ChangeWords.Days(change),
            change.Before,
            change.After,
            change.Rule,
            change.Removed ? null : change.Mark,
            change.Witness.Says,
            change.Furthest?.Says,
            change.Witness.Yaml
        );

    private static OtherChange Told(Remark remark) =>
        new(
            remark.Jurisdiction ?? "",
            remark.Place,
            remark.About,
            // What is said of a scheme names its day.
            remark is { From: { } day, Kind: not RemarkKind.Scheme }
                ? $"{remark.Text} (from {Phrases.Day(day)})"
                : remark.Text
        );
}
