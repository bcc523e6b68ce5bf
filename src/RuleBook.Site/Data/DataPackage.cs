using System.Buffers;
using System.Text.Json;

namespace RuleBook.Site.Data;

/// <summary>Describes the tables: a Data Package with a Table Schema, and a JSON Schema of the JSON form.</summary>
internal static class DataPackage
{
    private static readonly string[] Required = ["jurisdiction", "topic", "rule", "title", "state", "kind", "disputed", "file", "line"];

    public static IEnumerable<SiteFile> Of(SiteBook site)
    {
        var names =
            site.Places.SelectMany(place => LimitRow.Of(site, place)).FirstOrDefault()?.Fields.Select(field => field.Name).ToArray() ?? [];
        yield return new SiteFile("data/datapackage.json", Write(json => Package(json, site, names)));
        yield return new SiteFile("data/limits.schema.json", Write(json => Schema(json, names)));
    }

    private static void Package(Utf8JsonWriter json, SiteBook site, string[] names)
    {
        json.WriteString("name", "limits-on-modified-vehicles");
        json.WriteString("title", "Limits on modified vehicles");
        json.WriteString("version", $"{LimitTables.Version}.0.0");
        json.WriteString("id", site.Book.Digest);
        json.WriteStartArray("resources");
        foreach (var file in (string[])["limits", .. site.Places.Select(place => Links.Slug(place.Id))])
        {
            json.WriteStartObject();
            json.WriteString("name", file);
            json.WriteString("path", $"{file}.csv");
            json.WriteString("format", "csv");
            json.WriteString("mediatype", "text/csv");
            json.WriteString("encoding", "utf-8");
            json.WriteStartObject("schema");
            json.WriteStartArray("fields");
            foreach (var name in names)
            {
                json.WriteStartObject();
                json.WriteString("name", name);
                json.WriteString("type", Type(name));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Schema(Utf8JsonWriter json, string[] names)
    {
        json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
        json.WriteString("title", "Limits on modified vehicles");
        json.WriteString("type", "object");
        Names(json, "required", ["version", "book", "limits"]);
        json.WriteStartObject("properties");
        Typed(json, "version", "string");
        Typed(json, "book", "string");
        json.WriteStartObject("limits");
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        Names(json, "required", Required);
        json.WriteStartObject("properties");
        foreach (var name in names)
            Typed(json, name, Type(name));
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static string Type(string name) =>
        name == "line" ? "integer"
        : LimitRow.Numbers.Contains(name) ? "number"
        : LimitRow.Flags.Contains(name) ? "boolean"
        : "string";

    private static void Typed(Utf8JsonWriter json, string name, string type)
    {
        json.WriteStartObject(name);
        json.WriteString("type", type);
        json.WriteEndObject();
    }

    private static void Names(Utf8JsonWriter json, string name, string[] names)
    {
        json.WriteStartArray(name);
        foreach (var each in names)
            json.WriteStringValue(each);
        json.WriteEndArray();
    }

    private static byte[] Write(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, LimitTables.Indented))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return [.. buffer.WrittenSpan, (byte)'\n'];
    }
}
