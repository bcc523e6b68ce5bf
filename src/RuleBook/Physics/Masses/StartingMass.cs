using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Masses;

/// <summary>Where a mass budget starts: tare mass from papers, or what a weighbridge read in a stated state.</summary>
/// <param name="Name">What a reader calls it.</param>
/// <param name="State">What was aboard.</param>
/// <param name="MassKg">Mass of the whole vehicle, kg.</param>
/// <param name="FrontKg">What the front axle carried, kg.</param>
/// <param name="RearKg">What the rear axle carried, kg.</param>
/// <param name="MassFact">The path of the mass in the job.</param>
/// <param name="AxlesFact">The path of the axle masses in the job.</param>
internal sealed record StartingMass(
    string Name,
    MassStateDefinition State,
    Fraction? MassKg,
    Fraction? FrontKg,
    Fraction? RearKg,
    string MassFact,
    string AxlesFact
)
{
    /// <summary>Guard band of one weighbridge reading, kg; zero for a figure from papers.</summary>
    public Fraction ReadingGuardKg { get; init; }

    /// <summary>The mass of the whole, given or as the sum of the axles; null when neither is known.</summary>
    public Fraction? TotalKg => MassKg ?? FrontKg + RearKg;

    /// <summary>Both axles; one that is not given follows from the other and the whole.</summary>
    public AxleMasses? Axles =>
        (FrontKg ?? MassKg - RearKg, RearKg ?? MassKg - FrontKg) is ({ } front, { } rear) ? new AxleMasses(front, rear) : null;

    /// <summary>What is known of the whole and of each axle, kg; a whole is no less than the axle that is known.</summary>
    public MassRange Possible =>
        new(
            TotalKg is { } total ? Interval.Of(total) : new Interval(FrontKg ?? RearKg ?? Fraction.Zero, null),
            On(Axles?.FrontKg ?? FrontKg),
            On(Axles?.RearKg ?? RearKg)
        );

    /// <summary>Why the figures contradict each other; null when they do not.</summary>
    public string? Problem =>
        MassKg is { } mass && FrontKg + RearKg is { } sum && sum != mass
            ? $"front and rear axle together are {Units.Numbers.Show(sum)} kg, but {MassFact} says {Units.Numbers.Show(mass)} kg"
            : null;

    /// <summary>Tare mass as the papers or the plate state it.</summary>
    /// <param name="massKg">Tare mass, kg.</param>
    /// <param name="frontKg">Front axle at tare, kg.</param>
    /// <param name="rearKg">Rear axle at tare, kg.</param>
    /// <param name="fuelL">Fuel that tare mass includes, L in all.</param>
    public static StartingMass Tare(Fraction? massKg, Fraction? frontKg, Fraction? rearKg, Fraction fuelL) =>
        new("tare", MassStateDefinition.Tare(fuelL), massKg, frontKg, rearKg, "vehicle.tare", "vehicle.tare-axles");

    /// <summary>What a weighbridge read.</summary>
    /// <param name="state">What was aboard.</param>
    /// <param name="frontKg">Front axle as read, kg.</param>
    /// <param name="rearKg">Rear axle as read, kg.</param>
    /// <param name="massKg">The whole as read, kg, where the axles were not weighed apart.</param>
    public static StartingMass Weighed(MassStateDefinition state, Fraction? frontKg, Fraction? rearKg, Fraction? massKg = null) =>
        new("weighbridge", state, massKg, frontKg, rearKg, "measured.weighbridge.mass", "measured.weighbridge.front-alone");

    private static Interval On(Fraction? kg) => kg is { } known ? Interval.Of(known) : MassRange.FromZero;
}
