using System.Collections.Immutable;
using System.Text;
using System.Text.Json;

namespace RuleBook.Text;

/// <summary>
/// JSON as the nodes that YAML would give: every scalar is its text, and its place is the byte at which it starts, as a column.
/// </summary>
internal static class JsonNodes
{
    private const int LargestInput = 1024 * 1024;

    /// <summary>Reads a text from outside, within the bounds that the command keeps.</summary>
    /// <exception cref="InputException">It cannot be read.</exception>
    public static Node Read(string json)
    {
        if (json.Length > LargestInput)
            throw Refuse(0, "the job is larger than 1 MiB");
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json), new JsonReaderOptions { MaxDepth = 64 });
        try
        {
            reader.Read();
            var root = Read(ref reader, "");
            reader.Read();
            return root;
        }
        catch (JsonException error)
        {
            throw Refuse(0, $"this cannot be read as JSON: line {error.LineNumber + 1}, character {error.BytePositionInLine + 1}");
        }
        catch (InvalidOperationException)
        {
            throw Refuse(reader.TokenStartIndex, "half of a character stands here (a surrogate without its pair)");
        }
    }

    /// <summary>The node at the reader; afterwards the reader is at its last token.</summary>
    public static Node Read(ref Utf8JsonReader reader, string file)
    {
        var mark = Here(in reader, file);
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => Keys(ref reader, file, mark),
            JsonTokenType.StartArray => List(ref reader, file, mark),
            JsonTokenType.String => new Scalar(reader.GetString()!, mark),
            JsonTokenType.Null => new Scalar("", mark),
            _ => new Scalar(Encoding.UTF8.GetString(reader.ValueSpan), mark),
        };
    }

    private static Sequence List(ref Utf8JsonReader reader, string file, Mark mark)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            items.Add(Read(ref reader, file));
        return new Sequence(items.ToImmutable(), mark);
    }

    private static Mapping Keys(ref Utf8JsonReader reader, string file, Mark mark)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<Scalar, Node>>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var key = new Scalar(reader.GetString()!, Here(in reader, file));
            if (!seen.Add(key.Text))
                throw Refuse(reader.TokenStartIndex, $"the key '{key.Text}' stands twice");
            reader.Read();
            entries.Add(KeyValuePair.Create(key, Read(ref reader, file)));
        }

        return new Mapping(entries.ToImmutable(), mark);
    }

    private static Mark Here(in Utf8JsonReader reader, string file) => new(file, 1, (int)reader.TokenStartIndex + 1);

    private static InputException Refuse(long at, string text) => new(Problem.Error("not-json", new Mark("", 1, (int)at + 1), text, ""));
}
