using RuleBook.Tests.Answers;
using RuleBook.Tests.Figures;

namespace RuleBook.Tests.Telling;

/// <summary>What is reckoned, as it is told. Each figure worked by hand beside it.</summary>
public sealed class ReckoningTextTests
{
    [Fact]
    [Trait("Basis", "derived")]
    public void An_overloaded_vehicle_is_told_by_how_much_and_not_by_its_rating()
    {
        // 2650 at tare, 100 L more diesel at 0.835 kg/L, 1000 of tray; half of the tray and 2000/2850 of the fuel stand over the rear axle.
        var told = FixedWordsTests.All(
            Reckoned.Assess(
                $$""" "vehicle": { {{Reckoned.Wagon}} }, "modification": { "accessories": [ { "name": "tray", "mass": "1000 kg","""
                    + $$""" "behind-front-axle": "1425 mm" } ] } """
            )
        );
        told.ShouldContain("x  vehicle against its GVM: 3733.5 of 3500 kg, 233.5 kg too much");
        told.ShouldContain("x  front axle against its rating: 1924.9 of 1650 kg, 274.9 kg too much");
        told.ShouldContain("ok rear axle against its rating: 1808.6 of 2100 kg, 291.4 kg left");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Springs_say_which_limit_they_keep_and_how_much_mass_the_other_still_needs()
    {
        // Two wheels of 98.0665 N/mm yield 1 mm under 20 kg: from 60 to 50 mm are 200 kg over the axle, or twice that midway.
        var book = Scenario.Stating(Scenario.Tiers) with
        {
            Reference = Reckoned.Book.Reference,
        };
        var told = FixedWordsTests.All(
            Scenario.Assess(
                book,
                """
                "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm",
                "tanks": [ { "capacity": "10 L", "fuel": "diesel", "behind-front-axle": "2000 mm" } ] },
                "modification": { "springs": { "rear": { "wheel-rate": "98.0665 N/mm", "height-gained": "60 mm",
                "at-axle-load": "1050 kg" } } }
                """
            )
        );
        told.ShouldContain(
            "!  allowed without a certificate, at most 50 mm: needs 200 kg more of fixed mass over the rear axle, or 400 kg midway "
                + "between the axles"
        );
        told.ShouldContain("ok allowed with a certificate, at most 75 mm: kept");
    }

    /// <summary>
    /// A larger tyre turns more slowly: the speedometer shows less than the true speed; a smaller one the other way round.
    /// </summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(
        "265/70R17",
        "2006-07-01",
        "!  new: would read low, which the rule does not allow: have it " + "checked and " + "corrected"
    )] // 100 shown at 100 x 804 / 776 = 103.6
    [InlineData("265/70R17", "2006-06-30", "ok old: within the tolerance")] // 100 shown is at least 90 % of 103.6
    // 100 shown at 100 x 635 / 776 = 81.8, of which 110 % and 4 are 94.
    [InlineData("195/65R15", "2006-07-01", "!  new: would read too high")]
    public void A_speedometer_is_told_on_which_side_it_errs(string tyres, string built, string told) =>
        FixedWordsTests
            .All(
                Reckoned.Assess(
                    $$""" "vehicle": { "built": "{{built}}", "tyres": [ "265/65R17" ] }, "modification": { "tyres": "{{tyres}}" } """
                )
            )
            .ShouldContain(line => line.StartsWith(told, StringComparison.Ordinal));
}
