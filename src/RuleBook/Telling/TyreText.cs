using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The tyres on the road: load, speed, speedometer, clearance.</summary>
internal sealed class TyreText(AnswerPage page)
{
    public void Write(TyreAnswer tyres)
    {
        if (tyres is { Fitted: null, Loads.IsEmpty: true, Road.TellsSomething: false, LacksWheelbase: false })
            return;
        page.Heading("Tyres and clearance on the road");
        if (tyres.Growth is { Growth.Amount: not null } growth)
        {
            page.Item($"growth: {growth.Growth.Derivation}");
            page.Item($"width: {growth.WidthPercent.Derivation}");
        }

        foreach (var check in tyres.Loads)
            page.Item(MassText.Line(check), check.Holds ? "ok" : "x ");
        foreach (var need in tyres.Needs.Where(_ => tyres.Loads.IsEmpty))
            page.Item(
                $"{(need.Axle == Axle.Front ? "front" : "rear")} axle rating {MassText.Kg(need.RatingKg)} kg: "
                    + $"load index {need.Index?.ToString() ?? "beyond the table"} or more"
            );
        foreach (var speed in tyres.Speeds)
            page.Item(
                Speed(speed),
                speed.Enough switch
                {
                    true => "ok",
                    false => "x ",
                    null => "? ",
                }
            );
        if (tyres.Speedometer is { } speedometer)
            Write(speedometer);
        Write(tyres.Road);
        MissingText.Write(page, tyres.Missing);
    }

    private void Write(SpeedometerAnswer answer)
    {
        var assumed = answer.Assumed ? ", if the speedometer was exact before" : "";
        page.Item($"at {Show(answer.Indicated)} km/h shown: true {answer.TrueAfter.Derivation}{assumed}");
        foreach (var check in answer.Findings)
            page.Item($"{check.Rule.Name}: {Words(check.Finding)}; {Room(check)}", Mark(check.Finding, answer.Assumed), 2);
        if (answer.Periods.Any(period => period.Rules.IsEmpty))
            page.Item($"no accuracy was asked for when the vehicle {(answer.Periods.Length > 1 ? "may have been" : "was")} made", depth: 2);
    }

    private void Write(RoadAnswer road)
    {
        if (road.LeastMidwayMm is { } least)
            page.Item(
                $"clearance midway between the axles: at least {Show(least)} mm ({road.Clearance!.MidwayState}){Measured(road.Midway)}",
                Mark(road.Midway)
            );
        if (road.Running is { } running)
            page.Item(
                $"running clearance: at least {Show(running.LeastMm)} mm ({road.Clearance!.RunningState}){Measured(running)}",
                Mark(running)
            );
        if (road.StabilityBefore is not { } before)
            return;
        page.Item(
            $"static stability factor {Show(before)}"
                + (road.StabilityAfter is { } after ? $", after the change not below {Show(after)}" : "; after the change not known")
        );
        page.Aside(StaticStability.Caution);
    }

    private static string Measured(LengthCheck? check) => check is null ? "" : $"; measured {Show(check.ValueMm)} mm";

    private static string Mark(LengthCheck? check) =>
        check is null ? "-"
        : check.Holds ? "ok"
        : "x ";

    private static string Mark(SpeedometerFinding? finding, bool assumed) =>
        finding switch
        {
            SpeedometerFinding.Within or SpeedometerFinding.NotCovered => "ok",
            null => "? ",
            _ => assumed ? "! " : "x ",
        };

    private static string Room(SpeedometerCheck check) =>
        check.GrowthLeftPercent switch
        {
            null => $"up to {Show(check.LargestGrowthPercent)} % over the placard's diameter",
            { IsNegative: true } over =>
                $"{Show(-over)} % more than the {Show(check.LargestGrowthPercent)} % over the placard's diameter that it bears",
            { } left => $"{Show(left)} % left of {Show(check.LargestGrowthPercent)} % over the placard's diameter",
        };

    private static string Words(SpeedometerFinding? finding) =>
        finding switch
        {
            SpeedometerFinding.Within => "within the tolerance",
            SpeedometerFinding.ReadsLow => "would read low, which the rule does not allow: have it checked and corrected",
            SpeedometerFinding.ReadsHigh => "would read too high",
            SpeedometerFinding.NotCovered => "asks for no accuracy at this speed",
            _ => "not known",
        };

    private static string Speed(TyreSpeedCheck speed) =>
        $"speed symbol {speed.Symbol} ({speed.Symbol.KilometresPerHour} km/h): "
        + $"at least {Show(speed.LeastKmH)} km/h where tyres are rated by the kind of vehicle, unless the vehicle is slower";

    private static string Show(Fraction value) => Numbers.Show(value, 2);
}
