using System.Globalization;
using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Authoring.Records;

/// <summary>An answer kept with what it was made from, so that it can be made again years later.</summary>
/// <param name="Tool">Version of the command that made it.</param>
/// <param name="Edition">Name of the book's edition; null where the book was none.</param>
/// <param name="Book">Digest of the book.</param>
/// <param name="Made">The day on which it was made.</param>
/// <param name="Place">Id of the jurisdiction that was asked about; null for the state of registration.</param>
/// <param name="Job">The job, with every change that was asked for.</param>
/// <param name="Answer">The answer as JSON, as the command wrote it.</param>
/// <param name="Earlier">Answers that were kept here before, oldest first, each a record of its own as JSON.</param>
public sealed record SavedRecord(
    string Tool,
    string? Edition,
    string Book,
    DateOnly Made,
    string? Place,
    Mapping Job,
    string Answer,
    IReadOnlyList<string> Earlier
)
{
    private const int Format = 1;

    /// <summary>Of an answer that was just made.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job as nodes.</param>
    /// <param name="place">The jurisdiction asked about; null for the state of registration.</param>
    /// <param name="assessment">The answer.</param>
    /// <param name="tool">Version of the command.</param>
    /// <param name="made">Today.</param>
    public static SavedRecord Of(Book book, Mapping job, string? place, Assessment assessment, string tool, DateOnly made) =>
        new(tool, book.Edition?.Name, book.Digest, made, place, job, AssessmentJson.Write(assessment).TrimEnd('\n'), []);

    /// <summary>As JSON, ending with a line feed; the shape is described by <c>schema/record.schema.json</c>.</summary>
    public string ToJson() => JsonText.Write(Write);

    /// <summary>Reads a record.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="name">Name under which problems are reported.</param>
    /// <exception cref="InputException">It is no record, or one of a newer format.</exception>
    public static SavedRecord Read(string text, string name)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("record", out var format))
                throw Refused(name, "it is no record of an answer", Tip);
            if (!format.TryGetInt32(out var number) || number != Format)
                throw Refused(
                    name,
                    $"its format is {format.GetRawText()}; this version reads format {Format}",
                    "use the version of the command that wrote it, or a newer one"
                );
            return new SavedRecord(
                root.GetProperty("tool").GetString()!,
                root.GetProperty("edition").GetString(),
                root.GetProperty("book").GetString()!,
                DateOnly.ParseExact(root.GetProperty("made").GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture),
                root.GetProperty("in").GetString(),
                JsonNodes.Read(root.GetProperty("job").GetRawText()) as Mapping ?? throw Refused(name, "its job is no job", Tip),
                root.GetProperty("answer").GetRawText(),
                root.TryGetProperty("earlier", out var earlier) ? [.. earlier.EnumerateArray().Select(each => each.GetRawText())] : []
            );
        }
        catch (Exception error)
            when (error is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentNullException)
        {
            throw Refused(name, $"it is damaged: {error.Message}", Tip);
        }
    }

    /// <summary>The record that takes the place of this one and keeps it as an earlier answer.</summary>
    public SavedRecord Followed(SavedRecord by) => by with { Earlier = [.. Earlier, (this with { Earlier = [] }).ToJson().TrimEnd('\n')] };

    /// <summary>The answer that a book gives to the job now.</summary>
    /// <param name="by">The book.</param>
    /// <param name="on">Another day than those of the job; null for them.</param>
    /// <exception cref="InputException">The book does not understand the job any more.</exception>
    public Assessment Ask(Book by, DateOnly? on = null)
    {
        if (Place is { } place && by.Jurisdiction(place) is null)
            throw new InputException(
                Problem.Error(
                    "unknown-jurisdiction",
                    new Mark("in", 1, 1),
                    $"the book has no jurisdiction '{place}'",
                    "name the edition that the record was made with: --book FILE"
                )
            );
        return Assessor.Assess(by, JobReader.Read(on is { } day ? AsOn(Job, day) : Job, by), Place);
    }

    /// <summary>A job as on another day, whatever days it gives.</summary>
    public static Mapping AsOn(Mapping job, DateOnly day) =>
        NodeEdit.Set(NodeEdit.Remove(job, "dates"), "on", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private const string Tip = "make one with: rulebook assess JOB --format record --output FILE";

    private void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("record", Format);
        json.WriteString("tool", Tool);
        json.WriteString("edition", Edition);
        json.WriteString("book", Book);
        json.WriteString("made", Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("in", Place);
        json.WritePropertyName("job");
        NodeJson.Write(json, Job);
        json.WritePropertyName("answer");
        json.WriteRawValue(Answer);
        json.WriteStartArray("earlier");
        foreach (var each in Earlier)
            json.WriteRawValue(each);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static InputException Refused(string name, string text, string tip) =>
        new(Problem.Error("not-a-record", new Mark(name, 1, 1), text, tip));
}
