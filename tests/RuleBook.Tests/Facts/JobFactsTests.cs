using Fractions;
using RuleBook.Facts;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Jobs.Reading;
using RuleBook.Units;

namespace RuleBook.Tests.Facts;

/// <summary>What follows from a job. Derived: sums, differences and halves of what it states.</summary>
public sealed class JobFactsTests
{
    private const string Corners = """ "front-left": "480 mm", "front-right": "480 mm", "rear-left": "520 mm", "rear-right": "520 mm" """;
    private const string Raised = """ "front-left": "520 mm", "front-right": "520 mm", "rear-left": "570 mm", "rear-right": "570 mm" """;

    [Fact]
    [Trait("Basis", "derived")]
    public void What_a_job_does_not_mention_is_unchanged_and_what_it_calls_unknown_is_not()
    {
        Value("", "suspension-lift").ShouldBe(Interval.Of(0));
        Value(""" "modification": { "suspension-lift": "unknown" } """, "suspension-lift").ShouldBe(Interval.Anything);
        Value(""" "modification": { "suspension-lift": "2 in" } """, "suspension-lift").Exact.ShouldBe(new Fraction(508, 10));
        Value("", "frame-height").ShouldBe(Interval.Anything); // no job has to state it, and it is not zero
    }

    [Fact]
    [Trait("Basis", "published")]
    public void A_GVM_that_is_not_stated_lies_within_the_bounds_of_the_category()
    {
        // ADR Definitions and Vehicle Categories: NB1 is over 3.5 t and up to 4.5 t of GVM. That a passenger vehicle is no heavier is
        // assumed.
        Value(""" "vehicle": { "category": "NB1" } """, "gvm").ShouldBe(new Interval(3501, 4500));
        Value(""" "vehicle": { "category": "MC" } """, "gvm").ShouldBe(new Interval(null, 4500));
        Value(""" "vehicle": { "category": "MC", "ratings": { "gvm": "4900 kg" } } """, "gvm").ShouldBe(Interval.Of(4900));
        Value(""" "vehicle": { "category": "MC", "ratings": { "gvm": "unknown" } } """, "gvm").ShouldBe(Interval.Anything);
        Value("", "gvm").ShouldBe(Interval.Anything);
    }

