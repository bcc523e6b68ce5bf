using System.Text.Json;
using RuleBook.Figures;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes the tyres on the road as JSON.</summary>
internal static class TyreJson
{
    private static readonly Unit Kg = Unit.Base(Dimension.Mass);
    private static readonly Unit Mm = Unit.Base(Dimension.Length);
    private static readonly Unit KmH = Unit.Base(Dimension.Speed);
    private static readonly Unit Percent = Unit.Base(Dimension.Ratio);
    private static readonly Unit Count = Unit.Base(Dimension.Count);

    public static void Write(Utf8JsonWriter json, TyreAnswer tyres)
    {
        json.WriteStartObject();
        json.WriteString("fitted", tyres.Fitted?.ToString());
        json.Figure("growth", tyres.Growth?.Growth, Mm);
        json.Figure("growth-percent", tyres.Growth?.GrowthPercent, Percent);
        json.Figure("tyre-lift", tyres.Growth?.TyreLift, Mm);
        json.Figure("width-percent", tyres.Growth?.WidthPercent, Percent);
        json.Figure("front-capacity", tyres.Capacity.Front, Kg);
        json.Figure("rear-capacity", tyres.Capacity.Rear, Kg);
        json.List("loads", tyres.Loads, check => MassJson.Check(json, check));
        json.List("load-index-needed", tyres.Needs, need => Need(json, need));
        json.Texts("not-compared", tyres.NotCompared);
        json.List("speeds", tyres.Speeds, speed => Speed(json, speed));
        json.WritePropertyName("speedometer");
        if (tyres.Speedometer is { } speedometer)
            Speedometer(json, speedometer);
        else
            json.WriteNullValue();
        json.WriteStartObject("road");
        json.Number("least-clearance-midway", tyres.Road.LeastMidwayMm, Mm);
        Length(json, "clearance-midway", tyres.Road.Midway);
        Length(json, "running-clearance", tyres.Road.Running);
        json.Number("stability-factor-before", tyres.Road.StabilityBefore, Count);
        json.Number("stability-factor-after", tyres.Road.StabilityAfter, Count);
        json.WriteString("stability-caution", tyres.Road.StabilityBefore is null ? null : StaticStability.Caution);
        json.List("sources", tyres.Road.Clearance?.Sources ?? [], json.Source);
        json.WriteEndObject();
        json.Missing(tyres.Missing);
        json.WriteEndObject();
    }

    internal static void Figure(this Utf8JsonWriter json, string name, DerivedFigure? figure, Unit unit)
    {
        json.WritePropertyName(name);
        if (figure is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.Number("value", figure.Amount, unit);
        json.WriteString("unit", unit.Symbol);
        json.WriteString("derivation", figure.Derivation);
        json.WriteEndObject();
    }

    internal static string? Words(SpeedometerFinding? finding) =>
        finding switch
        {
            SpeedometerFinding.Within => "within",
            SpeedometerFinding.ReadsLow => "reads-low",
            SpeedometerFinding.ReadsHigh => "reads-high",
            SpeedometerFinding.NotCovered => "not-covered",
            _ => null,
        };

    private static void Need(Utf8JsonWriter json, LoadIndexNeed need)
    {
        json.WriteStartObject();
        json.WriteString("axle", need.Axle == Axle.Front ? "front" : "rear");
        json.Number("rating", need.RatingKg, Kg);
        json.WriteNumber("tyres", need.Tyres);
        json.WriteString("load-index", need.Index?.ToString());
        json.WriteEndObject();
    }

    private static void Speed(Utf8JsonWriter json, TyreSpeedCheck speed)
    {
        json.WriteStartObject();
        json.WriteString("condition", speed.Condition);
        json.WriteString("symbol", speed.Symbol.Symbol);
        json.WriteNumber("good-for", speed.Symbol.KilometresPerHour);
        json.Number("least", speed.LeastKmH, KmH);
        json.WriteString(
            "enough",
            speed.Enough switch
            {
                true => "yes",
                false => "no",
                null => "ask-the-maker",
            }
        );
        json.List("sources", speed.Rule.Sources, json.Source);
        json.WriteEndObject();
    }

    private static void Speedometer(Utf8JsonWriter json, SpeedometerAnswer answer)
    {
        json.WriteStartObject();
        json.Number("indicated", answer.Indicated, KmH);
        json.Number("true-before", answer.TrueBefore, KmH);
        json.WriteBoolean("assumed-exact-before", answer.Assumed);
        json.Figure("true-after", answer.TrueAfter, KmH);
        json.List(
            "rules",
            answer.Findings,
            check =>
            {
                json.WriteStartObject();
                json.WriteString("rule", check.Rule.Name);
                json.WriteString("finding", Words(check.Finding));
                json.Number("largest-growth-percent", check.LargestGrowthPercent, Percent);
                json.Number("growth-left-percent", check.GrowthLeftPercent, Percent);
                json.WriteEndObject();
            }
        );
        json.List("sources", answer.Periods.SelectMany(period => period.Sources), json.Source);
        json.WriteEndObject();
    }

    private static void Length(Utf8JsonWriter json, string name, LengthCheck? check)
    {
        if (check is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Number("value", check.ValueMm, Mm);
        json.Number("least", check.LeastMm, Mm);
        json.WriteBoolean("holds", check.Holds);
        json.WriteEndObject();
    }
}
