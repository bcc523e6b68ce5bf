using System.Text.Json;
using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes masses as JSON; every mass in kg.</summary>
internal static class MassJson
{
    private static readonly Unit Kg = Unit.Base(Dimension.Mass);
    private static readonly Unit Mm = Unit.Base(Dimension.Length);

    public static void Write(Utf8JsonWriter json, MassAnswer masses)
    {
        json.WriteStartObject();
        Budget(json, "unladen", masses.Unladen);
        if (masses.Loaded is { } loaded)
            Budget(json, "loaded", loaded);
        else
            json.WriteNull("loaded");
        json.WritePropertyName("weighed-alone");
        if (masses.Weighed is { } weighed)
            Weighed(json, weighed);
        else
            json.WriteNullValue();
        json.WritePropertyName("re-rating");
        if (masses.Rerating is { } ceiling)
            Rerating(json, ceiling);
        else
            json.WriteNullValue();
        json.WritePropertyName("towing");
        if (masses.Towing is { } towing)
            Towing(json, towing);
        else
            json.WriteNullValue();
        json.List("trailer-against-vehicle", masses.TradeOff, point => Point(json, point));
        json.List("trailer-against-vehicle-re-rated", masses.ReratedTradeOff, point => Point(json, point));
        json.List("rear-load-against-ball", masses.RearLoadAgainstBall, point => Point(json, point));
        json.List("failing", masses.Failing, each => Check(json, each.Check, each.State));
        json.List("too-close", masses.TooClose, each => Check(json, each.Check, each.State));
        json.Missing(masses.Missing);
        json.WriteEndObject();
    }

    internal static void Check(Utf8JsonWriter json, LoadCheck check, string? state = null)
    {
        json.WriteStartObject();
        if (state is not null)
            json.WriteString("state", state);
        json.WriteString("subject", check.Subject);
        json.WriteString("what", check.What);
        json.Number("value", check.ValueKg, Kg);
        json.WriteString(
            "known",
            check.Known switch
            {
                Known.AtLeast => "at-least",
                Known.AtMost => "at-most",
                _ => "exactly",
            }
        );
        json.Number("limit", check.LimitKg, Kg);
        json.Number("margin", check.MarginKg, Kg);
        json.WriteBoolean("holds", check.Holds);
        json.Number("guard-band", check.GuardKg, Kg);
        json.WriteBoolean("too-close", check.TooClose);
        json.WriteString("limit-fact", check.LimitFact);
        json.WriteEndObject();
    }

    internal static void Missing(this Utf8JsonWriter json, IEnumerable<MissingFact> missing) =>
        json.List(
            "missing",
            missing,
            each =>
            {
                json.WriteStartObject();
                json.WriteString("fact", each.Fact);
                json.WriteString("adds", each.Adds);
                json.WriteEndObject();
            }
        );

    private static void Budget(Utf8JsonWriter json, string name, MassBudget budget)
    {
        json.WriteStartObject(name);
        json.Number("total", budget.TotalKg, Kg);
        json.Number("front", budget.Axles?.FrontKg, Kg);
        json.Number("rear", budget.Axles?.RearKg, Kg);
        json.Number("known", budget.KnownKg, Kg);
        Possible(json, budget.Possible);
        json.List(
            "lines",
            budget.Lines,
            line =>
            {
                json.WriteStartObject();
                json.WriteString("item", line.Item);
                json.Number("mass", line.MassKg, Kg);
                json.Number("front", line.Axles?.FrontKg, Kg);
                json.Number("rear", line.Axles?.RearKg, Kg);
                json.Number("total", line.RunningTotalKg, Kg);
                Possible(json, line.Possible);
                json.WriteString("derivation", line.Derivation);
                json.WriteEndObject();
            }
        );
        json.List("left", budget.Left, check => Check(json, check));
        json.WriteEndObject();
    }

