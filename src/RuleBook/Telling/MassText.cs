using System.Collections.Immutable;
using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The mass budget as a customer follows it, and the limits that it touches.</summary>
internal sealed class MassText(AnswerPage page)
{
    public void Write(MassAnswer masses)
    {
        WriteFailing(masses);
        Write("Mass budget, unladen (fixed accessories, every tank full)", masses.Unladen, 0);
        if (masses.Loaded is { } loaded)
            Write("Mass budget, loaded", loaded, Shared(masses.Unladen, loaded));
        if (masses.Weighed is { } weighed)
            Write(weighed);
        if (masses.Rerating is { } ceiling)
            Write(ceiling);

        if (masses.Towing is { } towing)
            Write(towing, masses.Loaded);
        WriteTradeOff("What the trailer's axles may carry at each mass of the vehicle", "vehicle", masses.TradeOff);
        WriteTradeOff("The same after the re-rating", "vehicle", masses.ReratedTradeOff);
        if (!masses.ReratedTradeOff.IsEmpty)
            page.Aside(TradeOff.WhyGcmStays);
        WriteTradeOff("What may still stand over the rear axle at each ball load", "ball load", masses.RearLoadAgainstBall);
        MissingText.Write(page, masses.Missing);
    }

    private void Write(VehicleWeighed weighed)
    {
        page.Heading("The vehicle alone as weighed, whatever was aboard");
        page.Item($"{Range(weighed.Mass.Total)} kg, front {Range(weighed.Mass.Front)} kg, rear {Range(weighed.Mass.Rear)} kg");
        WriteChecks(weighed.Checks, weighed.Checks);
    }

    private void Write(ReratingCeiling ceiling)
    {
        if (ceiling.Kg is { } highest)
            page.Item(
                $"axles and tyres carry {Kg(highest)} kg together ({string.Join(", ", ceiling.Binding)}); asked for "
                    + $"{Kg(ceiling.AskedKg)} kg"
                    + (ceiling.Carries is false ? $", {Kg(ceiling.AskedKg - highest)} kg more than they carry" : ""),
                ceiling.Carries switch
                {
                    true => "ok",
                    false => "x ",
                    null => "? ",
                }
            );
        page.Aside(ReratingCeiling.Condition);
        MissingText.Write(page, ceiling.Missing);
    }

    private void WriteFailing(MassAnswer masses)
    {
        if (masses.Towing?.LiftsBallKg is { } lift)
            page.Heading(
                $"BALL LOAD BELOW ZERO: the trailer lifts the back of the vehicle by {Kg(lift)} kg; load it further forward and weigh again"
            );
        var failing = masses.Failing.ToArray();
        if (failing.Length == 0)
            return;
        page.Heading("OVERLOADED: limits that are passed (no matter of the pathway, but of driving it at all)");
        foreach (var each in failing)
            page.Item($"{each.State}: {Line(each.Check)}", "x ");
    }

    /// <summary>Lines at the top that the budget has in common with the unladen one; none unless it has all of that.</summary>
    private static int Shared(MassBudget unladen, MassBudget loaded) =>
        loaded.Lines.Take(unladen.Lines.Length).SequenceEqual(unladen.Lines) ? unladen.Lines.Length : 0;

    private void Write(string heading, MassBudget budget, int shared)
    {
        page.Heading(heading);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        if (shared > 0 && budget.Lines[shared - 1] is { RunningPossible: var all })
            rows.Add(Cells("unladen", all, all.Total));
        foreach (var line in budget.Lines.Skip(shared))
            rows.Add(
                Cells(line.Item + (line.Derivation is { } derivation ? $" ({derivation})" : ""), line.Possible, line.RunningPossible.Total)
            );
        rows.Add(Cells("in all", budget.Possible, budget.Possible.Total));
        page.Table(["item", "kg", "front", "rear", "total"], rows, 1);
        WriteChecks(budget.Left, budget.Left);
    }

    /// <summary>A rating passed that a re-rated one replaces is told, not shouted.</summary>
    private void WriteChecks(IEnumerable<LoadCheck> shown, IReadOnlyCollection<LoadCheck> all)
    {
        foreach (var check in shown)
            if (check.Holds)
                page.Item(Line(check), "ok");
            else if (MassAnswer.IsRerated(check, all))
                page.Item($"{Line(check)} unless re-rated", "! ");
            else
                page.Item(Line(check), "x ");
    }

