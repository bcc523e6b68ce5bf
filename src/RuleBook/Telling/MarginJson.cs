using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes what a job leaves as JSON: the same bytes for the same book, job and day.</summary>
public static class MarginJson
{
    private static readonly Unit Kg = Unit.Base(Dimension.Mass);
    private static readonly Unit Mm = Unit.Base(Dimension.Length);
    private static readonly Unit Percent = Unit.Base(Dimension.Ratio);
    private static readonly Unit KmH = Unit.Base(Dimension.Speed);

    /// <summary>Indented, ending with a line feed.</summary>
    public static string Write(MarginAnswer answer) => JsonText.Write(json => Write(json, answer));

    private static void Write(Utf8JsonWriter json, MarginAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("job", answer.Job);
        json.WriteString("jurisdiction", answer.Jurisdiction);
        json.WriteString("on", AssessmentJson.Day(answer.On));
        json.WriteString("book", answer.Book);
        json.List("margins", answer.Margins, margin => Write(json, margin));
        json.List("payload", answer.Payload, check => MassJson.Check(json, check));
        json.List(
            "trailer",
            answer.Trailer,
            room =>
            {
                json.WriteStartObject();
                json.WriteString("limit", room.Limit);
                json.Number("alone", room.AloneKg, Kg);
                json.WriteEndObject();
            }
        );
        json.WriteNumber("sizes-tried", answer.SizesTried);
        json.List("sizes", answer.Sizes, fit => Write(json, fit));
        json.List("size-sources", answer.SizeSources, json.Source);
        json.Missing(answer.Missing);
        json.Texts("cautions", answer.Cautions);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Margin margin)
    {
        json.WriteStartObject();
        json.WriteString("measure", margin.Measure.Name);
        json.WriteString("unit", margin.Measure.Unit.Symbol);
        json.Number("now", margin.Now, margin.Measure.Unit);
        json.List("within", margin.Reaches, reach => Write(json, reach, margin.Measure.Unit));
        json.List("within-downward", margin.Downward, reach => Write(json, reach, margin.Measure.Unit));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, PathwayReach reach, Unit unit)
    {
        json.WriteStartObject();
        json.WriteString("pathway", Wording.Of(reach.Pathway));
        Write(json, "certain", reach.Certain, unit);
        Write(json, "possible", reach.Possible, unit);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, Reach reach, Unit unit)
    {
        json.WriteStartObject(name);
        json.WriteString(
            "kind",
            reach.Kind switch
            {
                ReachKind.None => "none",
                ReachKind.UpTo => reach.Closed ? "at-most" : "under",
                _ => "no-limit",
            }
        );
        json.Number("value", reach.Value, unit);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SizeFit fit)
    {
        json.WriteStartObject();
        json.WriteString("size", fit.Size.Designation);
        json.Between(fit.Outcome);
        json.WriteBoolean("same-rim", fit.SameRim);
        json.Figure("growth", fit.Growth.Growth, Mm);
        json.Figure("growth-percent", fit.Growth.GrowthPercent, Percent);
        json.Number("indicated", fit.Indicated, KmH);
        json.Figure("true-speed", fit.TrueSpeed, KmH);
        json.Texts("speedometer", fit.Speedometer.Select(finding => TyreJson.Words(finding)!));
        json.List(
            "loads",
            fit.Loads,
            load =>
            {
                json.WriteStartObject();
                json.WriteString("axle", load.Need.Axle == Axle.Front ? "front" : "rear");
                json.Number("rating", load.Need.RatingKg, Kg);
                json.WriteString("load-index-needed", load.Need.Index?.ToString());
                json.WriteString("load-index", load.Index?.ToString());
                json.Number("margin", load.MarginKg, Kg);
                json.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }
}
