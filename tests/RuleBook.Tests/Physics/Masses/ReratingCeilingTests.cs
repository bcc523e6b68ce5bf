using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Tests.Physics.Masses;

public sealed class ReratingCeilingTests
{
    private static readonly Ratings Axles = new() { FrontAxleKg = 1600, RearAxleKg = 2050 };

    [Fact]
    [Trait("Basis", "published")]
    public void A_wagon_whose_axles_are_rated_3650_kg_together_cannot_be_rated_at_4000_kg()
    {
        // Press on the New South Wales notice of 20 April 2020: a wagon capped at 3,650 kg, the sum of its original axle ratings,
        // instead of 4,000 kg or more. The split between the axles and the tyres are invented.
        var ceiling = ReratingCeiling.Of(Axles, 2500, 2500, "vehicle.tyres", 4000);
        ceiling.Kg.ShouldBe((Fraction)3650);
        ceiling.Binding.ShouldBe(["front axle", "rear axle"]);
        ceiling.Carries.ShouldBe(false);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_highest_gvm_is_what_axles_and_tyres_carry_and_never_the_figure_asked_for()
    {
        // Load index 112: 1120 kg a tyre (UN R54 Annex 4), 2240 kg an axle; the rear is rated 2400 kg: 1600 + 2240 = 3840 kg.
        var ceiling = ReratingCeiling.Of(Axles with { RearAxleKg = 2400 }, 2240, 2240, "vehicle.tyres", 3500);
        ceiling.Kg.ShouldBe((Fraction)3840);
        ceiling.Binding.ShouldBe(["front axle", "rear tyres"]);
        ceiling.AskedKg.ShouldBe((Fraction)3500);
        ceiling.Carries.ShouldBe(true);
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
    public void An_unknown_axle_rating_leaves_no_highest_gvm_and_is_named_because_it_could_hold_it_lower()
    {
        var ceiling = ReratingCeiling.Of(Axles with { RearAxleKg = null }, 2240, null, "vehicle.tyres", 3000);
        ceiling.Kg.ShouldBeNull();
        ceiling.Carries.ShouldBeNull();
        ceiling.Missing.Select(missing => missing.Fact).ShouldBe(["vehicle.ratings.rear-axle", "vehicle.tyres"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void With_unknown_tyres_a_gvm_above_the_axle_ratings_is_refused_and_one_below_is_not_yet_carried()
    {
        ReratingCeiling.Of(Axles, null, null, "vehicle.tyres", 4000).Carries.ShouldBe(false);
        ReratingCeiling.Of(Axles, null, null, "vehicle.tyres", 3500).Carries.ShouldBeNull();
    }
}
