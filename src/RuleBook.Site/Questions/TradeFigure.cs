using System.Globalization;
using System.Text.Json;
using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Questions;

/// <summary>A figure of an answer: what the evaluator says of a job, found by a path in the JSON of its assessment.</summary>
internal static class TradeFigure
{
    /// <summary>The value for a reader, rounded to the whole unit; null where the assessment has none.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="path">
    /// <c>masses.unladen.lines[item=tare].mass</c>: keys, and of a list the entry by a key's value or by its place.
    /// </param>
    /// <param name="unit">Behind the number; null where the value is a word.</param>
    public static string? Of(JsonElement assessment, string path, string? unit)
    {
        if (Find(assessment, path) is not { } value)
            return null;
        return value.ValueKind switch
        {
            JsonValueKind.Number => $"{Numbers.Show(Fraction.FromDecimal(value.GetDecimal()), 0)}{(unit is null ? "" : $" {unit}")}",
            JsonValueKind.String => Words(value.GetString()!),
            _ => null,
        };
    }

    /// <summary>The element at the path; null where there is none.</summary>
    public static JsonElement? Find(JsonElement at, string path)
    {
        foreach (var step in Steps(path))
        {
            if (Inner(at, step) is not { } inner)
                return null;
            at = inner;
        }

        return at;
    }

    private static JsonElement? Inner(JsonElement at, string step) =>
        step[0] == '[' ? Entry(at, step[1..^1])
        : at.ValueKind == JsonValueKind.Object && at.TryGetProperty(step, out var inner) ? inner
        : null;

    /// <summary>Keys are parted by full stops outside of brackets; an entry of a list stands in brackets.</summary>
    private static IEnumerable<string> Steps(string path)
    {
        var rest = path;
        while (rest.Length > 0)
        {
            var end = rest[0] == '[' ? rest.IndexOf(']', StringComparison.Ordinal) + 1 : rest.IndexOfAny(['.', '[']);
            if (end <= 0)
                end = rest.Length;
            yield return rest[..end];
            rest = rest[end..].TrimStart('.');
        }
    }

    private static JsonElement? Entry(JsonElement list, string which)
    {
        if (list.ValueKind != JsonValueKind.Array)
            return null;
        if (int.TryParse(which, NumberStyles.None, CultureInfo.InvariantCulture, out var place))
            return place < list.GetArrayLength() ? list[place] : null;
        if (which.Split('=', 2) is not [var key, var wanted])
            return null;
        foreach (var entry in list.EnumerateArray())
            if (entry.TryGetProperty(key, out var value) && value.ToString() == wanted)
                return entry;
        return null;
    }

    private static string Words(string word) =>
        Enum.GetValues<Pathway>()
            .Where(pathway => Wording.Of(pathway) == word)
            .Select(Phrases.Pathway)
            .FirstOrDefault(word.Contains(' ', StringComparison.Ordinal) ? word.Trim() : word.Replace('-', ' '));
}
