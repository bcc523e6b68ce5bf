using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Books;

/// <summary>The files of a book as nodes.</summary>
internal static class BookNodes
{
    /// <summary>Reads every file; one that cannot be read is left out and reported, and does not hide the others.</summary>
    internal static List<BookFile> Read(BookFolder folder, List<Problem> problems)
    {
        var files = new List<BookFile>();
        foreach (var (path, text) in folder.Files)
        {
            try
            {
                files.Add(new BookFile(path, YamlText.Read(text, path)));
            }
            catch (InputException refusal)
            {
                problems.AddRange(refusal.Problems);
            }
        }

        return files;
    }
}
