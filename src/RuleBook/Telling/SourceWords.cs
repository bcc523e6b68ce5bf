using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>What is said of a document that was read.</summary>
internal static class SourceWords
{
    /// <summary>Which copy was read, when what it states is in force, and what else a reader should know of it.</summary>
    public static string About(Source source) => string.Join(' ', Sentences(source));

    /// <summary>Which parts of it were read.</summary>
    public static string PartsRead(Source source) =>
        source.PartsRead switch
        {
            null when source.Copy.Contains("whole") => "whole",
            null => "whole, as far as the note does not say otherwise",
            { IsEmpty: true } => "nothing of it; known from what others wrote",
            { } parts => $"only {string.Join(", ", parts)}",
        } + (source.HasClauses ? "" : "; it has no clause numbers");

    private static IEnumerable<string> Sentences(Source source)
    {
        if (source.Copy.Select(Copy).OfType<string>().ToList() is { Count: > 0 } copies)
            yield return $"Read in {string.Join(" and ", copies)}.";
        if (source.Copy.Contains("undated"))
            yield return "The copy bears no date.";
        if (source.From is { } from)
            yield return $"In force since {from.Words}.";
        if (source.Until is { } until)
            yield return $"No longer in force since {until.Words}.";
        if (source.Note?.Trim() is { Length: > 0 } note)
            yield return note;
    }

    private static string? Copy(string word) =>
        word switch
        {
            "own" => "the authority's own copy",
            "reproduction" => "a reproduction of legislation",
            "database" => "a legal database",
            "mirror" => "a mirror",
            "re-hosted" => "a re-hosted copy",
            "upload" => "an upload of the document",
            "stored" => "a stored copy of the page",
            _ => null,
        };
}
