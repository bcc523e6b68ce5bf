using System.Globalization;
using System.Text.Json;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Answers;

/// <summary>The editions of a book as JSON, oldest first, as they are kept.</summary>
internal static class EditionsJson
{
    public static string Write(Book book) =>
        JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString("book", book.Digest);
            json.WriteString("edition", book.Edition?.Name);
            json.WriteStartArray("editions");
            foreach (var edition in book.Editions)
                Write(json, edition);
            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, Edition edition)
    {
        json.WriteStartObject();
        json.WriteString("edition", edition.Name);
        json.WriteString("day", Day(edition.Day));
        json.WriteString("digest", edition.Digest);
        json.WriteStartArray("news");
        foreach (var news in edition.News)
        {
            json.WriteStartObject();
            json.WriteString("kind", EditionWords.Of(news.Kind));
            json.WriteStartArray("jurisdictions");
            foreach (var place in news.Places)
                json.WriteStringValue(place);
            json.WriteEndArray();
            json.WriteString("from", news.From is { } from ? Day(from) : null);
            json.WriteString("text", news.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