    /// <summary>What is known of a mass and its shares: null for an end that is open.</summary>
    private static void Possible(Utf8JsonWriter json, MassRange mass)
    {
        json.WriteStartObject("possible");
        foreach (var (name, range) in new[] { ("total", mass.Total), ("front", mass.Front), ("rear", mass.Rear) })
        {
            json.WriteStartObject(name);
            json.Number("at-least", range.Low, Kg);
            json.Number("at-most", range.High, Kg);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Weighed(Utf8JsonWriter json, VehicleWeighed weighed)
    {
        json.WriteStartObject();
        Possible(json, weighed.Mass);
        json.List("checks", weighed.Checks, check => Check(json, check));
        json.WriteEndObject();
    }

    private static void Rerating(Utf8JsonWriter json, ReratingCeiling ceiling)
    {
        json.WriteStartObject();
        json.Number("asked", ceiling.AskedKg, Kg);
        json.Number("highest-gvm", ceiling.Kg, Kg);
        json.Texts("binding", ceiling.Binding);
        json.WriteString(
            "carries",
            ceiling.Carries switch
            {
                true => "yes",
                false => "no",
                null => "not-known",
            }
        );
        json.WriteString("condition", ReratingCeiling.Condition);
        json.WriteString("why-gcm-stays", TradeOff.WhyGcmStays);
        json.Missing(ceiling.Missing);
        json.WriteEndObject();
    }

    private static void Towing(Utf8JsonWriter json, TowingAnswer towing)
    {
        json.WriteStartObject();
        Combination(json, "planned", towing.PlannedCombination, towing.Planned);
        Combination(json, "weighed", towing.WeighedCombination, towing.Weighed);
        json.Number("ball-by-trailer", towing.BallByTrailerKg, Kg);
        json.Number("ball-by-vehicle", towing.BallByVehicleKg, Kg);
        json.Number("ball-disagreement", towing.BallDisagreementKg, Kg);
        json.Number("implied-overhang-mm", towing.ImpliedArmMm, Mm);
        json.Number("lifts-ball", towing.LiftsBallKg, Kg);
        json.Number("rated-towing-capacity", towing.Capacity?.Kg, Kg);
        json.WriteString(
            "rated-towing-capacity-by",
            towing.Capacity?.ByMaker switch
            {
                true => "maker",
                false => "towbar-and-gcm",
                null => null,
            }
        );
        json.Number("cargo-left-by-gvm", towing.CargoLeft?.ByGvmKg, Kg);
        json.Number("cargo-left-by-gcm", towing.CargoLeft?.ByGcmKg, Kg);
        json.WritePropertyName("down-rating");
        if (towing.DownRating is { } advice)
        {
            json.WriteStartObject();
            json.Number("less", advice.LessKg, Kg);
            json.WriteString("advisory", DownRating.Advisory);
            json.List("checks", advice.Check is { } check ? [check] : Array.Empty<LoadCheck>(), each => Check(json, each));
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        json.WriteEndObject();
    }

    private static void Combination(Utf8JsonWriter json, string name, Combination? masses, CombinationCheck? check)
    {
        if (masses is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.Number("vehicle", masses.VehicleKg, Kg);
        json.Number("front", masses.VehicleAxles?.FrontKg, Kg);
        json.Number("rear", masses.VehicleAxles?.RearKg, Kg);
        json.Number("trailer-axles", masses.TrailerAxlesKg, Kg);
        json.Number("trailer-alone", masses.TrailerAloneKg, Kg);
        json.Number("ball", masses.BallKg, Kg);
        json.Number("combination", masses.TotalKg, Kg);
        json.List("checks", check?.Checks ?? [], each => Check(json, each));
        json.WriteEndObject();
    }

    private static void Point(Utf8JsonWriter json, TradeOffPoint point)
    {
        json.WriteStartObject();
        json.Number("given", (Fraction?)point.GivenKg, Kg);
        json.Number("left", (Fraction?)point.LeftKg, Kg);
        json.Texts("binding", point.Binding);
        json.WriteEndObject();
    }
}
