using RuleBook.Answers;
using RuleBook.Telling;
using RuleBook.Tests.Figures;

namespace RuleBook.Tests.Answers;

/// <summary>A load over a rating stands before the pathway: the ratings are the maker's, and no vehicle may be driven over them.</summary>
public sealed class LoadBlockerTests
{
    private const string Vehicle =
        """ "vehicle": { "tare": "2400 kg", "tare-axles": { "front": "1300 kg", "rear": "1100 kg" }, "wheelbase": "2850 mm","""
        + """ "tanks": [ { "capacity": "10 L", "fuel": "diesel", "behind-front-axle": "1425 mm" } ], """;

    private static string Job(string ratings, string rerated = "") =>
        Vehicle
        + $$""" "ratings": { {{ratings}} } }, "modification": { {{rerated}} "accessories": [ { "name": "bar", "mass": "100 kg","""
        + $$""" "behind-front-axle": "1425 mm" } ] } """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_load_over_the_GVM_is_a_blocker_with_how_much_over_what()
    {
        var blocker = Reckoned.Assess(Job(""" "gvm": "2450 kg" """)).Blockers.ShouldHaveSingleItem();
        blocker.ShouldSatisfyAllConditions(
            each => each.Id.ShouldBe("over-rating/gvm/unladen"),
            each => each.Over!.Value.ShouldBe(50), // 2400 + 100 - 2450
            each => each.Limit!.Value.ShouldBe(2450),
            each => BlockerText.Sentence(each).ShouldBe("50 kg over GVM before anybody gets in (2500 of 2450 kg)")
        );
    }

    [Fact]
    [Trait("Basis", "common-practice")]
    public void A_GVM_above_what_the_axles_carry_together_is_not_certifiable_and_does_not_rescue_the_load()
    {
        var answer = Reckoned.Assess(
            Job(""" "gvm": "2450 kg", "front-axle": "1400 kg", "rear-axle": "1200 kg" """, """ "ratings": { "gvm": "2700 kg" }, """)
        );
        answer
            .Blockers.Select(each => (each.Id, each.Over?.ToInt32()))
            // And no book here has a rule on the GVM.
            .ShouldBe([("not-certifiable/gvm", 100), ("refused-rating/gvm/unladen", 50), ("not-judged/modification.ratings.gvm", null)]);
        answer.Headline.ShouldBe(Headline.Blocked);
    }

    [Fact]
    [Trait("Basis", "common-practice")]
    public void A_GVM_above_what_the_tyres_carry_together_is_not_certifiable_though_the_axles_would_carry_it()
    {
        // Load index 95 is 690 kg a tyre (ETRTO table): 1380 kg an axle, 2760 kg together, under the axles' 3000 kg.
        var answer = Reckoned.Assess(
            Job(
                """ "gvm": "2600 kg", "front-axle": "1400 kg", "rear-axle": "1600 kg" """,
                """ "ratings": { "gvm": "2800 kg" }, "tyres": "225/65R17 95H", """
            )
        );
        var blocker = answer.Blockers.Single(each => each.Id == "not-certifiable/gvm");
        blocker.Over!.Value.ShouldBe(40);
        BlockerText
            .Sentence(blocker)
            .ShouldBe("GVM asked for not certifiable: 40 kg over what the front tyres and rear tyres carry together (2800 of 2760 kg)");
    }

    [Theory]
    [Trait("Basis", "derived")] // guard band by JCGM 106:2012 (clause not opened): 20 kg on the axles, as in the tests of the weighbridge
    [InlineData(3470, "Nothing to judge: no change to the vehicle is stated that a rule in the book could judge. ")]
    [InlineData(
        3485,
        "Nothing to judge: no change to the vehicle is stated that a rule in the book could judge; "
            + "too close to call: 3485 of 3500 kg for GVM, weighed to within 20 kg. "
    )]
    [InlineData(3515, "NOT AS PLANNED: 15 kg over GVM as weighed (3515 of 3500 kg, too close to call: weighed to within 20 kg).")]
    [InlineData(3530, "NOT AS PLANNED: 30 kg over GVM as weighed (3530 of 3500 kg).")]
    public void A_weighed_mass_within_the_guard_band_of_a_rating_is_too_close_to_call_on_the_first_line(int kg, string first) =>
        FirstLines
            .Of(
                Reckoned.Assess(
                    $$"""
                    "vehicle": { "ratings": { "gvm": "3500 kg" } },
                    "measured": { "uncertainty": { "weighbridge": "20 kg" }, "weighbridge": { "mass": "{{kg}} kg" } }
                    """
                )
            )
            .First()
            .ShouldStartWith(first);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rating_asked_for_that_nobody_judged_does_not_rescue_the_load() // no book here has a rule on the GVM
    {
        var answer = Reckoned.Assess(
            Job(""" "gvm": "2450 kg", "front-axle": "1500 kg", "rear-axle": "1500 kg" """, """ "ratings": { "gvm": "2700 kg" }, """)
        );
        answer.Headline.ShouldNotBe(Headline.NoCertificate);
    }
}
