using Fractions;
using RuleBook.Physics.Masses;
using RuleBook.Units;
using static RuleBook.Tests.Figures.Reckoned;

namespace RuleBook.Tests.Figures;

/// <summary>A mass of which part is not known lies between two figures and is never taken as if that part were nothing.</summary>
public sealed class UnknownPartTests
{
    private const string Ratings = """ "ratings": { "gvm": "3000 kg" } """;

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("2950 kg", "over")] // 2950 + 70 L x 0.745 = 3002.15 kg with the lighter fuel, 3008.45 with the heavier: over with either
    [InlineData("2945 kg", "open")] // 2997.15 or 3003.45 kg
    [InlineData("2940 kg", "within")] // 2992.15 or 2998.45 kg
    public void A_tank_without_a_fuel_is_reckoned_with_the_lightest_and_the_heaviest(string tare, string gvm)
    {
        // 0.745 kg/L petrol, 0.835 kg/L diesel; 10 L of fuel in tare (design rule definitions, as reproduced by trade pages).
        var answer = MassesOf($$""" "vehicle": { "tare": "{{tare}}", {{Ratings}}, "tanks": [ { "capacity": "80 L" } ] } """);
        var checks = answer.Unladen.Left.Where(check => check.LimitFact == "vehicle.ratings.gvm").ToArray();
        (answer.Unladen.Possible.Total.High - answer.Unladen.Possible.Total.Low).ShouldBe(new Fraction(63, 10));
        switch (gvm)
        {
            case "over":
                (checks.Single().Known, checks.Single().Holds).ShouldBe((Known.AtLeast, false));
                break;
            case "within":
                (checks.Single().Known, checks.Single().Holds).ShouldBe((Known.AtMost, true));
                break;
            default:
                checks.ShouldBeEmpty();
                break;
        }

        answer.Failing.Count().ShouldBe(gvm == "over" ? 1 : 0);
        answer.Missing.ShouldContain(missing => missing.Fact == "vehicle.tanks[0].fuel");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void An_added_tank_does_not_hide_that_the_makers_tank_is_not_known()
    {
        // 60 L more at 0.835 kg/L are 50.1 kg; what the maker's tank adds to tare is not known, so the vehicle has that or more.
        var unladen = MassesOf(
            """ "vehicle": { "tare": "2000 kg" }, "modification": { "tanks": [ { "capacity": "60 L", "fuel": "diesel" } ] } """
        ).Unladen;
        unladen.TotalKg.ShouldBeNull();
        unladen.Possible.Total.ShouldBe(new Interval(new Fraction(20501, 10), null));
        unladen.Missing.ShouldContain(missing => missing.Fact == "vehicle.tanks");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(""" "tanks": [ { "capacity": "80 L", "fuel": "diesel" } ], """)]
    [InlineData("")]
    public void A_tank_that_replaces_the_makers_takes_over_the_ten_litres_of_tare(string makers)
    {
        // 2000 kg with 10 L; the new tank holds 138 L: 128 L x 0.835 kg/L = 106.88 kg more, whatever the maker's held.
        var unladen = MassesOf(
            $$"""
            "vehicle": { {{makers}} "tare": "2000 kg" }, "modification": { "tanks": [ { "capacity": "138 L", "fuel": "diesel",
              "replaces": "yes", "mass": "-4 kg" } ] }
            """
        ).Unladen;
        unladen.TotalKg.ShouldBe(new Fraction(210288, 100)); // and is 4 kg lighter than the one that it takes the place of
        unladen.Missing.ShouldNotContain(missing => missing.Fact == "vehicle.tanks");
    }

    /// <summary>A long-range tank adds the mass of the tank too, not only that of its fuel (trade; computation of kerb mass).</summary>
    [Theory]
    [Trait("Basis", "common-practice")]
    [InlineData("", false)]
    [InlineData(""", "mass": "unknown" """, false)]
    [InlineData(""", "mass": "24.5 kg" """, true)]
    public void An_added_tank_weighs_something_itself_and_where_that_is_not_stated_the_vehicle_has_so_much_or_more(string mass, bool known)
    {
        // 2000 kg, 70 L x 0.835 kg/L = 58.45 kg in the maker's tank and 60 L x 0.835 kg/L = 50.1 kg in the other are 2108.55 kg.
        var unladen = MassesOf(
            $$"""
            "vehicle": { "tare": "2000 kg", "tanks": [ { "capacity": "80 L", "fuel": "diesel" } ] },
            "modification": { "tanks": [ { "capacity": "60 L", "fuel": "diesel" {{mass}} } ] }
            """
        ).Unladen;
        unladen.TotalKg.ShouldBe(known ? new Fraction(210855 + 2450, 100) : null);
        unladen.Possible.Total.Low.ShouldBe(new Fraction(210855 + (known ? 2450 : 0), 100));
        unladen.Missing.Any(missing => missing.Fact == "modification.tanks[0].mass").ShouldBe(!known);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_vehicle_over_its_gvm_is_over_though_an_accessory_has_not_been_weighed()
    {
        // 2950 + 58.45 kg of fuel are over 3000 kg before the bar of unknown mass is counted.
        var answer = MassesOf(
            $$"""
            "vehicle": { "tare": "2950 kg", {{Ratings}}, "tanks": [ { "capacity": "80 L",
              "fuel": "diesel" } ] }, "modification": { "accessories": [ { "name": "bar" } ] }
            """
        );
        answer
            .Failing.Single()
            .Check.ShouldSatisfyAllConditions(
                check => check.ValueKg.ShouldBe(new Fraction(300845, 100)),
                check => check.Known.ShouldBe(Known.AtLeast)
            );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_ball_load_need_not_be_known_to_know_the_combination()
    {
        // Vehicle 2733.5 kg without it and trailer 4400 kg alone: 7133.5 kg, wherever the ball load rests; the GCM is 7000 kg.
        var check = MassesOf($$""" "vehicle": { {{Wagon}} }, "trailer": { "mass": "4400 kg", "braked": "yes" } """)
            .Towing!.Planned!.Checks.Single(each => each.LimitFact == "vehicle.ratings.gcm");
        (check.ValueKg, check.Holds).ShouldBe((new Fraction(71335, 10), false));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_trailer_over_the_rating_for_braked_ones_is_too_heavy_whatever_its_brakes() =>
        MassesOf($$""" "vehicle": { {{Wagon}} }, "trailer": { "mass": "3600 kg", "ball-load": "300 kg" } """)
            .Failing.ShouldContain(each => each.Check.LimitFact == "vehicle.ratings.braked-tow");
}
