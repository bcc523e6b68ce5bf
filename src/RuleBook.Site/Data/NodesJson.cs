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
                NodeJson.Write(json, file.Root);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return new SiteFile(Path, buffer.WrittenMemory.ToArray());
    }
}
