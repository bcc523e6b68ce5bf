using Fractions;
using RuleBook.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>
/// Tare carries 10 L of fuel in all (design rule definitions, as reproduced by trade pages; also common practice). Diesel 0.835 kg/L
/// lies inside 0.820 to 0.850 of the Fuel Standard (Automotive Diesel) Determination 2001 s 3(4).
/// </summary>
public sealed class FuelTests
{
    [Theory] // derived: density x (tank - 10 L)
    [Trait("Basis", "derived")]
    [InlineData(0.835, 80, "58.45")]
    [InlineData(0.835, 110, "83.5")]
    [InlineData(0.835, 138, "106.88")]
    [InlineData(0.745, 80, "52.15")]
    public void Filling_the_tank_from_tare_adds_all_but_ten_litres(decimal density, int litres, string added)
    {
        var budget = Unladen(new FuelTank("vehicle.tanks[0]", "main tank", litres, Of(density), 2000));
        (budget.TotalKg - 2000).ShouldRead(added);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void UnitsNet_agrees_on_the_mass_of_the_fuel_added()
    {
        var added = UnitsNet.Density.FromKilogramsPerLiter(0.835) * UnitsNet.Volume.FromLiters(70);
        ((double)(Unladen(Tank(80)).TotalKg!.Value - 2000)).ShouldBe(added.Kilograms, 1e-9);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_whole_legal_band_of_diesel_density_moves_an_eighty_litre_tank_by_about_two_kilograms()
    {
        // 0.820 and 0.850 kg/L: Fuel Standard (Automotive Diesel) Determination 2001 s 3(4); 70 L x 0.03 kg/L = 2.1 kg is derived.
        var light = Unladen(Tank(80) with { DensityKgPerL = Of(0.82m) });
        var heavy = Unladen(Tank(80) with { DensityKgPerL = Of(0.85m) });
        (heavy.TotalKg - light.TotalKg).ShouldBeExactly(2.1m);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Unladen_means_every_tank_full_and_the_auxiliary_one_too() // common practice, no source
    {
        var budget = Unladen(Tank(80), Tank(60) with { Auxiliary = true, Path = "vehicle.tanks[1]", Name = "auxiliary tank" });
        (budget.TotalKg - 2000).ShouldBeExactly(0.835m * (80 - 10 + 60));
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Two_main_tanks_share_the_ten_litres_of_tare_and_do_not_hold_ten_each() // common practice, no source
    {
        var budget = Unladen(Tank(80), Tank(40) with { Path = "vehicle.tanks[1]" });
        (budget.TotalKg - 2000).ShouldBeExactly(0.835m * (80 + 40 - 10));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tank_smaller_than_the_fuel_of_tare_is_full_already() => Unladen(Tank(8)).TotalKg.ShouldBe((Fraction)2000);

    [Fact]
    [Trait("Basis", "derived")]
    public void From_a_weighbridge_reading_with_full_tanks_no_fuel_is_added_or_asked_for()
    {
        var start = StartingMass.Weighed(MassStateDefinition.Unladen, 1150, 1000);
        var budget = MassBudget.For(new MassPlan(start, 2850, [], [], VehicleLimits.None), MassStateDefinition.Unladen);
        budget.TotalKg.ShouldBe((Fraction)2150);
        budget.Missing.ShouldNotContain(missing => missing.Fact.StartsWith("vehicle.tanks", StringComparison.Ordinal));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_the_tanks_the_unladen_mass_is_unknown_and_the_tanks_are_asked_for()
    {
        var budget = Unladen();
        budget.TotalKg.ShouldBeNull();
        budget.KnownKg.ShouldBe((Fraction)2000);
        budget.Missing.ShouldContain(missing => missing.Fact == "vehicle.tanks");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tank_without_its_capacity_or_fuel_is_asked_for_by_name()
    {
        var budget = Unladen(Tank(80) with { CapacityL = null, DensityKgPerL = null });
        budget.TotalKg.ShouldBeNull();
        budget.Missing.Select(missing => missing.Fact).ShouldBe(["vehicle.tanks[0].capacity", "vehicle.tanks[0].fuel"]);
    }

    private static FuelTank Tank(int litres) => new("vehicle.tanks[0]", "main tank", litres, Of(0.835m), 2000);

    private static MassBudget Unladen(params FuelTank[] tanks) =>
        MassBudget.For(
            new MassPlan(
                StartingMass.Tare(2000, 1100, 900, 10),
                2850,
                [.. tanks],
                [],
                new VehicleLimits(Invented.WagonRatings, null, 2000, 2000)
            ),
            MassStateDefinition.Unladen
        );
}
