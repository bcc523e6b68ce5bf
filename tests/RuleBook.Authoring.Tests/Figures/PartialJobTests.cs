using RuleBook.Authoring.Tests.Books;
using RuleBook.Figures;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>A job that lacks a figure gets an answer for all that can be answered, and hears what the figure would add.</summary>
public sealed class PartialJobTests
{
    private static readonly string[] Vehicle =
    [
        "wheelbase: 2850 mm",
        "ball-behind-rear-axle: 1250 mm",
        "tare: 2700 kg",
        "tare-axles: { front: 1420 kg, rear: 1280 kg }",
        "ratings: { gvm: 3350 kg, gcm: 6850 kg, front-axle: 1650 kg, rear-axle: 2000 kg, braked-tow: 3500 kg }",
        "tanks: [ { capacity: 80 L, fuel: diesel, behind-front-axle: 2000 mm } ]",
        "tyres: 265/65R17 116S",
    ];

    [Fact]
    public void Without_the_wheelbase_the_total_is_known_and_the_axles_are_asked_for()
    {
        var masses = Without("wheelbase");
        masses.Unladen.TotalKg.ShouldNotBeNull();
        masses.Unladen.Axles.ShouldBeNull();
        Adds(masses, "vehicle.wheelbase").ShouldContain("between the axles");
        masses.Unladen.Left.ShouldHaveSingleItem().What.ShouldBe("vehicle against its GVM");
    }

    [Fact]
    public void Without_the_tare_the_trailer_is_still_held_against_its_limits()
    {
        var masses = Without("tare:", "tare-axles");
        masses.Unladen.TotalKg.ShouldBeNull();
        Adds(masses, "vehicle.tare").ShouldContain("the total");
        masses.Towing!.Planned!.Checks.Select(check => check.What).ShouldContain("trailer alone against the tow rating");
    }

    [Fact]
    public void Without_the_axles_at_tare_the_gvm_is_still_checked()
    {
        var masses = Without("tare-axles");
        masses.Loaded!.TotalKg.ShouldNotBeNull();
        Adds(masses, "vehicle.tare-axles").ShouldContain("what each axle carries");
    }

    [Fact]
    public void Without_the_ratings_each_of_them_is_named_with_what_it_would_add()
    {
        var masses = Without("ratings");
        foreach (var rating in (string[])["gvm", "gcm", "front-axle", "rear-axle", "braked-tow"])
            Adds(masses, $"vehicle.ratings.{rating}").ShouldContain("what is left");
        masses.Loaded!.TotalKg.ShouldNotBeNull();
    }

    [Fact]
    public void Without_load_indices_what_the_tyres_carry_is_asked_for() =>
        Adds(Without("tyres"), "vehicle.tyres").ShouldContain("against its tyres");

    [Fact]
    public void A_job_that_says_nothing_of_masses_gets_no_budget() =>
        RealBook.Assess("au-qld", "category: MC, four-wheel-drive: yes", "").Masses.ShouldBeNull();

    [Fact]
    public void Springs_without_their_rate_leave_the_lift_open_and_name_the_rate()
    {
        var answer = RealBook.Assess(
            "au-qld",
            "category: MC, four-wheel-drive: yes",
            "",
            "2026-11-20",
            "springs: { rear: { height-gained: 50 mm, at-axle-load: 1200 kg } }"
        );
        answer.Verdict.ShouldBeNull();
        answer.Heights!.Missing.ShouldContain(missing => missing.Fact == "modification.springs.rear.wheel-rate");
    }

    private static string Adds(MassAnswer masses, string fact) => masses.Missing.Single(missing => missing.Fact == fact).Adds;

    private static MassAnswer Without(params string[] keys) =>
        RealBook
            .Assess(
                $$"""
                registered-in: au-qld
                on: 2026-11-20
                vehicle: { category: MC, {{string.Join(
                    ", ",
                    Vehicle.Where(line => !keys.Any(key => line.StartsWith(key, StringComparison.Ordinal)))
                )}} }
                trailer: { mass: 2800 kg, ball-load: 240 kg, braked: yes, ratings: { atm: 3000 kg } }
                """
            )
            .Masses.ShouldNotBeNull();
}
