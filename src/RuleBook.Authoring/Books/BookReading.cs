using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Authoring.Books;

/// <summary>Reads a book from its folder.</summary>
public static class BookReading
{
    /// <summary>The book in a folder, ready to answer; the checks of an inspection are not run.</summary>
    /// <exception cref="InputException">It cannot be read; every problem is listed.</exception>
    public static Book Open(string folder)
    {
        var files = BookFolder.Load(folder);
        var problems = new List<Problem>(files.Problems);
        var nodes = BookNodes.Read(files, problems);
        if (problems.Exists(problem => problem.Code != "stray-file")) throw new InputException([.. problems.OrderBy(problem => problem.Mark)]);
        var book = BookReader.Read(nodes, files.Digest, problems);
        return problems.Exists(problem => problem.Severity == Severity.Error)
            ? throw new InputException([.. problems.OrderBy(problem => problem.Mark)])
            : book;
    }
}
