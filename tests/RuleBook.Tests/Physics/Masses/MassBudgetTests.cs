using CsCheck;
using Fractions;
using RuleBook.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Invented;

namespace RuleBook.Tests.Physics.Masses;

public sealed class MassBudgetTests
{
    private static readonly MassItem[] Touring =
    [
        Item("bull bar", ItemKind.FixedAccessory, 60, -900),
        Item("winch", ItemKind.FixedAccessory, 40, -950),
        Item("wheel carrier", ItemKind.FixedAccessory, 90, 3750),
        Item("roof rack", ItemKind.FixedAccessory, 35, 1600),
        Item("drawers and fridge", ItemKind.FixedAccessory, 110, 3000),
        Item("water tank full", ItemKind.FixedAccessory, 70, 2500),
        Item("battery and canopy", ItemKind.FixedAccessory, 80, 3100),
        Item("awning and shower", ItemKind.FixedAccessory, 35, 1700),
        Item("auxiliary tank itself", ItemKind.FixedAccessory, 40, 3300),
        Item("protection plates", ItemKind.FixedAccessory, 75, 900),
        Item("side steps and rails", ItemKind.FixedAccessory, 65, 1400),
        Item("driver", ItemKind.Occupant, 85, 1500),
        Item("passenger", ItemKind.Occupant, 75, 1500),
    ];

