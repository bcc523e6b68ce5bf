using System.Text;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Answers;

/// <summary>The editions of a book, the latest first.</summary>
internal static class EditionsText
{
    public static void Write(AnswerPage page, Book book)
    {
        page.Title(book.Edition is { } own ? $"This is edition {own.Name} of the book." : $"This book is no edition{Last(book)}.");
        page.Line($"To cite it: {Citation(book)}");
        foreach (var edition in book.Editions.Reverse())
        {
            page.Heading($"Edition {edition.Name}, {Phrases.Day(edition.Day)}");
            page.Line(edition.Digest);
            foreach (var news in edition.News.OrderBy(news => news.Kind))
                page.Item(EditionWords.Sentence(news));
        }
    }

    /// <summary>The news of the latest edition, for a release.</summary>
    public static string Markdown(Book book)
    {
        var text = new StringBuilder();
        if (book.Editions.LastOrDefault() is not { } edition)
            return "";
        text.Append($"# Edition {edition.Name} of the book, {Phrases.Day(edition.Day)}\n\n`{edition.Digest}`\n");
        foreach (var kind in edition.News.GroupBy(news => news.Kind).OrderBy(kind => kind.Key))
        {
            text.Append($"\n## {EditionWords.Heading(kind.Key)}\n\n");
            foreach (var news in kind)
                text.Append($"- {Plain(EditionWords.Told(news))}\n");
        }

        return text.ToString();
    }

    /// <summary>A line that names this state of the book for ever.</summary>
    public static string Citation(Book book) => $"RuleBook, {EditionWords.Called(book.Edition?.Name, book.Digest)}, {book.Digest}";

    private static string Last(Book book) =>
        book.Editions.LastOrDefault() is { } last ? $"; it was changed after edition {last.Name}" : "; it has none yet";

    /// <summary>Nothing in it is markup.</summary>
    private static string Plain(string text) =>
        string.Concat(
            Visible.Of(text).Select(each => "\\`*_{}[]<>#|".Contains(each, StringComparison.Ordinal) ? $"\\{each}" : each.ToString())
        );
}
