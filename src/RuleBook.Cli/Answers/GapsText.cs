using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Answers;

/// <summary>The work list for whoever has the documents.</summary>
internal static class GapsText
{
    private const int MostTold = 6;

    /// <param name="page">Where to write.</param>
    /// <param name="day">The day as on which the jobs were asked.</param>
    /// <param name="found">What is open, ranked.</param>
    /// <param name="whole">All of it; otherwise the first of each jurisdiction.</param>
    public static void Write(AnswerPage page, DateOnly day, ImmutableArray<OpenDocument> found, bool whole)
    {
        page.Title($"What would settle most, as on {Phrases.Day(day)}");
        page.Line(
            "Counted over a fixed sample of jobs in each jurisdiction: how many answers are undecided for want of this, and for "
                + "want of nothing else."
        );
        if (found.IsEmpty)
            page.Line("None of them is undecided for want of a document.");
        foreach (var open in whole ? found : [.. found.DistinctBy(each => each.Place.Id)])
        {
            page.Heading($"{open.Place.Name} ({open.Place.Id}): {open.Document ?? "no document is named, somebody has to ask"}");
            page.Item($"undecided for want of it: {open.Answers}, of these for want of nothing else: {open.Alone}");
            page.Item($"ask: {open.Ask}");
            foreach (var what in open.LookFor.Take(MostTold))
                page.Item($"settles: {what}");
            if (open.LookFor.Length > MostTold)
                page.Item($"and {open.LookFor.Length - MostTold} more");
            var lines = open.Edit.Take(MostTold).Select(mark => string.Create(CultureInfo.InvariantCulture, $"{mark.File}:{mark.Line}"));
            page.Item($"then edit: {string.Join(", ", lines)}");
            var more = found.Count(each => each.Place.Id == open.Place.Id) - 1;
            if (!whole && more > 0)
                page.Aside($"{more} more: rulebook gaps {open.Place.Id}", 1);
        }
    }

    public static string Json(Book book, DateOnly day, ImmutableArray<OpenDocument> found) =>
        JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString("on", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteString("book", book.Digest);
            json.WriteStartArray("documents");
            foreach (var open in found)
            {
                json.WriteStartObject();
                json.WriteString("jurisdiction", open.Place.Id);
                json.WriteString("document", open.Document);
                json.WriteString("ask", open.Ask);
                json.WriteNumber("answers", open.Answers);
                json.WriteNumber("alone", open.Alone);
                json.WriteStartArray("settles");
                foreach (var what in open.LookFor)
                    json.WriteStringValue(what);
                json.WriteEndArray();
                json.WriteStartArray("edit");
                foreach (var mark in open.Edit)
                    json.WriteStringValue(mark.ToString());
                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });
}
