using System.Text.RegularExpressions;
using RuleBook.Law;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>A way as logs and feeds write it: <c>with a certificate (stability control: no): 150 mm in all</c>.</summary>
internal sealed partial record WrittenTier(string Pathway, string When, string Limits)
{
    public static WrittenTier? Of(string line) =>
        Form().Match(line) is { Success: true } match
            ? new(match.Groups["pathway"].Value, match.Groups["when"].Value, match.Groups["limits"].Value)
            : null;

    /// <summary>The ways of a version that stand in a line behind one another, then what holds beyond them.</summary>
    public static string[] Apart(string line) => Between().Split(line);

    public bool Tells(Tier tier, Vocabulary vocabulary) =>
        Pathway == ReadTier.Pathways[tier.Pathway]
        && (When.Length > 0) == tier.When.Tests.Any(test => Narrows(test, vocabulary))
        && tier.When.Tests.Where(test => test.Bounds is null && Narrows(test, vocabulary)).All(test => test.OneOf.All(When.Contains))
        && ReadTier.Of(Limits, vocabulary).Tells(tier, vocabulary);

    /// <summary>A test that every word of a fact passes says nothing.</summary>
    private static bool Narrows(FactTest test, Vocabulary vocabulary) =>
        test.Bounds is not null || vocabulary.Facts[test.Fact].Values.Length != test.OneOf.Length;

    [GeneratedRegex(
        @"^(?<pathway>without a certificate|with a certificate|with approval first|not allowed)( \((?<when>.*)\))?: (?<limits>.*)$"
    )]
    private static partial Regex Form();

    [GeneratedRegex("; (?=without a certificate|with a certificate|with approval first|not allowed|beyond: )")]
    private static partial Regex Between();
}
