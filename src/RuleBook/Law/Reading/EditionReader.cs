using System.Collections.Immutable;
using System.Text.RegularExpressions;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>jurisdictions/editions.yaml</c>.</summary>
internal static partial class EditionReader
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
            Matching(fields, "edition", NamePattern(), "year, month and number within the month, such as 2026.11.1"),
            RequiredDay(fields),
            Matching(fields, "digest", DigestPattern(), "sha256: and 64 hexadecimal digits, as 'rulebook inspect' prints them"),
            fields.List("news", node => OneNews(new Fields(node, fields.Problems))),
            fields.Mark
        );
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

    private static string Matching(Fields fields, string key, Regex pattern, string right)
    {
        var text = fields.Required(key);
        if (text.Length > 0 && !pattern.IsMatch(text))
            fields.Add("not-well-formed", fields.Node(key)!.Mark, $"'{text}' is no {key}", $"write {right}");
        return text;
    }

    [GeneratedRegex(@"^\d{4}\.(1[0-2]|[1-9])\.[1-9]\d{0,3}$")]
    private static partial Regex NamePattern();

    [GeneratedRegex("^sha256:[0-9a-f]{64}$")]
    private static partial Regex DigestPattern();
}
