using System.Collections.Immutable;

namespace RuleBook.Text;

/// <summary>The keys of one mapping, read one by one; what is wrong or left over goes to <paramref name="problems"/>.</summary>
internal sealed class Fields(Node node, List<Problem> problems)
{
    private readonly Mapping map = node as Mapping ?? Refuse(node, problems);
    private readonly List<string> known = [];

    public Mark Mark => node.Mark;

    public List<Problem> Problems => problems;

    public IEnumerable<(Scalar Key, Node Value)> Entries => map.Entries.Select(entry => (entry.Key, entry.Value));

    public bool Has(string key) => Node(key) is not null;

    /// <summary>The value under the key, where it is given.</summary>
    public Node? Node(string key)
    {
        known.Add(key);
        return map.Find(key);
    }

    /// <summary>Nested keys, where they are given.</summary>
    public Fields? Nested(string key) => Node(key) is { } inner ? new Fields(inner, problems) : null;

    public string? Text(string key) => Node(key) is { } value ? TextOf(value) : null;

    public string Required(string key)
    {
        if (Text(key) is { } text)
            return text;
        if (!Has(key))
            Missing(key);
        return "";
    }

    public T? Read<T>(string key, Func<Node, T?> read)
        where T : class => Node(key) is { } value ? read(value) : null;

    public DateOnly? Day(string key) => Node(key) is { } value ? DayOf(value) : null;

    /// <summary>Whether a job says that it does not know.</summary>
    public bool IsUnknown(string key) => Node(key) is Scalar { Text: "unknown" };

    /// <summary>Yes or no, null where a job does not know.</summary>
    public bool? KnownYesNo(string key) => IsUnknown(key) ? null : YesNo(key);

    public bool? YesNo(string key) => Word(key, ["yes", "no"]) is { } word ? word == "yes" : null;

    /// <summary>One of some words.</summary>
    public string? Word(string key, params ReadOnlySpan<string> words) => Node(key) is { } value ? WordOf(value, words) : null;

    public string? WordOf(Node value, params ReadOnlySpan<string> words)
    {
        if (TextOf(value) is not { } text)
            return null;
        text = text switch
        {
            "true" => "yes",
            "false" => "no",
            _ => text,
        };
        if (words.Contains(text))
            return text;
        var choices = words.ToArray();
        problems.Add(
            Problem.Error(
                "not-a-word",
                value.Mark,
                $"'{text}' is not one of {string.Join(", ", choices)}",
                Spelling.NearestTip(text, choices)
            )
        );
        return null;
    }

    /// <summary>A list of texts; a single text counts as a list of one.</summary>
    public ImmutableArray<string> Texts(string key) => List(key, TextOf);

    /// <summary>A list; a single value counts as a list of one. What cannot be read is left out and reported.</summary>
    public ImmutableArray<T> List<T>(string key, Func<Node, T?> read)
        where T : class =>
        Node(key) switch
        {
            null => [],
            Sequence many => [.. many.Items.Select(read).OfType<T>()],
            var one => read(one) is { } item ? [item] : [],
        };

    /// <summary>Reports every key that nobody asked for.</summary>
    public void Done()
    {
        foreach (var (key, _) in map.Entries)
            if (!known.Contains(key.Text))
                problems.Add(Problem.Error("unknown-key", key.Mark, $"'{key.Text}' is not a key here", Spelling.Tip(key.Text, known)));
    }

    public void Missing(string key) => problems.Add(Problem.Error("missing-key", Mark, $"the key '{key}' is missing", $"add '{key}:'"));

    public void Add(string code, Mark mark, string text, string tip) => problems.Add(Problem.Error(code, mark, text, tip));

    public string? TextOf(Node value)
    {
        if (value is Scalar scalar && !string.IsNullOrWhiteSpace(scalar.Text))
            return scalar.Text.Trim();
        problems.Add(Problem.Error("wrong-shape", value.Mark, "a text is needed here", "write the value after the key"));
        return null;
    }

    public DateOnly? DayOf(Node value)
    {
        if (TextOf(value) is not { } text)
            return null;
        if (CalendarDay.TryParse(text, out var day))
            return day;
        problems.Add(Problem.Error("not-a-date", value.Mark, $"'{text}' is not a day of the calendar", CalendarDay.Tip(text)));
        return null;
    }

    private static Mapping Refuse(Node node, List<Problem> problems)
    {
        problems.Add(Problem.Error("wrong-shape", node.Mark, "keys with values are needed here", "write 'key: value' lines"));
        return new Mapping([], node.Mark);
    }
}
