using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>All that was measured to find out how far a vehicle has been raised.</summary>
internal sealed record LiftMeasurement
{
    /// <summary>
    /// The maker's trim height: the reference, because bringing a sagged vehicle back to it is no lift (New South Wales manual,
    /// November 2016, as quoted).
    /// </summary>
    public HeightReading? MakersTrim { get; init; }

    /// <summary>Measured before the work: the reference where the maker's trim height is not known.</summary>
    public HeightReading? Before { get; init; }

    /// <summary>Measured after the work.</summary>
    public HeightReading? After { get; init; }

    /// <summary>Height of the body blocks, mm; the guard is on the body, so that they are inside the measured rise.</summary>
    public Fraction BodyBlockMm { get; init; } = Fraction.Zero;

    /// <summary>Wheel rate of the front springs fitted at <see cref="After"/>, N/mm for one wheel.</summary>
    public Fraction? FrontWheelRateNPerMm { get; init; }

    /// <summary>Wheel rate of the rear springs fitted at <see cref="After"/>, N/mm for one wheel.</summary>
    public Fraction? RearWheelRateNPerMm { get; init; }

    /// <summary>What each axle carried at <see cref="After"/> less what it carries in the state of the reference, kg.</summary>
    public AxleMasses? LoadDifferenceKg { get; init; }

    /// <summary>Difference between left and right above which to warn, mm; null for no warning.</summary>
    public Fraction? LeftRightWarningMm { get; init; }

    /// <summary>The reference: the maker's trim height where it is known.</summary>
    public HeightReading? Reference => MakersTrim ?? Before;

    /// <summary>The wheel rate of one axle, N/mm for one wheel.</summary>
    public Fraction? WheelRateNPerMm(Axle axle) => axle == Axle.Front ? FrontWheelRateNPerMm : RearWheelRateNPerMm;
}
