using RuleBook.Text;

namespace RuleBook.Authoring.Books;

/// <summary>The texts of what can be wrong with a book's folder.</summary>
internal static class BookProblems
{
    internal static Problem NotABook(string folder) => Problem.Error(
        "not-a-book",
        new Mark(folder, 1, 1),
        "the folder has no folder 'jurisdictions' in it",
        "name the folder of a book: the one that has jurisdictions/ and schema/");

    internal static Problem Stray(string path) => Problem.Error(
        "stray-file",
        new Mark(path, 1, 1),
        $"'{path}' is not a file of a book",
        "a book has jurisdictions/<id>/<topic>.yaml, sources.yaml and jurisdiction.yaml; rename or remove it");
}
