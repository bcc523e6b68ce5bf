using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>What a vehicle weighs in a mass state, line by line, and what is left of each rating.</summary>
/// <param name="State">The state that the budget reaches.</param>
/// <param name="Lines">The starting mass first, then fuel, then the items in the order given.</param>
/// <param name="Left">Each known total against each known rating.</param>
/// <param name="Missing">The facts that would add to the answer.</param>
public sealed record MassBudget(
    MassState State,
    ImmutableArray<BudgetLine> Lines,
    ImmutableArray<LoadCheck> Left,
    ImmutableArray<MissingFact> Missing
)
{
    /// <summary>The mass of the vehicle in this state, kg; null while the mass of a line is not known.</summary>
    public Fraction? TotalKg => Lines[^1].RunningTotalKg;

    /// <summary>The axles in this state; null while a line could not be shared between them.</summary>
    public AxleMasses? Axles => Lines[^1].RunningAxles;

    /// <summary>What is known of the vehicle in this state, whole and axle by axle: a part that is not known leaves an end open.</summary>
    public MassRange Possible => Lines[^1].RunningPossible;

    /// <summary>The sum of the lines whose mass is known, kg.</summary>
    public Fraction KnownKg => Lines.Aggregate(Fraction.Zero, (sum, line) => sum + (line.MassKg ?? Fraction.Zero));

    /// <summary>The axle masses of the lines that could be shared: the known part of the split.</summary>
    public AxleMasses PlacedAxles => Lines.Aggregate(AxleMasses.Zero, (sum, line) => line.Axles is { } axles ? sum + axles : sum);

    /// <summary>Known mass of which it is not known where it stands, kg; zero when the whole split is known.</summary>
    public Fraction UnplacedKg => KnownKg - PlacedAxles.TotalKg;

    /// <summary>From the starting mass to the state asked for: what that state adds is added, what it lacks is taken off.</summary>
    /// <param name="plan">The vehicle and all that may be aboard.</param>
    /// <param name="target">The state asked for.</param>
    /// <exception cref="ArgumentException">The starting figures contradict each other.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is given but not above zero.</exception>
    internal static MassBudget For(MassPlan plan, MassStateDefinition target)
    {
        if (plan.Start.Problem is { } problem)
            throw new ArgumentException(problem, nameof(plan));
        var findings = new LoadChecks();
        if (plan.Start.TotalKg is null)
            findings.Lacks(plan.Start.MassFact, "the total");
        if (plan.Start.Axles is null)
            findings.Lacks(plan.Start.AxlesFact, "what each axle carries");

        var lines = ImmutableArray.CreateBuilder<BudgetLine>();
        lines.Add(
            new BudgetLine(plan.Start.Name, plan.Start.TotalKg, plan.Start.Axles, plan.Start.TotalKg, plan.Start.Axles)
            {
                Possible = plan.Start.Possible,
                RunningPossible = plan.Start.Possible,
            }
        );
        foreach (var entry in Changes(plan, target, findings))
            lines.Add(After(lines[^1], entry, plan.WheelbaseMm, findings));

        findings.CompareVehicle(lines[^1].RunningPossible, plan.Limits, plan.Start.ReadingGuardKg);
        return new MassBudget(target.State, lines.ToImmutable(), findings.Checks, findings.Missing);
    }

    private static IEnumerable<BudgetEntry> Changes(MassPlan plan, MassStateDefinition target, LoadChecks findings)
    {
        foreach (var fuel in new FuelChange(plan.Start.State.FuelL, target.FuelL, plan.Tanks, findings).Entries())
            yield return fuel;
        foreach (var item in plan.Items)
        {
            var aboard = plan.Start.State.Carries.Contains(item.Kind);
            if (aboard == target.Carries.Contains(item.Kind))
                continue;
            if (item.MassKg is null)
                findings.Lacks(item.MassFact, $"the mass of {item.Name}, and with it the total");
            yield return new BudgetEntry(item.Name, aboard ? Less(item) : item.Possible, item.BehindFrontAxleMm, item.PositionFact);
        }

        if (IsAboard(plan, target) && plan.Start.TotalKg is { } weighed)
        {
            findings.Lacks("load", "what was aboard when it was weighed, and with it the mass without");
            yield return new BudgetEntry("what was aboard (not given)", new Interval(-weighed, 0), null, "load");
        }
    }

    /// <summary>Whether it was weighed with a load that has to come off and of which nothing is stated.</summary>
    private static bool IsAboard(MassPlan plan, MassStateDefinition target)
    {
        var off = plan.Start.State.Carries.Except(target.Carries).Remove(ItemKind.FixedAccessory).Remove(ItemKind.BallLoad);
        return !off.IsEmpty && !plan.Items.Any(item => off.Contains(item.Kind));
    }

    private static Interval Less(MassItem item) => new(-item.Possible.High, -item.Possible.Low);

    private static BudgetLine After(BudgetLine last, BudgetEntry entry, Fraction? wheelbaseMm, LoadChecks findings)
    {
        var axles = Shared(entry, wheelbaseMm, findings);
        var running = axles is null || last.RunningAxles is null ? null : last.RunningAxles + axles;
        var possible = MassRange.At(entry.Mass, entry.BehindFrontAxleMm, wheelbaseMm);
        return new BudgetLine(entry.Item, entry.Mass.Exact, axles, last.RunningTotalKg + entry.Mass.Exact, running, entry.Derivation)
        {
            Possible = possible,
            RunningPossible = last.RunningPossible + possible,
        };
    }

    private static AxleMasses? Shared(BudgetEntry entry, Fraction? wheelbaseMm, LoadChecks findings)
    {
        if (entry.Mass.Exact is { IsZero: true })
            return AxleMasses.Zero;
        if (entry.BehindFrontAxleMm is null)
            findings.Lacks(entry.PositionFact, $"the share of each axle in: {entry.Item}");
        if (wheelbaseMm is null)
            findings.Lacks("vehicle.wheelbase", "how the masses are shared between the axles");
        return entry is { Mass.Exact: { } mass, BehindFrontAxleMm: { } place } && wheelbaseMm is { } wheelbase
            ? Moments.OnAxles(mass, place, wheelbase)
            : null;
    }
}
