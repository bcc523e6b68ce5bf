using System.Text.RegularExpressions;
using RuleBook.Law;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>The limits of a way as a page tells them in a line: <c>75 mm in all: suspension 50 mm, no body lift</c>.</summary>
/// <param name="IsOpen">How far it goes is told as not established.</param>
/// <param name="Limits">Title of the measure and what is told of it: a range, <c>none</c> or <c>not established</c>.</param>
internal sealed partial record ReadTier(bool IsOpen, IReadOnlyList<(string Title, string Kind, ReadRange? Range)> Limits)
{
    private const string Total = "total lift";

    /// <summary>Ways by the words of the pages, each with the words that it starts with.</summary>
    public static readonly Dictionary<Pathway, string> Pathways = new()
    {
        [Pathway.NoCertificate] = "without a certificate",
        [Pathway.Certificate] = "with a certificate",
        [Pathway.Approval] = "with approval first",
        [Pathway.Prohibited] = "not allowed",
    };

    public static ReadTier Of(string words, Vocabulary vocabulary)
    {
        if (words == "how far is not established")
            return new(true, []);
        if (words is "no limit stated" or "no limits stated")
            return new(false, []);
        var limits = new List<(string, string, ReadRange?)>();
        var match = InAll().Match(words);
        if (match.Success)
            limits.Add(
                match.Groups["kind"].Value switch
                {
                    "no limit in all" => (Total, "none", null),
                    "in all not established" => (Total, "not established", null),
                    _ => Limit(Total, match.Groups["range"].Value),
                }
            );
        var parts = match.Success ? match.Groups["parts"].Value : words;
        limits.AddRange(Apart(parts, [.. vocabulary.Measures.Values.Select(measure => measure.Title)]));
        return new(false, limits);
    }

    /// <summary>Whether it tells every limit of the tier and nothing else.</summary>
    /// <param name="tier">As in the book.</param>
    /// <param name="vocabulary">Has the measures.</param>
    /// <param name="named">The way has a name, which says by itself what is left as it is.</param>
    public bool Tells(Tier tier, Vocabulary vocabulary, bool named = false)
    {
        var isOpen = !tier.Limits.IsEmpty && tier.Limits.All(limit => limit.Kind == LimitKind.NotEstablished);
        if (IsOpen || isOpen)
            return IsOpen == isOpen || (isOpen && Limits.Count > 0 && Limits.All(limit => limit.Kind == "not established"));
        var expected = tier.Limits.Where(limit => !named || !IsNothing(limit)).ToArray();
        return expected.Length == Limits.Count && expected.All(limit => Limits.Any(told => Tells(told, limit, vocabulary)));
    }

    private static bool Tells((string Title, string Kind, ReadRange? Range) told, Limit limit, Vocabulary vocabulary) =>
        told.Title == vocabulary.Measures[limit.Measure].Title
        && limit.Kind switch
        {
            LimitKind.None => told.Kind == "none",
            LimitKind.NotEstablished => told.Kind == "not established",
            _ => told.Range?.Tells(limit.Bounds!) == true,
        };

    private static bool IsNothing(Limit limit) =>
        limit.Bounds is { Upper: { Closed: true, Value.IsZero: true } } bounds && (bounds.Lower is null || bounds.Lower.Value.IsZero);

    /// <summary>A comma stands between two limits, and within some ranges: a limit begins with the name of a measure.</summary>
    private static IEnumerable<(string, string, ReadRange?)> Apart(string parts, string[] titles)
    {
        var limits = new List<(string Title, string Words)>();
        foreach (var token in parts.Split(", ", StringSplitOptions.RemoveEmptyEntries))
            if (Titled(token, titles) is { } found)
                limits.Add(found);
            else if (limits.Count > 0)
                limits[^1] = (limits[^1].Title, $"{limits[^1].Words}, {token}");
            else
                limits.Add(("", token));
        return limits.Select(each => Limit(each.Title, each.Words));
    }

    private static (string Title, string Words)? Titled(string token, string[] titles)
    {
        foreach (var title in titles.OrderByDescending(title => title.Length))
        {
            if (token == $"no {title}")
                return (title, "at most 0 mm");
            foreach (var start in new[] { title, title.EndsWith(" lift", StringComparison.Ordinal) ? title[..^5] : title })
                if (token.StartsWith(start + " ", StringComparison.Ordinal))
                    return (title, token[(start.Length + 1)..]);
        }

        return null;
    }

    private static (string, string, ReadRange?) Limit(string title, string words) =>
        words switch
        {
            "not established" => (title, words, null),
            "without limit" or "no limit" => (title, "none", null),
            _ => ReadRange.Of(words) is { } range ? (title, "range", range) : (title, $"of no known form: {words}", null),
        };

    [GeneratedRegex("^(?<kind>no limit in all|in all not established|(?<range>.+) in all)(: (?<parts>.*))?$")]
    private static partial Regex InAll();
}
