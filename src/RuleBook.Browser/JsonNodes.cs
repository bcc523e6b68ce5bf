using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Browser;

/// <summary>JSON as the nodes that YAML would give: every scalar is its text, and its place is the path of keys to it.</summary>
internal static class JsonNodes
{
    private const int LargestInput = 1024 * 1024;

    /// <summary>Reads a text from outside, within the bounds that the command keeps.</summary>
    /// <exception cref="InputException">It cannot be read.</exception>
    public static Node Read(string json)
    {
        if (json.Length > LargestInput) throw Refuse("", "the job is larger than 1 MiB");
        try
        {
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json), new JsonReaderOptions { MaxDepth = 64 });
            reader.Read();
            var root = Read(ref reader, "");
            reader.Read();
            return root;
        }
        catch (JsonException error)
        {
            throw Refuse("", $"this cannot be read as JSON: line {error.LineNumber + 1}, character {error.BytePositionInLine + 1}");
        }
    }

    /// <summary>The node at the reader; afterwards the reader is at its last token.</summary>
    internal static Node Read(ref Utf8JsonReader reader, string path)
    {
        var mark = new Mark(path, 1, 1);
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => Keys(ref reader, path, mark),
            JsonTokenType.StartArray => List(ref reader, path, mark),
            JsonTokenType.String => new Scalar(reader.GetString()!, mark),
            JsonTokenType.Null => new Scalar("", mark),
            _ => new Scalar(Encoding.UTF8.GetString(reader.ValueSpan), mark),
        };
    }

    private static Sequence List(ref Utf8JsonReader reader, string path, Mark mark)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) items.Add(Read(ref reader, $"{path}[{items.Count}]"));
        return new Sequence(items.ToImmutable(), mark);
    }

    private static Mapping Keys(ref Utf8JsonReader reader, string path, Mark mark)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<Scalar, Node>>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var key = reader.GetString()!;
            var at = path.Length == 0 ? key : $"{path}.{key}";
            if (entries.Any(entry => entry.Key.Text == key)) throw Refuse(at, $"the key '{key}' stands twice");
            reader.Read();
            entries.Add(KeyValuePair.Create(new Scalar(key, new Mark(at, 1, 1)), Read(ref reader, at)));
        }

        return new Mapping(entries.ToImmutable(), mark);
    }

    private static InputException Refuse(string path, string text) => new(Problem.Error("not-json", new Mark(path, 1, 1), text, ""));
}
