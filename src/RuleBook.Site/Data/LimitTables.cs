using System.Buffers;
using System.Text;
using System.Text.Json;
using RuleBook.Law;

namespace RuleBook.Site.Data;

/// <summary>The limits as CSV (RFC 4180) and as JSON, one file a jurisdiction and one for all.</summary>
internal static class LimitTables
{
    /// <summary>Version of the table's shape; changes when a column does.</summary>
    public const string Version = "2";

    public static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n" };

    public static IEnumerable<SiteFile> Of(SiteBook site)
    {
        var all = new List<LimitRow>();
        foreach (var place in site.Places)
        {
            var rows = LimitRow.Of(site, place).ToArray();
            all.AddRange(rows);
            yield return new SiteFile($"data/{Links.Slug(place.Id)}.csv", Csv(rows));
            yield return new SiteFile($"data/{Links.Slug(place.Id)}.json", Json(site.Book, rows));
        }

        yield return new SiteFile("data/limits.csv", Csv(all));
        yield return new SiteFile("data/limits.json", Json(site.Book, all));
    }

    private static byte[] Csv(IReadOnlyList<LimitRow> rows)
    {
        var text = new StringBuilder();
        if (rows.Count > 0)
            text.Append(Text.Csv.Row(rows[0].Fields.Select(field => field.Name)));
        foreach (var row in rows)
            text.Append(Text.Csv.Row(row.Fields.Select(field => field.Text)));
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static byte[] Json(Book book, IReadOnlyList<LimitRow> rows)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Indented))
        {
            json.WriteStartObject();
            json.WriteString("version", Version);
            json.WriteString("book", book.Digest);
            json.WriteStartArray("limits");
            foreach (var row in rows)
                Write(json, row);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    /// <summary>What is absent is left out, so that every key has one type.</summary>
    private static void Write(Utf8JsonWriter json, LimitRow row)
    {
        json.WriteStartObject();
        foreach (var (name, text) in row.Fields.Where(field => field.Text.Length > 0))
        {
            json.WritePropertyName(name);
            if (name == "line" || LimitRow.Numbers.Contains(name) || LimitRow.Flags.Contains(name))
                json.WriteRawValue(text);
            else
                json.WriteStringValue(text);
        }

        json.WriteEndObject();
    }
}
