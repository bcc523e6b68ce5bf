using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Changes;

/// <summary>A comparison for a program; <c>schema/changes.schema.json</c> says what each key means.</summary>
public static class ChangesJson
{
    /// <summary>The text, with a line end at the end.</summary>
    public static string Write(ComparedBooks compared)
    {
        return JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteBoolean("changes", compared.Changes);
            Write(json, "old", compared.Old);
            Write(json, "new", compared.New);
            List(json, "answers", compared.Report.Answers, Write);
            List(json, "remarks", compared.Report.Remarks, Write);
            if (compared.Jobs is { } jobs)
                Write(json, jobs);
            json.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter json, string name, NamedBook book)
    {
        json.WriteStartObject(name);
        json.WriteString("name", book.Name);
        json.WriteString("book", book.Digest);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, AnswerChange change)
    {
        json.WriteString("jurisdiction", change.Jurisdiction);
        json.WriteString("topic", change.Topic);
        Day(json, "from", change.From);
        Day(json, "until", change.Until);
        List(
            json,
            "vehicles",
            change.Vehicles,
            (writer, word) =>
            {
                writer.WriteString("fact", word.Fact);
                writer.WriteStartArray("words");
                foreach (var one in word.Words)
                    writer.WriteStringValue(one);
                writer.WriteEndArray();
            }
        );
        json.WriteString("vehicles-in-words", ChangeWords.Vehicles(change));
        Between(json, "before", change.Before);
        Between(json, "after", change.After);
        json.WriteString("rule", change.Rule);
        json.WriteBoolean("removed", change.Removed);
        Write(json, change.Mark);
        Write(json, "witness", change.Witness);
        if (change.Furthest is { } furthest)
            Write(json, "furthest", furthest);
    }

    private static void Write(Utf8JsonWriter json, string name, ShownJob job)
    {
        json.WriteStartObject(name);
        Day(json, "on", job.Day);
        json.WriteString("says", job.Says);
        json.WriteString("job", job.Yaml);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Remark remark)
    {
        json.WriteString(
            "kind",
            remark.Kind switch
            {
                RemarkKind.JurisdictionAdded => "jurisdiction-added",
                RemarkKind.JurisdictionRemoved => "jurisdiction-removed",
                RemarkKind.Scheme => "scheme",
                RemarkKind.Measured => "measured",
                RemarkKind.DecidedBy => "decided-by",
                RemarkKind.Corrected => "corrected",
                RemarkKind.Other => "other",
                RemarkKind.Evidence => "evidence",
                _ => "not-shown",
            }
        );
        json.WriteString("jurisdiction", remark.Jurisdiction);
        json.WriteString("about", remark.About);
        Day(json, "from", remark.From);
        json.WriteString("text", remark.Text);
        Write(json, remark.Mark);
    }

    private static void Write(Utf8JsonWriter json, JobReport jobs)
    {
        json.WriteStartObject("jobs");
        json.WriteNumber("answered", jobs.Answered);
        List(
            json,
            "changed",
            jobs.Changed,
            (writer, change) =>
            {
                writer.WriteString("file", change.File);
                writer.WriteString("job", change.Job);
                if (change.Before is { } before)
                    Between(writer, "before", before);
                else
                    writer.WriteNull("before");
                Between(writer, "after", change.After);
            }
        );
        List(
            json,
            "unreadable",
            jobs.Unreadable,
            (writer, problem) =>
            {
                Write(writer, problem.Mark);
                writer.WriteString("code", problem.Code);
                writer.WriteString("text", problem.Text);
                writer.WriteString("tip", problem.Tip);
            }
        );
        json.WriteEndObject();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, Mark mark)
    {
        json.WriteString("file", mark.File);
        json.WriteNumber("line", mark.Line);
        json.WriteNumber("column", mark.Column);
    }

    private static void Between(Utf8JsonWriter json, string name, Outcome outcome)
    {
        json.WriteStartArray(name);
        json.WriteStringValue(Wording.Of(outcome.Best));
        json.WriteStringValue(Wording.Of(outcome.Worst));
        json.WriteEndArray();
    }

    private static void Day(Utf8JsonWriter json, string name, DateOnly? day) =>
        json.WriteString(name, day?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
}
