using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Physics.Heights;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes heights as JSON; every height in mm, every mass in kg.</summary>
internal static class HeightJson
{
    private static readonly Unit Kg = Unit.Base(Dimension.Mass);
    private static readonly Unit Mm = Unit.Base(Dimension.Length);

    public static void Write(Utf8JsonWriter json, HeightAnswer heights)
    {
        json.WriteStartObject();
        json.Number("suspension-lift", heights.Suspension?.Exact, Mm);
        json.Number("suspension-lift-at-least", heights.Suspension?.Low, Mm);
        json.Number("suspension-lift-at-most", heights.Suspension?.High, Mm);
        json.WriteString("deciding-axle", heights.DecidingAxle is { } deciding ? Lifts.Word(deciding) : null);
        json.WriteString("derivation", heights.Derivation);
        json.Number("uncertainty", heights.UncertaintyMm, Mm);
        json.WritePropertyName("denied");
        if (heights.Denied is { } denied)
            Denied(json, denied);
        else
            json.WriteNullValue();
        json.List(
            "uneven",
            heights.Uneven,
            each =>
            {
                json.WriteStartObject();
                json.WriteString("axle", Lifts.Word(each.Axle));
                json.Number("left", each.LeftMm, Mm);
                json.Number("right", each.RightMm, Mm);
                json.Number("apart", each.ApartMm, Mm);
                json.Number("most", each.WarningMm, Mm);
                json.WriteEndObject();
            }
        );
        json.WritePropertyName("measured");
        if (heights.Measured is { } measured)
            Measured(json, measured);
        else
            json.WriteNullValue();
        json.List("predicted", heights.Predicted, axle => Predicted(json, axle));
        json.WriteString("assumption", heights.Predicted.IsEmpty ? null : PredictedLift.Assumption);
        json.Missing(heights.Missing);
        json.WriteEndObject();
    }

    private static void Denied(Utf8JsonWriter json, DeniedLift denied)
    {
        json.WriteStartObject();
        json.Number("stated", denied.StatedMm, Mm);
        json.Number("at-least", denied.Predicted.Low, Mm);
        json.Number("at-most", denied.Predicted.High, Mm);
        json.WriteString("derivation", denied.Derivation);
        json.WriteEndObject();
    }

    private static void Measured(Utf8JsonWriter json, MeasuredLift measured)
    {
        json.WriteStartObject();
        json.WriteString("refusal", measured.Refusal);
        json.WriteString("correction", measured.Correction);
        Axle(json, "front", measured.Front);
        Axle(json, "rear", measured.Rear);
        json.WriteEndObject();
    }

    private static void Axle(Utf8JsonWriter json, string name, AxleLift? lift)
    {
        if (lift is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Number("left", lift.LeftMm, Mm);
        json.Number("right", lift.RightMm, Mm);
        json.Number("correction", lift.CorrectionMm, Mm);
        json.Number("body-block", lift.BodyBlockMm, Mm);
        json.Number("suspension", lift.SuspensionMm, Mm);
        json.Number("left-right", lift.LeftRightMm, Mm);
        if (lift.Uneven is { } uneven)
            json.WriteBoolean("uneven", uneven);
        else
            json.WriteNull("uneven");
        json.WriteEndObject();
    }

    private static void Predicted(Utf8JsonWriter json, PredictedAxle axle)
    {
        json.WriteStartObject();
        json.WriteString("axle", Lifts.Word(axle.Lift.Axle));
        json.Number("lift", axle.Lift.LiftMm, Mm);
        json.Number("uncertainty", axle.UncertaintyMm, Mm);
        json.Number("at-least", axle.Range.Low, Mm);
        json.Number("at-most", axle.Range.High, Mm);
        json.Number("axle-load", axle.AxleLoadKg, Kg);
        json.List(
            "table",
            axle.Table,
            step =>
            {
                json.WriteStartObject();
                json.Number("added", step.AddedKg, Kg);
                json.Number("lift", step.LiftMm, Mm);
                json.WriteEndObject();
            }
        );
        json.List(
            "mass-needed",
            axle.Needs,
            need =>
            {
                json.WriteStartObject();
                json.WriteString("pathway", Wording.Of(need.Pathway));
                json.Number("limit", need.LimitMm, Mm);
                json.Number("on-axle", need.OnAxleKg, Kg);
                json.Number("midway", need.MidwayKg, Kg);
                json.Number("at-ball", need.AtBallKg, Kg);
                json.WriteEndObject();
            }
        );
        json.WriteEndObject();
    }
}
