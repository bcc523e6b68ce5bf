using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Tables;
using RuleBook.Telling;

namespace RuleBook.Browser;

/// <summary>
/// The first screen of an answer for the page: the command's lines, what is to be drawn, and the questions that buttons answer.
/// </summary>
internal static class CardJson
{
    public static void Write(
        Utf8JsonWriter json,
        Book book,
        Job job,
        Assessment assessment,
        DateOnly? today,
        IReadOnlyCollection<Remedy>? remedies = null
    )
    {
        json.WriteString("headline", Headlines.Word(assessment.Headline));
        json.WriteString("place", assessment.Jurisdiction);
        json.WriteString("name", assessment.JurisdictionName);
        var page = new PageBlocks();
        new FirstScreen(page, book.Vocabulary, whole: true).Write(assessment, job, today, "", remedies);
        PageJson.Write(json, page);
        if (DrawnFigure.Margin(assessment) is { } margin)
        {
            json.WritePropertyName("margin");
            Write(json, margin);
        }

        json.WriteStartArray("loads");
        foreach (var load in assessment.Masses is { } masses ? DrawnFigure.Loads(masses) : [])
            Write(json, load);
        json.WriteEndArray();
        json.WriteStartArray("lacking");
        foreach (var missing in assessment.Masses?.Missing ?? [])
            Write(json, missing);
        json.WriteEndArray();
        json.WriteStartArray("questions");
        foreach (var effect in assessment.Undecided)
            Write(json, effect, book.Vocabulary);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, DrawnFigure figure)
    {
        json.WriteStartObject();
        json.WriteString("subject", figure.Subject);
        json.WriteString("state", figure.State);
        json.WriteNumber("value", figure.Value);
        json.WriteNumber("limit", figure.Limit);
        json.WriteString("says", figure.Says);
        json.WriteString("left", figure.Left);
        json.WriteBoolean("over", figure.Over);
        json.WriteBoolean("open", figure.Known != Known.Exactly);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MissingFact missing)
    {
        json.WriteStartObject();
        json.WriteString("fact", missing.Fact);
        json.WriteString("adds", missing.Adds);
        json.WriteEndObject();
    }

    /// <summary>A word can be set as it is; of a measure, the stretches are told and the figure is asked for.</summary>
    private static void Write(Utf8JsonWriter json, Effect effect, Vocabulary vocabulary)
    {
        json.WriteStartObject();
        json.WriteString("ask", Questions.Ask(effect, vocabulary));
        json.WriteString("at", effect.Opening.Kind == OpeningKind.Version ? "" : effect.Opening.Name);
        json.WriteBoolean("word", effect.Opening.Kind == OpeningKind.Word);
        json.WriteStartArray("options");
        foreach (var (label, outcome) in effect.Merged())
        {
            json.WriteStartObject();
            json.WriteString("label", label);
            json.WriteString("gives", Phrases.Outcome(outcome));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
