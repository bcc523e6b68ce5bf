using RuleBook.Tests.Jobs.Reading;

namespace RuleBook.Tests.Facts;

/// <summary>
/// Conditions that the figures of a job decide. Load indices by UN Regulation 54, Annex 4 (charts that agree): 96 = 710, 111 = 1090, 112 =
/// 1120, 115 = 1215 kg, so that two tyres of index 115 carry 2430 kg. The rest is common practice: a vehicle is rated no higher than its
/// axles, and an axle no higher than its tyres.
/// </summary>
public sealed class DecidedConditionTests
{
    [Theory]
    [Trait("Basis", "common practice")] // no source
    [InlineData("3200 kg", "1450 kg", "1750 kg", "115", true, null)] // 1450 + 1750 = 3200: reached is within
    [InlineData("3201 kg", "1450 kg", "1750 kg", "115", true, false)]
    [InlineData("4860 kg", "2430 kg", "2430 kg", "115", true, null)] // as much as the tyres carry
    [InlineData("4860 kg", "2431 kg", "2430 kg", "115", false, false)]
    [InlineData("4860 kg", "2430 kg", "2431 kg", "115", false, false)]
    [InlineData("4861 kg", "2430 kg", "2430 kg", "115", false, false)]
    [InlineData("2900 kg", "1421 kg", "1500 kg", "96", false, false)]
    public void A_re_rated_vehicle_is_carried_by_its_axles_and_they_by_their_tyres(
        string gvm,
        string front,
        string rear,
        string index,
        bool tyres,
        bool? axles
    )
    {
        var shown = Shown(
            $$""" "vehicle": { "ratings": { "gvm": "2800 kg" } }, "modification": { "tyres": "265/70R17 {{index}}S", "ratings": {"""
                + $$""" "gvm": "{{gvm}}", "front-axle": "{{front}}", "rear-axle": "{{rear}}" } } """
        );
        shown("tyres-carry-new-mass").ShouldBe(tyres);
        shown("axle-ratings-carry-gvm").ShouldBe(axles);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "gvm": "3500 kg" }""", null, null)] // the ratings of the axles are not known
    [InlineData("""{ "gvm": "5000 kg" }""", false, null)] // more than four tyres carry, whatever the axles are rated for
    [InlineData("""{ "front-axle": "2500 kg" }""", false, false)] // a re-rated axle alone
    [InlineData("""{ "rear-axle": "2500 kg" }""", false, false)]
    [InlineData("""{ "gcm": "7000 kg" }""", null, null)] // no rating of the vehicle itself
    public void What_fails_by_one_figure_fails_and_what_lacks_one_stays_to_be_shown(string ratings, bool? tyres, bool? axles)
    {
        var shown = Shown($$""" "modification": { "tyres": "265/70R17 115S", "ratings": {{ratings}} } """);
        shown("tyres-carry-new-mass").ShouldBe(tyres);
        shown("axle-ratings-carry-gvm").ShouldBe(axles);
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("112", "112", true)] // as much as the placard's
    [InlineData("112", "111", false)]
    public void A_tyre_keeps_the_load_rating_from_the_placards_own_index_on(string placard, string fitted, bool kept) =>
        Shown($$""" "vehicle": { "tyres": [ "265/65R17 {{placard}}S" ] }, "modification": { "tyres": "265/70R17 {{fitted}}S" } """)(
            "tyre-load-rating-kept"
        )
            .ShouldBe(kept);

    [Fact]
    [Trait("Basis", "published")]
    public void The_smallest_index_of_several_is_kept_by_itself_and_stays_to_be_shown_against_the_others() =>
        Shown(""" "vehicle": { "tyres": [ "265/65R17 112S", "245/75R16 115S" ] }, "modification": { "tyres": "265/70R17 112S" } """)(
            "tyre-load-rating-kept"
        )
            .ShouldBeNull();

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("3200 kg", true)] // the tyres carry the new ratings as well
    [InlineData("5000 kg", false)] // they do not, although they carry as much as the placard's
    public void After_a_re_rating_the_load_rating_is_kept_only_where_the_new_mass_is_carried(string gvm, bool kept) =>
        Shown(
            $$""" "vehicle": { "tyres": [ "265/65R17 112S" ], "ratings": { "front-axle": "1450 kg", "rear-axle": "1750 kg" } },"""
                + $$""" "modification": { "tyres": "265/70R17 115S", "ratings": { "gvm": "{{gvm}}" } } """
        )("tyre-load-rating-kept")
            .ShouldBe(kept);

    [Fact]
    [Trait("Basis", "derived")]
    public void After_a_re_rating_with_unknown_axles_it_stays_to_be_shown() =>
        Shown(
            """ "vehicle": { "tyres": [ "265/65R17 112S" ] }, "modification": { "tyres": "265/70R17 115S", "ratings": { "gvm": "3200"""
                + """ kg" } } """
        )("tyre-load-rating-kept")
            .ShouldBeNull();

    [Fact]
    [Trait("Basis", "common practice")]
    public void A_trailer_known_by_its_axles_and_its_ball_is_held_against_the_ratings_for_its_brakes() // common practice, no source
    {
        const string Trailer = """ "trailer": { "axles": "900 kg", "ball-load": "100 kg", "braked": "no" } """;
        var within = Shown(
            $$""" "vehicle": { "ratings": { "braked-tow": "3000 kg", "unbraked-tow": "1000 kg" }, "towbar": { "mass": "1000 kg" } },"""
                + $$""" {{Trailer}} """
        );
        within("trailer-braked").ShouldBe(false);
        within("trailer-within-tow-ratings").ShouldBe(true);
        Shown(
            $$""" "vehicle": { "ratings": { "braked-tow": "3000 kg", "unbraked-tow": "999 kg" }, "towbar": { "mass": "1000 kg" } },"""
                + $$""" {{Trailer}} """
        )("trailer-within-tow-ratings")
            .ShouldBe(false);
    }

    [Theory]
    [InlineData("1000 kg", true)]
    [InlineData("999 kg", false)]
    [Trait("Basis", "common practice")] // no source
    public void A_trailer_is_held_against_its_towing_apparatus_without_the_ratings_of_the_vehicle(string towbar, bool within) =>
        Shown($$""" "vehicle": { "towbar": { "mass": "{{towbar}}" } }, "trailer": { "axles": "900 kg", "ball-load": "100 kg" } """)(
            "trailer-within-towing-apparatus"
        )
            .ShouldBe(within);

    private static Func<string, bool?> Shown(string more)
    {
        var shown = JobBook.Facts(more).Shown;
        return condition => shown.TryGetValue(condition, out var met) ? met : null;
    }
}
