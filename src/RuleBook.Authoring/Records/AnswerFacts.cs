using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Authoring.Records;

/// <summary>What an answer decides, without its words: two answers with the same facts differ in words only.</summary>
/// <param name="Decision">Headline and pathways, for a reader.</param>
/// <param name="Rules">By full id, the day from which its version is in force and the pathway that it gives.</param>
/// <param name="Figures">By rule, tier, measure and end, the limit as written in JSON.</param>
/// <param name="Conditions">By rule and condition, its state.</param>
/// <param name="Measures">By measure, its value as written in JSON.</param>
/// <param name="Blockers">By id, what stands in the way, for a reader.</param>
internal sealed record AnswerFacts(
    string Decision,
    IReadOnlyDictionary<string, (string From, string Gives)> Rules,
    IReadOnlyDictionary<(string Rule, string Tier, string Measure, string End), string> Figures,
    IReadOnlyDictionary<(string Rule, string Condition), string> Conditions,
    IReadOnlyDictionary<string, string> Measures,
    IReadOnlyDictionary<string, string> Blockers
)
{
    /// <summary>Of an answer's JSON.</summary>
    public static AnswerFacts Of(string answer)
    {
        using var document = JsonDocument.Parse(answer);
        var root = document.RootElement;
        JsonElement[] findings = [.. Items(root, "findings"), .. Items(root, "of-use")];
        return new AnswerFacts(
            Decided(Text(root, "headline"), Gives(root)),
            First(findings, finding => Text(finding, "rule"), finding => (Text(finding, "from"), Gives(finding))),
            First(findings.SelectMany(Figured), each => each.Key, each => each.Value),
            First(
                findings.SelectMany(finding => Items(finding, "conditions").Select(condition => (Rule: Text(finding, "rule"), condition))),
                each => (each.Rule, Text(each.condition, "condition")),
                each => Text(each.condition, "state")
            ),
            First(Items(root, "measures"), each => Text(each, "measure"), each => $"{Raw(each, "value")} {Text(each, "unit")}"),
            First(Items(root, "blockers"), each => Text(each, "id"), each => Text(each, "text"))
        );
    }

    private static string Decided(string headline, string gives) =>
        headline == Headlines.Word(Headline.NothingToJudge) ? "nothing to judge"
        : headline == Headlines.Word(Headline.Blocked) ? $"not as planned; the modification itself {gives}"
        : headline == Headlines.Word(Headline.Undecided) ? $"undecided, {gives}"
        : gives;

    /// <summary>The pathways between which something lies, for a reader.</summary>
    private static string Gives(JsonElement element) =>
        string.Join(" or ", Items(element, "between").Select(each => Spoken(each.GetString() ?? "")).Distinct());

    private static string Spoken(string word) =>
        Enum.GetValues<Pathway>().Where(pathway => Wording.Of(pathway) == word).Select(Wording.Spoken).FirstOrDefault(word);

    private static IEnumerable<((string, string, string, string) Key, string Value)> Figured(JsonElement finding) =>
        Items(finding, "limits")
            .Concat(Items(finding, "exceeded"))
            .Concat(Items(finding, "closed").SelectMany(closed => Items(closed, "limits")))
            .Select(limit =>
                (
                    (
                        Text(finding, "rule"),
                        Text(limit, "tier"),
                        Text(limit, "measure"),
                        Text(limit, "bound") is "at-least" or "over" ? "lower" : "upper"
                    ),
                    Text(limit, "kind") == "limit"
                        ? $"{Text(limit, "bound")} {Raw(limit, "limit")} {Text(limit, "unit")}"
                        : Text(limit, "kind")
                )
            );

    private static Dictionary<TKey, TValue> First<TItem, TKey, TValue>(
        IEnumerable<TItem> items,
        Func<TItem, TKey> key,
        Func<TItem, TValue> value
    )
        where TKey : notnull => items.DistinctBy(key).ToDictionary(key, value);

    private static JsonElement.ArrayEnumerator Items(JsonElement element, string name) =>
        element.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.Array ? found.EnumerateArray() : default;

    private static string Text(JsonElement element, string name) =>
        element.TryGetProperty(name, out var found) && found.ValueKind == JsonValueKind.String ? found.GetString()! : "";

    private static string Raw(JsonElement element, string name) => element.TryGetProperty(name, out var found) ? found.GetRawText() : "";
}
