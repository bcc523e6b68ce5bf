using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>What no case pins, for machines.</summary>
public static class PinJson
{
    /// <summary>
    /// JSON: the counts, and each change that no case notices with its place, a job that shows it and what the rule gives there.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="report">What was found.</param>
    public static string Write(Book book, PinReport report)
    {
        return JsonText.WriteReadable(json =>
        {
            json.WriteStartObject();
            json.WriteNumber("points", report.Points);
            json.WriteNumber("pinned", report.Pinned);
            json.WriteNumber("changes", report.Changes);
            json.WriteNumber("without-effect", report.WithoutEffect);
            json.WriteStartArray("unnoticed");
            foreach (var one in report.Unnoticed)
            {
                json.WriteStartObject();
                json.WriteString("at", one.Mark.ToString());
                json.WriteString("subject", one.Subject);
                json.WriteString("what", one.What);
                json.WriteString("to", one.To);
                json.WriteString("before", one.Before);
                json.WriteString("after", one.After);
                json.WriteString("job", one.Witness.Yaml(book.Vocabulary));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });
    }
}
