using RuleBook.Law;
using RuleBook.Law.Reading;

namespace RuleBook.Telling;

/// <summary>The words of editions and of their news.</summary>
internal static class EditionWords
{
    /// <summary>A kind of news as written in data.</summary>
    public static string Of(NewsKind kind) => EditionReader.Kinds[(int)kind];

    /// <summary>A kind of news as a heading.</summary>
    public static string Heading(NewsKind kind) =>
        kind switch
        {
            NewsKind.Corrected => "Past answers corrected",
            NewsKind.Law => "Answers that change",
            NewsKind.Evidence => "Better evidence, same answers",
            _ => "The tool",
        };

    /// <summary>News with the kind of its consequence and where it concerns somebody.</summary>
    public static string Sentence(News news) => $"{Heading(news.Kind)}: {Told(news)}";

    /// <summary>News without its kind: where it concerns somebody, and what.</summary>
    public static string Told(News news) => news.Places.IsEmpty ? news.Text : $"{string.Join(", ", news.Places)}: {news.Text}";

    /// <summary>How a state of the book is named: by its edition, or by the beginning of its digest and the edition before it.</summary>
    /// <param name="edition">Name of the edition; null where the book is none.</param>
    /// <param name="digest">Its digest.</param>
    public static string Called(string? edition, string digest)
    {
        var number = digest.Split(':')[^1];
        return edition is null ? $"book {number[..Math.Min(12, number.Length)]}" : $"edition {edition}";
    }
}
