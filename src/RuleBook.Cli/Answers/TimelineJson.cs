using System.Text.Json;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Answers;

/// <summary>The changes on a topic as JSON.</summary>
internal static class TimelineJson
{
    public static string Write(Book book, string topic, DateOnly day, IReadOnlyList<Change> changes) =>
        JsonText.Write(json => Write(json, book, topic, day, changes));

    private static void Write(Utf8JsonWriter json, Book book, string topic, DateOnly day, IReadOnlyList<Change> changes)
    {
        json.WriteStartObject();
        json.WriteString("topic", topic);
        json.WriteString("book", book.Digest);
        json.WriteStartArray("changes");
        foreach (var change in changes)
            Write(json, book, change);
        json.WriteEndArray();
        json.WriteStartArray("positions");
        foreach (var national in TimelineText.Adopted(book, topic, day))
        foreach (var place in TimelineText.Below(book, national))
        {
            json.WriteStartObject();
            json.WriteString("rule", national.Id);
            json.WriteString("jurisdiction", place.Id);
            json.WriteString("position", History.Position(book, national, place, day));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Book book, Change change)
    {
        json.WriteStartObject();
        json.WriteString("rule", change.Rule.Id);
        json.WriteString("since", change.Since?.Text);
        json.WriteString("seen-by", change.SeenBy?.Text);
        json.WriteString("kind", JsonNamingPolicy.KebabCaseLower.ConvertName(change.Kind.ToString()));
        json.WriteString("what", TimelineText.What(book, change));
        json.WriteString("adopts", change.Adopts);
        json.WriteNumber("exceptions", change.Exceptions);
        json.WriteString("at", change.Version.Mark.ToString());
        json.WriteEndObject();
    }
}
