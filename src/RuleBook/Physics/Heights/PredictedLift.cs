using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>The suspension lift to expect on one axle before the work is done.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="LiftMm">Lift over the maker's trim height at the axle load given, mm; null when it cannot be told.</param>
/// <param name="KgPerMm">Mass on the axle that lowers it by 1 mm, kg/mm; null when the wheel rate is not known.</param>
/// <param name="Missing">The facts that would add to the answer.</param>
/// <remarks>
/// Common practice: springs rated for a constant load that is not on the vehicle when it is measured raise it beyond the limit.
/// </remarks>
internal sealed record PredictedLift(Axle Axle, Fraction? LiftMm, Fraction? KgPerMm, ImmutableArray<MissingFact> Missing)
{
    /// <summary>What the prediction takes for granted.</summary>
    public const string Assumption =
        "the wheel rate is constant over the range in question (no bump stop, no second-stage leaf, no change of rate) and the same "
        + "left and right";

    /// <summary>The lift at an axle load: gain - (load - stated load) g / 2k, with k the rate at one wheel.</summary>
    /// <param name="springs">The springs to be fitted.</param>
    /// <param name="axleLoadKg">What the axle will carry at inspection, unladen, kg.</param>
    /// <param name="axleLoadFact">The path of that load in the job, named when it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheel rate is not above zero.</exception>
    internal static PredictedLift Of(AxleSprings springs, Fraction? axleLoadKg, string axleLoadFact)
    {
        Fraction? kgPerMm = springs.WheelRateNPerMm is { } rate ? Springs.KgPerMm(rate) : null;
        var missing = ImmutableArray.CreateBuilder<MissingFact>();
        Name(kgPerMm, springs.Path + ".wheel-rate");
        Name(axleLoadKg, axleLoadFact);
        var lift = springs.Height switch
        {
            SpringHeight.Gain gain => Name(gain.GainMm, springs.Path + ".height-gained")
                - ((axleLoadKg - Name(gain.AxleLoadKg, springs.Path + ".at-axle-load")) / kgPerMm),
            SpringHeight.Free free => Name(free.FreeHeightMm, springs.Path + ".free-height")
                - ((axleLoadKg - Name(free.UnsprungKg, springs.Path + ".unsprung-mass")) / kgPerMm)
                - Name(free.TrimHeightMm, "vehicle.trim-height"),
            _ => Name(null, springs.Path + ".height-gained"),
        };
        return new PredictedLift(springs.Axle, lift, kgPerMm, missing.ToImmutable());

        Fraction? Name(Fraction? value, string fact)
        {
            if (value is null)
                missing.Add(new MissingFact(fact, "the predicted lift"));
            return value;
        }
    }

    /// <summary>The lift with constant mass added to the axle, mm; more mass never raises it.</summary>
    /// <param name="addedKg">Mass added to the axle, kg; negative when taken off.</param>
    public Fraction? LiftWith(Fraction addedKg) => LiftMm - (addedKg / KgPerMm);

    /// <summary>Constant mass that must still come onto the axle to come down to a limit, kg; zero when it is kept already.</summary>
    /// <param name="limitMm">The most lift allowed, mm.</param>
    public Fraction? MassToComeDownTo(Fraction limitMm) =>
        (LiftMm - limitMm) * KgPerMm is { } mass
            ? mass > Fraction.Zero
                ? mass
                : Fraction.Zero
            : null;

    /// <summary>
    /// The same mass where it would stand on the vehicle, kg; null when mass at that place does not load this axle, or a fact lacks.
    /// </summary>
    /// <param name="limitMm">The most lift allowed, mm.</param>
    /// <param name="behindFrontAxleMm">The place behind the front axle, mm.</param>
    /// <param name="wheelbaseMm">Distance between the axles, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wheelbase is not above zero.</exception>
    public Fraction? MassToComeDownTo(Fraction limitMm, Fraction behindFrontAxleMm, Fraction wheelbaseMm)
    {
        var share = Moments.ShareOn(Axle, behindFrontAxleMm, wheelbaseMm);
        return MassToComeDownTo(limitMm) switch
        {
            { IsZero: true } nothing => nothing,
            { } mass when share > Fraction.Zero => mass / share,
            _ => null,
        };
    }

    /// <summary>Lift against mass added to the axle: none, one step, two steps, ...; empty when the lift cannot be told.</summary>
    /// <param name="stepKg">Mass from row to row, kg; above zero.</param>
    /// <param name="steps">Rows after the first.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above zero, or the number of steps is outside 0 to 1000.</exception>
    public ImmutableArray<LiftStep> Table(Fraction stepKg, int steps)
    {
        Must.BeAboveZero(stepKg, nameof(stepKg));
        ArgumentOutOfRangeException.ThrowIfNegative(steps);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(steps, 1000);
        return LiftWith(Fraction.Zero) is null
            ? []
            : [.. Enumerable.Range(0, steps + 1).Select(row => new LiftStep(row * stepKg, LiftWith(row * stepKg)!.Value))];
    }
}