    [Fact]
    [Trait("Basis", "common practice")]
    public void A_large_wagon_with_touring_accessories_can_reach_its_GVM_before_its_occupants_are_counted()
    {
        // Common practice, no source; an invented wagon. Touring food and tools of 30 kg ride in the drawers.
        var wagon = Wagon([.. Touring, Item("tools", ItemKind.FixedAccessory, 30, 3000)]);
        var unladen = MassBudget.For(wagon, MassStateDefinition.Unladen);
        var loaded = MassBudget.For(wagon, MassStateDefinition.Loaded);
        Gvm(unladen).ValueKg.ShouldBeGreaterThanOrEqualTo((Fraction)3500);
        Gvm(loaded).MarginKg.ShouldBe(Gvm(unladen).MarginKg - 160);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Tare_is_lighter_than_unladen_by_the_fuel_and_the_fixed_accessories() // common practice, no source
    {
        var wagon = Wagon(Item("bull bar", ItemKind.FixedAccessory, 60, -900), Item("driver", ItemKind.Occupant, 85, 1500));
        MassBudget.For(wagon, Tare).TotalKg.ShouldBe((Fraction)2650);
        MassBudget.For(wagon, MassStateDefinition.Unladen).TotalKg.ShouldBeExactly(2650 + (0.835m * (110 - 10 + 45)) + 60);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_worked_four_wheel_drive_ends_at_the_axle_masses_of_the_moment_balance()
    {
        // derived: 1350 and 1250 kg with full tanks, then bull bar, wheel carrier, roof rack and 270 kg on the ball; wheelbase 2850 mm.
        var plan = new MassPlan(
            StartingMass.Weighed(MassStateDefinition.Unladen with { Carries = [] }, 1350, 1250),
            2850,
            [],
            [
                Item("bull bar", ItemKind.FixedAccessory, 60, -900),
                Item("wheel carrier", ItemKind.FixedAccessory, 90, 3750),
                Item("roof rack and load", ItemKind.Load, 75, 1600),
                MassItem.BallLoad(270, 2850, 1200),
            ],
            VehicleLimits.None
        );
        var budget = MassBudget.For(plan, MassStateDefinition.Loaded);
        budget.Axles!.FrontKg.ShouldRead("1319.74");
        budget.Axles.RearKg.ShouldRead("1775.26");
        budget.TotalKg.ShouldBe((Fraction)3095);
        budget.Lines.Select(line => line.Item).ShouldBe(["weighbridge", "bull bar", "wheel carrier", "roof rack and load", "ball load"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void From_a_loaded_reading_the_unladen_mass_follows_by_taking_off_what_is_not_part_of_it()
    {
        var plan = new MassPlan(
            StartingMass.Weighed(MassStateDefinition.Loaded, 1400, 1500),
            2800,
            [],
            [Item("bull bar", ItemKind.FixedAccessory, 60, -900), Item("driver", ItemKind.Occupant, 80, 1400)],
            VehicleLimits.None
        );
        var budget = MassBudget.For(plan, MassStateDefinition.Unladen);
        budget.TotalKg.ShouldBe((Fraction)2820);
        budget.Axles.ShouldBe(new AxleMasses(1360, 1460));
        budget.Lines.Length.ShouldBe(2);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_a_position_the_total_is_still_known_and_the_split_only_in_part()
    {
        var budget = MassBudget.For(Wagon(Item("drawers", ItemKind.FixedAccessory, 80, null)), MassStateDefinition.Unladen);
        budget.TotalKg.ShouldNotBeNull();
        budget.Axles.ShouldBeNull();
        budget.UnplacedKg.ShouldBe((Fraction)80);
        (budget.PlacedAxles.TotalKg + 80).ShouldBe(budget.TotalKg!.Value);
        budget.Missing.ShouldContain(new MissingFact("modification.drawers.behind-front-axle", "the share of each axle in: drawers"));
        budget.Left.Select(check => check.What).ShouldBe(["vehicle against its GVM"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_a_mass_the_rest_is_still_added_up_and_the_mass_is_asked_for()
    {
        var budget = MassBudget.For(Wagon(Item("drawers", ItemKind.FixedAccessory, null, 3000)), MassStateDefinition.Unladen);
        budget.TotalKg.ShouldBeNull();
        budget.KnownKg.ShouldBeExactly(2650 + (0.835m * 145));
        budget.Missing.ShouldContain(missing => missing.Fact == "modification.drawers.mass");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_a_wheelbase_the_wheelbase_is_asked_for_once()
    {
        var wagon = Wagon(Item("bull bar", ItemKind.FixedAccessory, 60, -900)) with { WheelbaseMm = null };
        MassBudget.For(wagon, MassStateDefinition.Unladen).Missing.Count(missing => missing.Fact == "vehicle.wheelbase").ShouldBe(1);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_unhitched_trailer_is_not_part_of_the_vehicles_mass()
    {
        var wagon = Wagon(MassItem.BallLoad(300, 2850, 1200));
        var hitched = MassBudget.For(wagon, MassStateDefinition.Loaded).TotalKg;
        (hitched - MassBudget.For(wagon, MassStateDefinition.LoadedUnhitched).TotalKg).ShouldBe((Fraction)300);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Each_rating_says_what_is_left_of_it_and_a_new_rating_stands_beside_the_old_one()
    {
        var wagon = Wagon() with { Limits = new VehicleLimits(WagonRatings, new Ratings { GvmKg = 4000 }, 1800, 2200) };
        var left = MassBudget.For(wagon, Tare).Left.ToDictionary(check => check.What, check => check.MarginKg);
        left["vehicle against its GVM"].ShouldBe((Fraction)850);
        left["vehicle against its GVM, re-rated"].ShouldBe((Fraction)1350);
        left["front axle against its rating"].ShouldBe((Fraction)250);
        left["rear axle against its rating"].ShouldBe((Fraction)850);
        left["front axle against its tyres"].ShouldBe((Fraction)400);
        left["rear axle against its tyres"].ShouldBe((Fraction)950);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Axle_masses_that_do_not_add_up_to_the_stated_mass_are_an_error()
    {
        var start = StartingMass.Tare(2650, 1400, 1300, 10);
        start.Problem.ShouldNotBeNull().ShouldContain("2700 kg");
        Should.Throw<ArgumentException>(() => MassBudget.For(Wagon() with { Start = start }, Tare));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void One_axle_follows_from_the_other_and_the_whole() =>
        StartingMass.Tare(2650, null, 1250, 10).Axles.ShouldBe(new AxleMasses(1400, 1250));

    [Fact]
    [Trait("Basis", "property")]
    public void The_order_of_the_items_changes_no_result() =>
        Gen.Select(Any.Mass, Any.Place)
            .Array[1, 8]
            .SelectMany(items => Gen.Shuffle(items).Select(shuffled => (items, shuffled)))
            .Sample(both =>
            {
                var one = MassBudget.For(Wagon([.. both.items.Select(Accessory)]), MassStateDefinition.Unladen);
                var other = MassBudget.For(Wagon([.. both.shuffled.Select(Accessory)]), MassStateDefinition.Unladen);
                return one.TotalKg == other.TotalKg && one.Axles == other.Axles && one.Left.SequenceEqual(other.Left);
            });

    [Fact]
    [Trait("Basis", "property")]
    public void Front_and_rear_axle_together_are_the_total_on_every_line() =>
        Gen.Select(Any.Mass, Any.Place)
            .Array[1, 8]
            .Sample(items =>
                MassBudget
                    .For(Wagon([.. items.Select(Accessory)]), MassStateDefinition.Loaded)
                    .Lines.All(line => line.RunningAxles!.TotalKg == line.RunningTotalKg)
            );

    private static LoadCheck Gvm(MassBudget budget) => budget.Left.Single(check => check.LimitFact == "vehicle.ratings.gvm");

    private static MassItem Accessory((Fraction Mass, Fraction Place) item) =>
        new("modification.accessories", "accessory", ItemKind.FixedAccessory, item.Mass, item.Place);
}
