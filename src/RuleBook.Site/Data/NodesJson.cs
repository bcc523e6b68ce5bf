using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Site.Data;

/// <summary>The whole book as JSON for the evaluator in the page: the digest, and every file's nodes; each scalar is its text.</summary>
internal static class NodesJson
{
    public const string Path = "data/book.json";

    private static readonly JsonWriterOptions Compact = new() { MaxDepth = 256, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static SiteFile Write(SiteInput input)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Compact))
        {
            json.WriteStartObject();
            json.WriteString("digest", input.Book.Digest);
            json.WriteStartObject("files");
            foreach (var file in input.Files)
            {
                json.WritePropertyName(file.Path);
                Write(json, file.Root);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return new SiteFile(Path, buffer.WrittenMemory.ToArray());
    }

    internal static void Write(Utf8JsonWriter json, Node node)
    {
        switch (node)
        {
            case Mapping map:
                json.WriteStartObject();
                foreach (var (key, value) in map.Entries)
                {
                    json.WritePropertyName(key.Text);
                    Write(json, value);
                }

                json.WriteEndObject();
                break;
            case Sequence list:
                json.WriteStartArray();
                foreach (var item in list.Items) Write(json, item);
                json.WriteEndArray();
                break;
            case Scalar scalar:
                json.WriteStringValue(scalar.Text);
                break;
        }
    }
}
