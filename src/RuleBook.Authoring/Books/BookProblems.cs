using RuleBook.Text;

namespace RuleBook.Authoring.Books;

/// <summary>The texts of what can be wrong with a book's folder.</summary>
internal static class BookProblems
{
    internal static Problem NotABook(string folder) =>
        Problem.Error(
            "not-a-book",
            new Mark(folder, 1, 1),
            "the folder has no folder 'jurisdictions' in it",
            "name the folder of a book: the one that has jurisdictions/ and schema/"
        );

    internal static Problem Stray(string path) =>
        Problem.Error(
            "stray-file",
            new Mark(path, 1, 1),
            $"'{path}' is not a file of a book",
            "a book has jurisdictions/<id>/<topic>.yaml, sources.yaml and jurisdiction.yaml; rename or remove it"
        );

    internal static Problem Link(string path) =>
        Problem.Error(
            "link-in-book",
            new Mark(path, 1, 1),
            "this is a link, and a link may lead to a file that is nobody's business",
            "put the file itself there"
        );

    internal static Problem TooLarge() =>
        Problem.Error(
            "too-large",
            new Mark("jurisdictions", 1, 1),
            $"the book has more than {BookFolder.MostFiles} files or {BookFolder.MostBytes / 1024 / 1024} MiB",
            "check that this is the folder you meant"
        );
}
