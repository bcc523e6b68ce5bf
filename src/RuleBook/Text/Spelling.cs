using Quickenshtein;

namespace RuleBook.Text;

/// <summary>"Did you mean" by edit distance.</summary>
internal static class Spelling
{
    /// <summary>What is longer is no word that was misspelt.</summary>
    private const int Longest = 64;

    /// <summary>
    /// The nearest of <paramref name="words"/>, where one is near enough to be meant; null otherwise. Capitals count for nothing, and the
    /// end of an id (<c>qld</c> of <c>au-qld</c>) stands for it.
    /// </summary>
    public static string? Nearest(string written, IEnumerable<string> words) =>
        written.Length is 0 or > Longest ? null : Near(written.ToLowerInvariant(), [.. words.Distinct()]);

    private static string? Near(string written, string[] words) =>
        words.FirstOrDefault(word => word.Equals(written, StringComparison.OrdinalIgnoreCase))
        ?? words.FirstOrDefault(word => word.EndsWith("-" + written, StringComparison.OrdinalIgnoreCase))
        ?? words
            .Where(word => Math.Abs(word.Length - written.Length) <= Math.Max(2, word.Length / 3))
            .Select(word => (word, distance: Levenshtein.GetDistance(written, word.ToLowerInvariant())))
            .Where(pair => pair.distance <= Math.Max(2, pair.word.Length / 3) && pair.distance < Math.Max(written.Length, pair.word.Length))
            .OrderBy(pair => pair.distance)
            .ThenBy(pair => pair.word, StringComparer.Ordinal)
            .Select(pair => pair.word)
            .FirstOrDefault();

    /// <summary>A tip where all the words are told already: the nearest, where one is near enough.</summary>
    public static string NearestTip(string written, IEnumerable<string> words) =>
        Nearest(written, words) is { } near ? $"did you mean '{near}'?" : "";

    /// <summary>A tip: the nearest word, or all of them.</summary>
    public static string Tip(string written, IReadOnlyCollection<string> words) =>
        NearestTip(written, words) is { Length: > 0 } near ? near
        : words.Count == 0 ? ""
        : $"known here: {string.Join(", ", words.Distinct().Order(StringComparer.Ordinal))}";
}
