using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Tests.Physics.Masses;

public sealed class ReratingCeilingTests
{
    [Fact]
    [Trait("Basis", "published")]
    public void A_wagon_whose_axles_are_rated_3650_kg_together_cannot_be_rated_at_4000_kg()
    {
        // Press on the New South Wales notice of 20 April 2020: a wagon capped at 3,650 kg, the sum of its original axle ratings,
        // instead of 4,000 kg or more. The split between the axles is invented.
        var ceiling = ReratingCeiling.Of(1600, 2050, 4000, 4500);
        ceiling.Kg.ShouldBe((Fraction)3650);
        ceiling.Binding.ShouldBe(["sum of the axle ratings"]);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void A_vehicle_that_is_to_stay_light_stays_at_the_mass_at_which_its_class_changes()
    {
        // South Australian government page on light vehicle mass re-rating: above 4.5 t it becomes a heavy vehicle.
        var ceiling = ReratingCeiling.Of(2200, 2800, 4800, 4500);
        ceiling.Kg.ShouldBe((Fraction)4500);
        ceiling.Binding.ShouldBe(["class of the vehicle"]);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void Re_rating_the_GVM_leaves_every_other_rating_as_it_was() // common practice, no source
    {
        var original = Invented.WagonRatings;
        original.Overlaid(new Ratings { GvmKg = 4000 }).ShouldBe(original with { GvmKg = 4000 });
        original.Overlaid(null).ShouldBe(original);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_unknown_axle_rating_is_named_because_it_could_hold_the_GVM_lower()
    {
        var ceiling = ReratingCeiling.Of(1600, null, 4000, null);
        ceiling.Kg.ShouldBe((Fraction)4000);
        ceiling.Missing.Select(missing => missing.Fact).ShouldBe(["vehicle.ratings.rear-axle"]);
    }
}
