using AngleSharp.Dom;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// Pages of an invented book read whole, a line a heading, paragraph, item or part of a cell. What is expected stands in
/// <c>tests/invented-book/pages</c> and is held by a person, line by line, against the book beside it; no command writes it.
/// </summary>
public sealed class WholePageTests
{
    private const string Ending = ".txt";

    private static readonly string Expected = Path.Combine(TheBook.Folder, "tests", "invented-book", "pages");

    private static SiteBook Site => InventedBook.Site;

    public static TheoryData<string> Pages() =>
        [
            .. Directory
                .EnumerateFiles(Expected, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Expected, file).Replace(Path.DirectorySeparatorChar, '/')[..^Ending.Length])
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_reads_as_the_book_beside_it(string path)
    {
        var lines = new List<string> { "" };
        Say(InventedPages.Of(path).QuerySelector("main")!, lines);
        string.Join('\n', lines.Select(Plain).Where(line => line.Length > 0).Append(""))
            .Replace(Site.Book.Digest, "sha256:...", StringComparison.Ordinal)
            .ShouldBe(File.ReadAllText(Path.Combine(Expected, path + Ending)));
    }

    private static void Say(INode node, List<string> lines)
    {
        if (node is IText text)
            lines[^1] += text.Data;
        if (node is IElement { LocalName: "svg" or "option" or "script" or "template" })
            return;
        var apart =
            node
            is IElement
                {
                    LocalName: "h1" or "h2" or "h3" or "h4" or "p" or "li" or "dt" or "dd" or "tr" or "caption" or "summary" or "div"
                }
                or IElement { LocalName: "br" }
                or IElement { LocalName: "span" or "b" or "a", ParentElement.LocalName: "dd" or "th" };
        if (apart)
            lines.Add(node is IElement { LocalName: ['h', var level] } ? new string('#', level - '0') + " " : "");
        foreach (var child in node.ChildNodes)
        {
            Say(child, lines);
            if (child is IElement { LocalName: "td" or "th" })
                lines[^1] += " | ";
        }

        if (apart)
            lines.Add("");
    }

    private static string Plain(string line) =>
        string.Join(' ', line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).TrimEnd('|', ' ');
}