    [Fact]
    [Trait("Basis", "published")]
    public void The_growth_of_a_tyre_follows_from_the_sizes_on_the_basis_asked_for()
    {
        // Handbook diameters 804 and 776 mm; nominal 17 x 25.4 + 2 x 185.5 and + 2 x 172.25 mm (UN Regulation 30, wording from memory).
        const string Sizes = """ "vehicle": { "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17" } """;
        Value(Sizes, FactSet.TyreGrowth).Exact.ShouldBe((Fraction)28);
        Value(Sizes, FactSet.TyreLift).Exact.ShouldBe((Fraction)14);
        Value(Sizes, "tyre-diameter-reduction").Exact.ShouldBe((Fraction)(-28));
        Value(Sizes, "tyre-diameter-growth-percent").Exact.ShouldBe(new Fraction(2800, 776));
        Value(Sizes, "tyre-diameter-reduction-percent").Exact.ShouldBe(new Fraction(-2800, 776));
        Value(Sizes, "tyre-section-width-ratio").Exact.ShouldBe((Fraction)100);
        JobBook.Facts(Sizes, DiameterBasis.Nominal).Measure(FactSet.TyreGrowth, []).Exact.ShouldBe(new Fraction(265, 10));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void New_tyres_on_an_unknown_placard_leave_the_growth_open() =>
        Value(""" "modification": { "tyres": "265/70R17" } """, FactSet.TyreGrowth).ShouldBe(Interval.Anything);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_growth_that_is_stated_over_known_sizes_gives_its_share_of_them()
    {
        // 28 mm over 265/65R17, 776 mm by the handbook; the smaller placard size 245/75R16 is 406 + 2 x 184 = 774 mm.
        const string Stated =
            """ "vehicle": { "tyres": [ "265/65R17", "245/75R16" ] }, "modification": { "tyre-diameter-growth": "28 mm" } """;
        Value(Stated, "tyre-diameter-growth-percent").Exact.ShouldBe(new Fraction(2800, 776));
        Value(Stated, "tyre-diameter-reduction-percent").Exact.ShouldBe(new Fraction(-2800, 776));
        Value(Stated, "tyre-diameter-reduction").Exact.ShouldBe((Fraction)(774 - 776 - 28));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("28 mm", true)]
    [InlineData("-28 mm", false)]
    public void A_growth_that_is_stated_without_sizes_still_tells_on_which_side_its_share_lies(string growth, bool grows)
    {
        var facts = JobBook.Facts($$""" "modification": { "tyre-diameter-growth": "{{growth}}" } """);
        var (above, below) = (new Interval(Fraction.Zero, null), new Interval(null, Fraction.Zero));
        facts.Measure("tyre-diameter-growth-percent", []).ShouldBe(grows ? above : below);
        facts.Measure("tyre-diameter-reduction-percent", []).ShouldBe(grows ? below : above);
        // The smallest placard size is no larger than the largest: 28 mm under the largest is at most 28 mm under the smallest.
        facts.Measure("tyre-diameter-reduction", []).ShouldBe(grows ? below : new Interval(null, 28));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("""{ "ratings": { "gvm": "3000 kg" } }""", """{ "ratings": { "gvm": "3500 kg" } }""", 3500, 500)]
    [InlineData("""{ "ratings": { "gvm": "3000 kg" } }""", "{ }", 3000, null)]
    [InlineData("{ }", """{ "ratings": { "gvm": "3500 kg" } }""", 3500, null)]
    public void A_re_rating_gives_the_new_rating_and_what_it_adds(string vehicle, string modification, int after, int? increase)
    {
        var facts = JobBook.Facts($$""" "vehicle": {{vehicle}}, "modification": {{modification}} """);
        facts.Measure("new-gvm", []).Exact.ShouldBe((Fraction)after);
        facts.Measure("gvm-increase", []).Exact.ShouldBe(increase is { } kg ? (Fraction)kg : null);
    }

    [Fact]
    [Trait("Basis", "common practice")]
    public void The_gvm_is_held_against_the_sum_of_the_axle_ratings_after_the_re_rating() // common practice, no source
    {
        Value(
            """ "vehicle": { "ratings": { "gvm": "3000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg" } }, "modification": {"""
                + """ "ratings": { "gvm": "3500 kg" } } """,
            "new-gvm-over-axle-ratings"
        )
            .Exact.ShouldBe((Fraction)300);
        Value(""" "vehicle": { "ratings": { "gvm": "3000 kg", "front-axle": "1450 kg" } } """, "new-gvm-over-axle-ratings")
            .ShouldBe(Interval.Anything);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_lift_follows_from_the_corners_and_the_axle_that_rose_more_governs()
    {
        var facts = JobBook.Facts(
            $$""" "measured": { "before": { "mass-state": "unladen", {{Corners}} }, "after": { "mass-state": "unladen", {{Raised}} } } """
        );
        facts.Measures["suspension-lift"].Value.Exact.ShouldBe((Fraction)50);
        facts.Measures["suspension-lift"].Derivation.ShouldContain("the rear axle governs");
        facts.Uncertainty("suspension-lift", []).ShouldBe((Fraction)5); // the usual figure of the reference
        facts.GuardFactor.ShouldBe(new Fraction(1, 2));

        // The front rose by 50 mm and the rear by 40: the front governs.
        var front = JobBook.Facts(
            """
            "measured": { "before": { "mass-state": "tare", "front-left": "480 mm", "front-right": "480 mm", "rear-left": "520 mm",
              "rear-right": "520 mm" },
            "after": { "mass-state": "tare", "front-left": "530 mm", "front-right": "530 mm", "rear-left": "560 mm",
              "rear-right": "560 mm" }, "uncertainty": { "suspension-lift": "3 mm" } }
            """
        );
        front.Measures["suspension-lift"].Derivation.ShouldContain("the front axle governs");
        front.Uncertainty("suspension-lift", []).ShouldBe((Fraction)3);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_lift_that_corners_or_springs_are_to_tell_is_open_as_long_as_they_do_not()
    {
        Value(""" "measured": { "after": { "mass-state": "unladen" } } """, "suspension-lift").ShouldBe(Interval.Anything);
        // The rear springs stay.
        Value(""" "modification": { "springs": { "front": { } } } """, "suspension-lift").ShouldBe(new Interval(0, null));
        JobBook.Facts(""" "modification": { "suspension-lift": "40 mm" } """).Uncertainty("suspension-lift", []).ShouldBe(Fraction.Zero);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_body_lift_is_taken_out_of_what_the_corners_rose() =>
        Value(
            $$""" "modification": { "body-lift": "20 mm" }, "measured": { "before": { "mass-state": "unladen", {{Corners}} },"""
                + $$""" "after": { "mass-state": "unladen", {{Raised}} } } """,
            "suspension-lift"
        )
            .Exact.ShouldBe((Fraction)30);

    [Fact]
    [Trait("Basis", "derived")]
    public void Springs_predict_the_lift_at_the_unladen_mass_of_the_axle_that_has_them()
    {
        // 50 mm where the front carries 1190 kg, which it does: tare, no tank to fill up, nothing added.
        const string Front = """
            "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm",
            "tanks": [ { "capacity": "10 L", "fuel": "diesel" } ] },
            "modification": { "springs": { "front": { "wheel-rate": "30 N/mm", "height-gained": "50 mm", "at-axle-load": "1190 kg" } } }
            """;
        Value(Front, "suspension-lift").Exact.ShouldBe((Fraction)50);
        Value(
            Front.Replace("\"front\": { \"wheel-rate\"", "\"rear\": { \"wheel-rate\"").Replace("1190 kg\" } } }", "1050 kg\" } } }"),
            "suspension-lift"
        )
            .Exact.ShouldBe((Fraction)50);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_trailer_weighs_what_its_axles_and_its_ball_carry_and_the_combination_is_both()
    {
        const string Both = """
            "vehicle": { "tare": "2240 kg", "tare-axles": { "front": "1190 kg", "rear": "1050 kg" }, "wheelbase": "2800 mm",
            "tanks": [ { "capacity": "10 L", "fuel": "diesel" } ] },
            "trailer": { "axles": "2650 kg", "ball-load": "240 kg" }
            """;
        Value(Both, "trailer-mass").Exact.ShouldBe((Fraction)2890);
        Value(Both, "combination-mass").Exact.ShouldBe((Fraction)5130);
        // Without its ball load a trailer weighs at least what its axles carry, and a combination at least its trailer.
        Value(""" "trailer": { "axles": "2650 kg" } """, "trailer-mass").ShouldBe(new Interval(2650, null));
        Value(""" "trailer": { "axles": "2650 kg" } """, "combination-mass").ShouldBe(new Interval(2650, null));
        Value(""" "trailer": { "mass": "2890 kg" } """, "trailer-mass").Exact.ShouldBe((Fraction)2890);
        Value("", "combination-mass").ShouldBe(Interval.Of(0)); // no trailer
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("\"2026-11-24\"", "yes")]
    [InlineData("\"2026-11-25\"", "yes")] // on the day itself
    [InlineData("\"2026-11-26\"", "no")]
    [InlineData("\"not-yet\"", "no")]
    [InlineData("\"unknown\"", null)]
    public void Whether_a_vehicle_is_registered_is_told_by_its_first_day(string first, string? registered) =>
        JobBook
            .Facts($$""" "vehicle": { "first-registered": {{first}} } """)
            .Words.GetValueOrDefault(JobFacts.Registered)
            .ShouldBe(registered);

    [Fact]
    [Trait("Basis", "derived")]
    public void Between_the_days_that_may_count_it_is_open_whether_a_vehicle_was_registered()
    {
        var job = JobBook.Read(""" "vehicle": { "first-registered": "2026-11-25", "built": "2019" } """);
        JobFacts.Of(job, JobBook.Book.Vocabulary, [new(2026, 11, 1), new(2026, 12, 1)], DiameterBasis.Handbook).Words.ShouldBeEmpty();
        var facts = JobFacts.Of(job, JobBook.Book.Vocabulary, [new(2026, 12, 1)], DiameterBasis.Handbook);
        // The whole year.
        facts.Measure("built", []).ShouldBe(new Interval(new DateOnly(2019, 1, 1).DayNumber, new DateOnly(2019, 12, 31).DayNumber));
        facts.Measure("first-registered", []).Exact.ShouldBe((Fraction)new DateOnly(2026, 11, 25).DayNumber);
    }

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("265/70R17 115S", true)] // UN Regulation 54, Annex 4: 1215 kg, more than 112 = 1120 kg
    [InlineData("265/70R17 116S", true)]
    [InlineData("265/70R17 111S", false)] // 1090 kg: less than either
    public void A_tyre_keeps_the_load_rating_where_it_carries_as_much_as_the_placards_and_does_not_where_it_carries_less(
        string fitted,
        bool kept
    ) =>
        JobBook
            .Facts($$""" "vehicle": { "tyres": [ "265/65R17 112S" ] }, "modification": { "tyres": "{{fitted}}" } """)
            .Shown["tyre-load-rating-kept"]
            .ShouldBe(kept);

    [Fact]
    [Trait("Basis", "published")]
    public void Between_two_placard_sizes_or_without_an_index_it_stays_to_be_shown()
    {
        Shown("265/65R17 112S", "245/75R16 116S").ShouldBeFalse(); // 115 = 1215 kg lies between 1120 and 1250 kg
        Shown("265/65R17 112S", "245/75R16").ShouldBeFalse();
        Shown("265/65R17 112S", "245/75R16 113S").ShouldBeTrue();

        static bool Shown(params string[] placard) =>
            JobBook
                .Facts(
                    $$""" "vehicle": { "tyres": [ {{string.Join(", ", placard.Select(size => $"\"{size}\""))}} ] }, "modification":"""
                        + $$""" { "tyres": "265/70R17 115S" } """
                )
                .Shown.ContainsKey("tyre-load-rating-kept");
    }

    [Theory]
    [Trait("Basis", "common practice")] // no source: the trailer is held against the maker's rating and the towbar's, whichever is less
    [InlineData("3000 kg", "3000 kg", "2890 kg", true)]
    [InlineData("3000 kg", "3000 kg", "3000 kg", true)]
    [InlineData("2500 kg", "3000 kg", "2890 kg", false)]
    [InlineData("3000 kg", "2500 kg", "2890 kg", false)]
    [InlineData("3000 kg", null, "2890 kg", null)]
    [InlineData(null, "3000 kg", "2890 kg", null)]
    public void A_trailer_is_within_its_ratings_by_the_maker_and_by_the_towbar(string? maker, string? towbar, string trailer, bool? within)
    {
        var vehicle = string.Join(
            ", ",
            new[]
            {
                maker is null ? null : $$""" "ratings": { "braked-tow": "{{maker}}" } """,
                towbar is null ? null : $$""" "towbar": { "mass": "{{towbar}}" } """,
            }.OfType<string>()
        );
        var shown = JobBook.Facts($$""" "vehicle": { {{vehicle}} }, "trailer": { "braked": "yes", "mass": "{{trailer}}" } """).Shown;
        shown["trailer-braked"].ShouldBeTrue();
        (shown.TryGetValue("trailer-within-tow-ratings", out var met) ? met : (bool?)null).ShouldBe(within);
    }

    private static Interval Value(string more, string measure) => JobBook.Facts(more).Measure(measure, FactSet.PartsOf(null));
}
