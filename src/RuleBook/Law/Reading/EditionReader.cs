using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>jurisdictions/editions.yaml</c>.</summary>
internal static class EditionReader
{
    /// <summary>The file, which the digest of a book leaves out: it names digests.</summary>
    public const string Path = "jurisdictions/editions.yaml";

    /// <summary>The words for kinds of news, in the order of <see cref="NewsKind"/>.</summary>
    public static readonly ImmutableArray<string> Kinds = ["corrected", "law", "evidence", "tool"];

    /// <summary>The editions, oldest first; none where the book has no such file.</summary>
    public static ImmutableArray<Edition> Read(IReadOnlyList<BookFile> files, List<Problem> problems)
    {
        if (files.FirstOrDefault(file => file.Path == Path) is not { } file)
            return [];
        var fields = new Fields(file.Root, problems);
        var editions = fields.List("editions", node => One(new Fields(node, problems)));
        fields.Done();
        return editions;
    }

    private static Edition One(Fields fields)
    {
        var edition = new Edition(
            Matching(fields, "edition", IsName, "year, month and number within the month, such as 2026.11.1"),
            RequiredDay(fields),
            Matching(fields, "digest", IsDigest, "sha256: and 64 hexadecimal digits, as 'rulebook inspect' prints them"),
            fields.Mark
        )
        {
            News = fields.List("news", node => OneNews(new Fields(node, fields.Problems))),
        };
        fields.Done();
        return edition;
    }

    private static News OneNews(Fields fields)
    {
        if (!fields.Has("kind"))
            fields.Missing("kind");
        var kind = fields.Word("kind", [.. Kinds]) is { } word ? (NewsKind)Kinds.IndexOf(word) : NewsKind.Law;
        var news = new News(kind, fields.Texts("jurisdictions"), fields.Day("from"), fields.Required("text"));
        fields.Done();
        return news;
    }

    private static DateOnly RequiredDay(Fields fields)
    {
        if (!fields.Has("day"))
            fields.Missing("day");
        return fields.Day("day") ?? DateOnly.MinValue;
    }

    private static string Matching(Fields fields, string key, Func<string, bool> isOne, string right)
    {
        var text = fields.Required(key);
        if (text.Length > 0 && !isOne(text))
            fields.Add("not-well-formed", fields.Node(key)!.Mark, $"'{text}' is no {key}", $"write {right}");
        return text;
    }

    internal static bool IsName(string text)
    {
        var cursor = new Cursor(text);
        return cursor.TakeDigits(4, out _)
            && cursor.Take(".")
            && cursor.Take(char.IsAsciiDigit) is [>= '1', ..] and ([_] or ['1', <= '2'])
            && cursor.Take(".")
            && cursor.Take(char.IsAsciiDigit, 4) is [>= '1', ..]
            && cursor.IsAtEnd;
    }

    internal static bool IsDigest(string text)
    {
        var cursor = new Cursor(text);
        return cursor.Take("sha256:") && cursor.Take(char.IsAsciiHexDigitLower).Length == 64 && cursor.IsAtEnd;
    }
}
