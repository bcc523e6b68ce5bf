using System.Globalization;
using System.Text;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Browser;

/// <summary>Names the places in a job's JSON by the keys that lead there, so that the page finds the field.</summary>
internal static class JsonPaths
{
    /// <summary>
    /// The problems, each with the path of its place (<c>vehicle.tyres[0]</c>) as its file; as they are where there is none.
    /// </summary>
    public static IReadOnlyList<Problem> Placed(string json, IReadOnlyList<Problem> problems)
    {
        var wanted = problems
            .Where(problem => problem.Mark is { File: "", Line: 1 })
            .Select(problem => problem.Mark.Column - 1L)
            .ToHashSet();
        var found = wanted.Count == 0 ? [] : Find(Encoding.UTF8.GetBytes(json), wanted);
        return
        [
            .. problems.Select(problem =>
                found.TryGetValue(problem.Mark.Column - 1L, out var path) ? problem with { Mark = new Mark(path, 1, 1) } : problem
            ),
        ];
    }

    private static Dictionary<long, string> Find(byte[] json, HashSet<long> wanted)
    {
        var found = new Dictionary<long, string>();
        var steps = new Stack<Step>();
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = 64 });
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                {
                    steps.Pop();
                    continue;
                }

                if (reader.TokenType == JsonTokenType.PropertyName)
                    steps.Peek().Key = Encoding.UTF8.GetString(reader.ValueSpan);
                else if (steps.TryPeek(out var list) && list.Key is null)
                    list.Index++;
                if (wanted.Contains(reader.TokenStartIndex))
                    found[reader.TokenStartIndex] = Path(steps);
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                    steps.Push(new Step { Key = reader.TokenType == JsonTokenType.StartObject ? "" : null });
            }
        }
        catch (JsonException)
        {
            // What comes after the place that could not be read has no path.
        }

        return found;
    }

    private static string Path(Stack<Step> steps)
    {
        var path = new StringBuilder();
        foreach (var step in steps.Reverse())
            if (step.Key is null)
                path.Append(CultureInfo.InvariantCulture, $"[{step.Index}]");
            else if (step.Key.Length > 0)
                path.Append(path.Length == 0 ? "" : ".").Append(step.Key);
        return path.ToString();
    }

    /// <summary>A mapping at one of its keys, or a list (no key) at one of its items.</summary>
    private sealed class Step
    {
        public string? Key { get; set; }

        public int Index { get; set; } = -1;
    }
}
