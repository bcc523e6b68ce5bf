using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tests.Physics.Masses;
using static RuleBook.Tests.Physics.Masses.Exact;

namespace RuleBook.Tests.Physics.Towing;

public sealed class TowRatingTests
{
    [Theory]
    [Trait("Basis", "published")]
    [InlineData(1.5, 3300)] // South Australia, Road Traffic (Mass and Loading Requirements) Regulations 1999 Sch 2 cl 2, driver's brakes
    [InlineData(1.0, 2200)] // the same, no brakes
    public void Without_a_makers_figure_the_trailer_may_weigh_a_multiple_of_the_unloaded_vehicle(decimal ratio, int rating)
    {
        var tow = TowRating.Of(null, "vehicle.ratings.braked-tow", 2200, Of(ratio)).ShouldNotBeNull();
        tow.Kg.ShouldBe((Fraction)rating);
        tow.ByMaker.ShouldBeFalse();
    }

    [Fact]
    [Trait("Basis", "published")]
    public void A_makers_figure_comes_before_the_multiple()
    {
        // The same regulation: the multiple holds only where the maker specifies nothing.
        var tow = TowRating.Of(2500, "vehicle.ratings.braked-tow", 2200, Of(1.5m)).ShouldNotBeNull();
        tow.Kg.ShouldBe((Fraction)2500);
        tow.ByMaker.ShouldBeTrue();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void With_neither_a_figure_nor_a_rule_there_is_no_rating() =>
        TowRating.Of(null, "vehicle.ratings.braked-tow", 2200, null).ShouldBeNull();

    [Theory]
    [Trait("Basis", "published")]
    [InlineData(true, 1.5, 3300, true)]
    [InlineData(false, 1.0, 2200, false)]
    public void The_default_takes_the_place_of_the_missing_figure_in_the_checks(bool braked, decimal ratio, int limit, bool holds)
    {
        // The same regulation: 1.5 with brakes that the driver works, 1.0 without; a vehicle of 2200 kg and a trailer of 3200 kg.
        var ratings = Invented.WagonRatings with
        {
            BrakedTowKg = null,
            UnbrakedTowKg = null,
        };
        var limits = new CombinationLimits(new VehicleLimits(ratings), new TrailerLimits { Braked = braked }, 2200, Of(ratio));
        var check = CombinationCheck
            .Of(new Combination(3000, null, 2900, 3200, 300), limits)
            .Checks.Single(record => record.What == "trailer alone against the default by the vehicle's own mass");
        check.LimitKg.ShouldBe((Fraction)limit);
        check.Holds.ShouldBe(holds);
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData(3500, 6000, 3000, 3000)] // design rule definitions as reproduced by trade pages: lesser of equipment and GCM - GVM
    [InlineData(2500, 6000, 3000, 2500)]
    public void Rated_towing_capacity_is_the_lesser_of_the_equipment_and_what_the_GVM_leaves_of_the_GCM(
        int equipment,
        int gcm,
        int gvm,
        int capacity
    ) => TowRating.CapacityKg(equipment, gcm, gvm).ShouldBe((Fraction)capacity);

    [Theory]
    [Trait("Basis", "common practice")]
    [InlineData(250, 0)] // common practice, no source: beyond 250 kg of ball load each further 50 kg takes 100 kg out of the vehicle
    [InlineData(300, 100)]
    [InlineData(350, 200)]
    public void A_maker_may_advise_to_load_less_as_the_ball_load_grows(int ball, int less)
    {
        var advice = DownRating.Of(MakersTable, ball, 3000 + ball, 3500);
        advice.LessKg.ShouldBe((Fraction)less);
        advice.Check!.LimitKg.ShouldBe((Fraction)(3500 - less));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(true, "vehicle.ratings.braked-tow", 3500)]
    [InlineData(false, "vehicle.ratings.unbraked-tow", 750)]
    public void A_braked_and_an_unbraked_trailer_each_have_their_own_rating(bool braked, string fact, int limit)
    {
        var limits = new CombinationLimits(new VehicleLimits(Invented.WagonRatings), new TrailerLimits { Braked = braked });
        var check = CombinationCheck
            .Of(new Combination(3000, null, 650, 700, 50), limits)
            .Checks.Single(record => record.LimitFact == fact);
        check.LimitKg.ShouldBe((Fraction)limit);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Between_two_rows_of_the_makers_table_the_stricter_counts_and_beyond_its_end_it_says_nothing()
    {
        DownRating.Of(MakersTable, 251, 3300, 3500).LessKg.ShouldBe((Fraction)100);
        DownRating.Of(MakersTable, 351, 3300, 3500).ShouldBe(new DownRating(null, null));
    }

    private static DownRatingRow[] MakersTable => [new(350, 200), new(250, 0), new(300, 100)];
}