    private void Write(TowingAnswer towing, MassBudget? loaded)
    {
        if (towing.Planned is { } planned)
            Write("The combination as planned", towing.PlannedCombination!, planned, loaded);
        if (towing.Weighed is { } weighed)
            Write("The combination as weighed", towing.WeighedCombination!, weighed, null);
        if (towing is { BallByTrailerKg: { } byTrailer, BallByVehicleKg: { } byVehicle })
            page.Item(
                $"ball load both ways: {Kg(byTrailer)} kg leave the trailer, {Kg(byVehicle)} kg come onto the vehicle "
                    + $"({Kg(towing.BallDisagreementKg)} kg apart; the greater counts)"
            );
        if (towing.ImpliedArmMm is { } arm)
            page.Item($"the gain of the rear axle would fit a ball {Numbers.Show(arm, 0)} mm behind it");
        if (towing.CargoLeft is { } cargo)
            page.Item($"cargo left in the vehicle: {Kg(cargo.ByGvmKg)} kg by GVM, {Kg(cargo.ByGcmKg)} kg by GCM; the lower governs");
        if (towing.Capacity is { } capacity)
            page.Item(
                $"rated towing capacity: {Kg(capacity.Kg)} kg "
                    + $"({(capacity.ByMaker ? "the maker's figure" : "no maker's figure; the lesser of towbar and GCM less GVM")})"
            );
        if (towing.DownRating is not { } advice)
            return;
        page.Item(
            advice.LessKg is { } less
                ? $"the maker advises {Kg(less)} kg less in the vehicle at this ball load"
                : "the maker's table ends before this ball load",
            "! "
        );
        if (advice.Check is { } check)
            page.Item(Line(check), check.Holds ? "ok" : "! ", 2);
        page.Aside(DownRating.Advisory);
    }

    private void Write(string heading, Combination masses, CombinationCheck check, MassBudget? told)
    {
        page.Heading(heading);
        page.Item(
            $"vehicle {Kg(masses.VehicleKg)} kg with {Kg(masses.BallKg)} kg on the ball, "
                + $"trailer alone {Kg(masses.TrailerAloneKg)} kg, trailer axles {Kg(masses.TrailerAxlesKg)} kg, in all "
                + $"{Kg(masses.TotalKg)} kg"
        );
        WriteChecks(check.Checks.Except(told?.Left ?? []), check.Checks);
    }

    private void WriteTradeOff(string heading, string given, ImmutableArray<TradeOffPoint> points)
    {
        if (points.IsEmpty)
            return;
        page.Heading(heading);
        foreach (var point in points)
            page.Item(
                $"{given} {Kg(point.GivenKg)} kg: {Kg(point.LeftKg)} kg "
                    + $"left{(point.Binding.IsEmpty ? "" : $" ({string.Join(" and ", point.Binding)})")}"
            );
    }

    internal static string Line(LoadCheck check)
    {
        var known = check.Known switch
        {
            Known.AtLeast => "at least ",
            Known.AtMost => "at most ",
            _ => "",
        };
        var left = check.Known == Known.AtMost ? "at least " : "";
        var close = check.TooClose ? $"; too close to call, weighed to within {Kg(check.GuardKg)} kg" : "";
        return $"{check.What}: {known}{Kg(check.ValueKg)} of {Kg(check.LimitKg)} kg, "
            + (check.Holds ? $"{left}{Kg(check.MarginKg)} kg left" : $"{known}{Kg(-check.MarginKg)} kg too much")
            + close;
    }

    /// <summary>A figure, or between which two it lies; a question mark where neither end is known.</summary>
    internal static string Range(Interval mass) =>
        (mass.Exact, mass.Low, mass.High) switch
        {
            ({ } exact, _, _) => Kg(exact),
            (_, { } low, { } high) => $"{Kg(low)} to {Kg(high)}",
            (_, { IsPositive: true } low, null) => $"{Kg(low)} or more",
            (_, null, { } high) => $"{Kg(high)} or less",
            _ => "?",
        };

    internal static string Kg(Fraction? mass) => mass is { } known ? Numbers.Show(known, 1) : "?";

    private static ImmutableArray<string> Cells(string item, MassRange mass, Interval running) =>
        [item, Range(mass.Total), Range(mass.Front), Range(mass.Rear), Range(running)];
}
