using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Text;

namespace RuleBook.Telling;

/// <summary>Writes remedies as JSON.</summary>
public static class RemedyJson
{
    /// <summary>A document of its own; the shape is described by <c>schema/remedy.schema.json</c>.</summary>
    public static string Write(Assessment now, IReadOnlyCollection<Remedy> remedies) =>
        JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString("job", now.Job);
            json.WriteString("jurisdiction", now.Jurisdiction);
            json.WriteString("on", AssessmentJson.Day(now.On));
            json.WriteString("book", now.Book);
            json.WriteString("edition", now.Edition);
            json.WriteString("headline", Headlines.Word(now.Headline));
            json.Between(now.Between);
            json.List("blockers", now.Blockers, blocker => BlockerJson.Write(json, blocker));
            json.List("remedies", remedies, remedy => Write(json, remedy));
            json.WriteString("nothing", RemedyText.Nothing(now, remedies));
            json.Texts("cautions", now.Cautions);
            json.WriteEndObject();
        });

    internal static void Write(Utf8JsonWriter json, Remedy remedy)
    {
        json.WriteStartObject();
        json.WriteString("goal", remedy.Goal.Within is { } pathway ? Wording.Of(pathway) : "no-blocker");
        json.WriteString("text", RemedyText.Changes(remedy));
        json.List(
            "changes",
            remedy.Changes,
            change =>
            {
                json.WriteStartObject();
                json.WriteString("lever", Lever(change.Lever));
                json.WriteString("path", change.Path);
                json.WriteString("from", change.From);
                json.WriteString("to", change.To);
                json.Texts("names", change.Names);
                if (change.Unit is { } unit)
                {
                    json.Number("cost", change.Cost, unit);
                    json.WriteString("unit", unit.Symbol);
                }

                json.WriteEndObject();
            }
        );
        json.WriteString("headline-after", Headlines.Word(remedy.After.Headline));
        json.Texts("between-after", [Wording.Of(remedy.After.Between.Best), Wording.Of(remedy.After.Between.Worst)]);
        json.List("breaks", remedy.Breaks, blocker => BlockerJson.Write(json, blocker));
        json.Texts("to-show", remedy.ToShow);
        json.WriteEndObject();
    }

    private static string Lever(RemedyLever lever) =>
        lever switch
        {
            RemedyLever.SuspensionLift => "suspension-lift",
            RemedyLever.BodyLift => "body-lift",
            RemedyLever.Tyres => "tyres",
            RemedyLever.ConstantLoad => "constant-load",
            RemedyLever.Gvm => "gvm",
            RemedyLever.Accessories => "accessories",
            RemedyLever.Trailer => "trailer",
            RemedyLever.BallLoad => "ball-load",
            _ => "day",
        };
}
