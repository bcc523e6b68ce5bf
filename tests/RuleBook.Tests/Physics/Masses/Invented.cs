using System.Collections.Immutable;
using RuleBook.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>A large wagon that nobody makes. Tare carries 10 L (design rule definitions, as reproduced by trade pages).</summary>
internal static class Invented
{
    internal static readonly MassStateDefinition Tare = MassStateDefinition.Tare(10);

    internal static readonly Ratings WagonRatings = new()
    {
        GvmKg = 3500,
        GcmKg = 7000,
        FrontAxleKg = 1650,
        RearAxleKg = 2100,
        BrakedTowKg = 3500,
        UnbrakedTowKg = 750,
        BallKg = 350,
    };

    internal static MassPlan Wagon(params ImmutableArray<MassItem> items) =>
        new(
            StartingMass.Tare(2650, 1400, 1250, 10),
            2850,
            [Tank("vehicle.tanks[0]", "main tank", 110), Tank("vehicle.tanks[1]", "auxiliary tank", 45, auxiliary: true)],
            items,
            new VehicleLimits(WagonRatings)
        );

    internal static FuelTank Tank(string path, string name, int litres, bool auxiliary = false, int place = 2000) =>
        new(path, name, litres, Of(0.835m), place, auxiliary);

    internal static MassItem Item(string name, ItemKind kind, decimal? mass, int? place) =>
        new("modification." + name.Replace(' ', '-'), name, kind, mass is { } kg ? Of(kg) : null, place);
}
