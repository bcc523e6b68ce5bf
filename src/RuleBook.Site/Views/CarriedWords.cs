using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Site.Views;

/// <summary>What a citation carries, in words.</summary>
internal static class CarriedWords
{
    private static readonly ImmutableDictionary<string, string> Known = new Dictionary<string, string>
    {
        [Part.Existence.Name] = "that there is such a rule",
        [Part.From.Name] = "the first day",
        [Part.Until.Name] = "the last day",
        [Part.Measured.Name] = "how it is measured",
        [Part.Beyond.Name] = "what holds beyond the limits",
        [Part.Adopts.Name] = "the adoption",
        [Part.NotRegulated.Name] = "that there is no such rule",
        [Part.Limits] = "every figure",
        [Part.Conditions] = "the conditions",
        [Part.Codes] = "the codes",
        [Part.When] = "the vehicles",
        [Part.Gives] = "the pathway",
    }.ToImmutableDictionary();

    /// <summary>The words under <c>carries</c>; where there are none, all that the citation stands on.</summary>
    public static string Of(SiteBook site, ImmutableArray<string>? words) =>
        words is { } named ? string.Join(", ", named.Select(word => Of(site, word))) : "all that it stands on";

    private static string Of(SiteBook site, string word) =>
        word.Split('.') is [var tier, var part] ? $"{One(site, part)} ({tier.Replace('-', ' ')})" : One(site, word);

    private static string One(SiteBook site, string word) =>
        Known.TryGetValue(word, out var said) ? said
        : site.Words.Measures.ContainsKey(word) ? site.MeasureTitle(word)
        : word.Replace('-', ' ');
}
