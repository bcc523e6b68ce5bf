using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>The lift as measured, axle by axle, or why it cannot be told.</summary>
/// <param name="Front">Front axle; null when refused or when a corner lacks.</param>
/// <param name="Rear">Rear axle; null when refused or when a corner lacks.</param>
/// <param name="Refusal">Why the readings cannot be compared; null when they can.</param>
/// <param name="Correction">What was done because the mass states differ; null when they agree.</param>
/// <param name="Missing">The facts that would add to the answer.</param>
public sealed record MeasuredLift(AxleLift? Front, AxleLift? Rear, string? Refusal, string? Correction, ImmutableArray<MissingFact> Missing)
{
    /// <summary>
    /// After less reference at each corner. The two must be taken in one mass state, otherwise the difference is load and not lift;
    /// readings in different states are refused, unless the difference in axle load and the wheel rates are given.
    /// </summary>
    /// <param name="measurement">What was measured.</param>
    internal static MeasuredLift Of(LiftMeasurement measurement)
    {
        var missing = ImmutableArray.CreateBuilder<MissingFact>();
        if (measurement.After is null)
            missing.Add(new MissingFact("measured.after", "the lift"));
        if (measurement.MakersTrim is null)
        {
            missing.Add(
                new MissingFact(
                    "vehicle.trim-height",
                    measurement.Before is null
                        ? "the lift"
                        : "the lift above the maker's trim height (sagged springs before the work make it look larger)"
                )
            );
        }

        if (measurement is not { After: { } after, Reference: { } reference })
            return new MeasuredLift(null, null, null, null, missing.ToImmutable());

        string? correction = null;
        if (!Comparable(reference.State, after.State))
        {
            if (!CanCorrect(measurement, missing))
            {
                return new MeasuredLift(null, null, WhyNot(reference.State, after.State), null, missing.ToImmutable());
            }

            correction = "corrected to the axle loads of the reference by the wheel rates given; the springs are taken as linear";
        }

        return new MeasuredLift(
            On(Axle.Front, measurement, correction is not null, missing),
            On(Axle.Rear, measurement, correction is not null, missing),
            null,
            correction,
            missing.ToImmutable()
        );
    }

    // Two loaded vehicles are not in one state: no two loads are alike.
    private static bool Comparable(MassState reference, MassState after) => reference == after && after != MassState.Loaded;

    private static string WhyNot(MassState reference, MassState after) =>
        reference == after
            ? "both readings are of a loaded vehicle and it is not known that the loads were alike: part of the difference may be load"
            : $"the reference is at {Word(reference)} and the reading after the work at {Word(after)} mass: "
                + "part of the difference is load, not lift";

    private static bool CanCorrect(LiftMeasurement measurement, ImmutableArray<MissingFact>.Builder missing)
    {
        const string Adds = "the lift corrected for the difference in load";
        var before = missing.Count;
        if (measurement.LoadDifferenceKg is null)
            missing.Add(new MissingFact("measured.axle-load-difference", Adds));
        foreach (var axle in Enum.GetValues<Axle>())
        {
            if (measurement.WheelRateNPerMm(axle) is null && measurement.LoadDifferenceKg?.On(axle) is not { IsZero: true })
                missing.Add(new MissingFact($"modification.springs.{Word(axle)}.wheel-rate", Adds));
        }

        return missing.Count == before;
    }

    private static AxleLift? On(Axle axle, LiftMeasurement measurement, bool correct, ImmutableArray<MissingFact>.Builder missing)
    {
        var (reference, after) = (measurement.Reference!.On(axle), measurement.After!.On(axle));
        var from = measurement.MakersTrim is null ? "measured.before" : "vehicle.trim-height";
        Name(reference.LeftMm, $"{from}.{Word(axle)}-left");
        Name(reference.RightMm, $"{from}.{Word(axle)}-right");
        Name(after.LeftMm, $"measured.after.{Word(axle)}-left");
        Name(after.RightMm, $"measured.after.{Word(axle)}-right");
        if ((after.LeftMm - reference.LeftMm, after.RightMm - reference.RightMm) is not ({ } left, { } right))
            return null;

        var apart = Fraction.Abs(after.LeftMm!.Value - after.RightMm!.Value);
        var extra = correct ? measurement.LoadDifferenceKg!.On(axle) : Fraction.Zero;
        var correction = extra.IsZero ? extra : extra / Springs.KgPerMm(measurement.WheelRateNPerMm(axle)!.Value);
        bool? uneven = measurement.LeftRightWarningMm is { } warning ? apart > warning : null;
        return new AxleLift(left, right, correction, measurement.BodyBlockMm, apart, uneven);

        void Name(Fraction? height, string fact)
        {
            if (height is null)
                missing.Add(new MissingFact(fact, $"the lift of the {Word(axle)} axle"));
        }
    }

    private static string Word(Axle axle) => axle == Axle.Front ? "front" : "rear";

    private static string Word(MassState state) =>
        state switch
        {
            MassState.Tare => "tare",
            MassState.Unladen => "unladen",
            _ => "loaded",
        };
}
