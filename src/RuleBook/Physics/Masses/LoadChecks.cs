using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>Gathers comparisons, and the facts that kept others from being made.</summary>
internal sealed class LoadChecks
{
    private readonly ImmutableArray<LoadCheck>.Builder checks = ImmutableArray.CreateBuilder<LoadCheck>();
    private readonly ImmutableArray<MissingFact>.Builder missing = ImmutableArray.CreateBuilder<MissingFact>();

    internal ImmutableArray<LoadCheck> Checks => checks.ToImmutable();

    internal ImmutableArray<MissingFact> Missing => [.. missing.Distinct()];

    internal void Lacks(string fact, string adds) => missing.Add(new MissingFact(fact, adds));

    internal void Compare(string subject, string what, Fraction? valueKg, Fraction? limitKg, string limitFact) =>
        Compare(subject, what, valueKg is { } known ? Interval.Of(known) : Interval.Anything, limitKg, limitFact);

    /// <summary>
    /// A mass of which part is not known is compared where that part cannot matter: the least passes the limit, or the most keeps it.
    /// </summary>
    internal void Compare(string subject, string what, Interval value, Fraction? limitKg, string limitFact, Fraction guardKg = default)
    {
        if (limitKg is not { } limit)
            Lacks(limitFact, $"what is left: {what}");
        else if (value.Exact is { } exact)
            Add(exact, Known.Exactly);
        else if (value.Low is { } least && least > limit)
            Add(least, Known.AtLeast);
        else if (value.High is { } most && most <= limit)
            Add(most, Known.AtMost);

        void Add(Fraction kg, Known known) =>
            checks.Add(new LoadCheck(subject, what, kg, limitKg.Value, limitFact) { Known = known, GuardKg = guardKg });
    }

    /// <summary>Against the maker's rating and, where a modification states one, against the new rating too.</summary>
    internal void CompareRated(
        string what,
        Interval value,
        VehicleLimits limits,
        Func<Ratings, Fraction?> rating,
        string key,
        Fraction guardKg = default
    )
    {
        var rerated = limits.Rerated is { } ratings ? rating(ratings) : null;
        if (rating(limits.Original) is not null || rerated is null)
            Compare(key, what, value, rating(limits.Original), $"vehicle.ratings.{key}", guardKg);
        if (rerated is not null)
            Compare(key, $"{what}, re-rated", value, rerated, $"modification.ratings.{key}", guardKg);
    }

    /// <summary>The vehicle and its axles against every rating.</summary>
    /// <param name="mass">What is known of them.</param>
    /// <param name="limits">The ratings and what the tyres carry.</param>
    /// <param name="axleGuardKg">Guard band of one axle where it was weighed, kg; the whole vehicle is two readings.</param>
    internal void CompareVehicle(MassRange mass, VehicleLimits limits, Fraction axleGuardKg = default)
    {
        CompareRated("vehicle against its GVM", mass.Total, limits, ratings => ratings.GvmKg, "gvm", 2 * axleGuardKg);
        CompareRated("front axle against its rating", mass.Front, limits, ratings => ratings.FrontAxleKg, "front-axle", axleGuardKg);
        CompareRated("rear axle against its rating", mass.Rear, limits, ratings => ratings.RearAxleKg, "rear-axle", axleGuardKg);
        Compare("front-axle-tyres", "front axle against its tyres", mass.Front, limits.FrontTyresKg, limits.TyresFact, axleGuardKg);
        Compare("rear-axle-tyres", "rear axle against its tyres", mass.Rear, limits.RearTyresKg, limits.TyresFact, axleGuardKg);
    }
}
