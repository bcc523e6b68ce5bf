using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>Ratings before and after a re-rating, and where a mass budget starts.</summary>
public sealed class RatingsTests
{
    private static readonly Ratings Rerated = new()
    {
        GvmKg = 3800,
        GcmKg = 7200,
        FrontAxleKg = 1700,
        RearAxleKg = 2300,
        BrakedTowKg = 3400,
        UnbrakedTowKg = 740,
        BallKg = 340,
    };

    [Fact]
    [Trait("Basis", "common practice")]
    public void A_re_rating_changes_what_its_certificate_states_and_leaves_the_rest() // common practice, no source
    {
        Invented.WagonRatings.Overlaid(Rerated).ShouldBe(Rerated);
        Invented.WagonRatings.Overlaid(new Ratings { GvmKg = 3800 }).ShouldBe(Invented.WagonRatings with { GvmKg = 3800 });
        Invented.WagonRatings.Overlaid(null).ShouldBe(Invented.WagonRatings);
        Ratings.None.Overlaid(Rerated).ShouldBe(Rerated);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(null, 2100, "vehicle.ratings.front-axle")]
    [InlineData(1600, null, "vehicle.ratings.rear-axle")]
    public void The_axle_rating_that_lacks_is_asked_for_by_name(int? front, int? rear, string fact) =>
        ReratingCeiling
            .Of(new Ratings { FrontAxleKg = front, RearAxleKg = rear }, 2500, 2500, "vehicle.tyres", 3800)
            .Missing.ShouldHaveSingleItem()
            .Fact.ShouldBe(fact);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(2650, 1400, 1250)]
    [InlineData(2650, 1400, null)]
    [InlineData(2650, null, 1250)]
    [InlineData(null, 1400, 1250)]
    public void Of_the_whole_and_the_two_axles_two_give_the_third(int? mass, int? front, int? rear)
    {
        var start = StartingMass.Tare(mass, front, rear, 10);
        start.TotalKg.ShouldBe((Fraction)2650);
        start.Axles.ShouldBe(new AxleMasses(1400, 1250));
        start.Problem.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_whole_alone_says_nothing_of_the_axles()
    {
        var start = StartingMass.Tare(2650, null, null, 10);
        start.TotalKg.ShouldBe((Fraction)2650);
        start.Axles.ShouldBeNull();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicle_whose_mass_is_not_known_is_asked_for_its_mass_and_what_each_axle_carries()
    {
        var plan = Invented.Wagon() with { Start = StartingMass.Tare(null, null, null, 10) };
        var budget = MassBudget.For(plan, MassStateDefinition.Tare(10));
        budget.TotalKg.ShouldBeNull();
        budget.Missing.ShouldContain(new MissingFact("vehicle.tare", "the total"));
        budget.Missing.ShouldContain(new MissingFact("vehicle.tare-axles", "what each axle carries"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_the_rear_gains_the_front_may_lose()
    {
        var change = new AxleMasses(1253, 1897) - new AxleMasses(1400, 1400);
        change.ShouldBe(new AxleMasses(-147, 497));
        change.TotalKg.ShouldBe((Fraction)350);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_place_of_the_ball_takes_the_wheelbase_and_the_overhang_and_asks_for_the_one_that_lacks()
    {
        MassItem.BallLoad(300, 2850, 1200).BehindFrontAxleMm.ShouldBe((Fraction)4050);
        MassItem.BallLoad(300, 2850, null).PositionFact.ShouldBe("vehicle.ball-behind-rear-axle");
        MassItem.BallLoad(300, null, 1200).PositionFact.ShouldBe("vehicle.wheelbase");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Fuel_cannot_be_less_than_none() => Should.Throw<ArgumentOutOfRangeException>(() => MassStateDefinition.Tare(-1));

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_tanks_the_fuel_is_one_line_of_unknown_mass_and_its_tanks_are_what_would_give_it()
    {
        var budget = MassBudget.For(Invented.Wagon() with { Tanks = [] }, MassStateDefinition.Unladen);
        budget.Lines.Select(line => (line.Item, line.MassKg)).ShouldBe([("tare", 2650), ("fuel, maker's tank (not given)", null)]);
        budget.Missing.ShouldContain(new MissingFact("vehicle.tanks", "the mass of fuel to add, and with it the total"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tank_that_is_full_at_tare_adds_no_line()
    {
        var plan = Invented.Wagon() with { Tanks = [Invented.Tank("vehicle.tanks[0]", "main tank", 10)] };
        MassBudget.For(plan, MassStateDefinition.Unladen).Lines.ShouldHaveSingleItem().Item.ShouldBe("tare");
    }
}
