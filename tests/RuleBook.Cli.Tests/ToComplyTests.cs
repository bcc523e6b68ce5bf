namespace RuleBook.Cli.Tests;

/// <summary>What the line <c>To comply</c> proposes, and what it says stays open.</summary>
public sealed class ToComplyTests
{
    /// <summary>A trailer of 3200 kg without brakes: whatever is mended of its masses, the rule on brakes stays open.</summary>
    [Fact]
    public async Task What_mends_a_load_does_not_settle_a_rule_of_use_that_is_open()
    {
        var said = (
            await Invocation.Assess(
                "{ registered-in: au-wa, on: 2026-11-20, vehicle: { category: MC, ratings: { gvm: 3100 kg, braked-tow: 3500 kg } }, "
                    + "trailer: { mass: 3200 kg, braked: no, ball-load: 200 kg, ratings: { atm: 3000 kg } } }"
            )
        ).Words;
        said.ShouldContain("NOT AS PLANNED: 200 kg over the trailer's ATM");
        said.ShouldContain("trailer of at most 3000 kg: nothing that was judged stands in the way; what is left open above stays so");
        said.ShouldNotContain("3000 kg: allowed without a certificate");
    }

    /// <summary>A smaller tyre without a load index would leave open what a tyre of too low an index fails.</summary>
    [Fact]
    public async Task A_remedy_by_another_tyre_keeps_the_load_index_of_the_placard()
    {
        const string job = """
            registered-in: au-nsw
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, tyres: [265/65R17 112S] }
            modification: { tyres: 265/65R17 108S }
            """;
        (await Invocation.Assess(job)).Words.ShouldContain("tyres 245/65R17 112S: no certificate");
    }

    /// <summary>
    /// The tyre fitted (S, 180 km/h) is slower than the placard's (T, 190 km/h: ISO 4223-1); another one that is as fast leaves nothing
    /// unjudged, a GVM that is mended beside it does.
    /// </summary>
    [Theory]
    [InlineData(
        "suspension-lift: 50 mm, tyres: 285/65R18 125/122S, ratings: { gvm: 3500 kg }",
        "re-rate the GVM to 3200 kg: still undecided, change in tyre speed rating (-10 km/h) unjudged, "
            + "or tyres 275/65R18 110T and re-rate the GVM to 3200 kg: from allowed with a certificate"
    )]
    [InlineData(
        "tyres: 265/60R18 110S, suspension-lift: 55 mm",
        "suspension lift 50 mm: no certificate; still not judged: change in tyre speed rating (-10 km/h)"
    )]
    public async Task What_a_remedy_leaves_unjudged_is_told_and_nothing_else(string modification, string remedies)
    {
        var job = $$"""
            registered-in: au-vic
            on: 2026-11-28
            vehicle:
              category: NA
              four-wheel-drive: yes
              stability-control: yes
              built: 2022-03
              tyres: [265/60R18 110T]
              ratings: { gvm: 3050 kg, front-axle: 1450 kg, rear-axle: 1750 kg }
            modification: { {{modification}} }
            """;
        var words = (await Invocation.Assess(job)).Words;
        words.ShouldContain("no rule in the book speaks of it: change in tyre speed rating (-10 km/h)");
        words.ShouldContain(remedies);
    }

    /// <summary>
    /// 2200 kg with 10 L of fuel, 70 L more of diesel (0.835 kg/L by the book's table) and 180 kg of accessories are over 2300 kg: what
    /// mends that is told whether or not it is known that all wheels are driven.
    /// </summary>
    [Theory]
    [InlineData("four-wheel-drive: unknown", "leave off drawers and bar (180 kg): still undecided")]
    [InlineData("four-wheel-drive: yes", "leave off drawers and bar (180 kg): no certificate")]
    public async Task What_makes_a_vehicle_light_enough_is_told_though_the_verdict_stays_open(string drive, string told)
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle:
              category: MC
              {{drive}}
              tare: 2200 kg
              wheelbase: 2850 mm
              ratings: { gvm: 2300 kg }
              tanks: [ { capacity: 80 L, fuel: diesel } ]
            modification:
              suspension-lift: 45 mm
              accessories: [ { name: bar, mass: 60 kg }, { name: drawers, mass: 120 kg } ]
            """;
        (await Invocation.Assess(job)).Words.ShouldContain(told);
    }

    /// <summary>
    /// Springs that carry 1500 kg at 60 mm stand too high under the empty vehicle; load over the axle brings them down, and an axle that is
    /// already 299 kg over its rating further over it.
    /// </summary>
    [Fact]
    public async Task A_constant_load_is_no_remedy_for_a_vehicle_that_it_overloads_further()
    {
        const string job = """
            registered-in: au-qld
            on: 2026-11-20
            vehicle:
              category: MC
              four-wheel-drive: yes
              tare: 2300 kg
              tare-axles: { front: 1200 kg, rear: 1100 kg }
              wheelbase: 2800 mm
              ball-behind-rear-axle: 1200 mm
              ratings: { gvm: 2900 kg, gcm: 5900 kg, front-axle: 1400 kg, rear-axle: 1600 kg, braked-tow: 3500 kg, ball: 350 kg }
              tanks: [ { capacity: 80 L, fuel: diesel, behind-front-axle: 1900 mm } ]
            modification:
              springs:
                front: { wheel-rate: 45 N/mm, height-gained: 40 mm, at-axle-load: 1200 kg }
                rear: { wheel-rate: 60 N/mm, height-gained: 60 mm, at-axle-load: 1500 kg }
            load:
              occupants: [ { name: driver, mass: 90 kg, behind-front-axle: 1300 mm } ]
              goods: [ { name: tools, mass: 300 kg, behind-front-axle: 2700 mm } ]
            trailer: { mass: 3000 kg, braked: yes, ball-load: 300 kg, ratings: { atm: 3000 kg, gtm: 2700 kg } }
            """;
        var said = (await Invocation.Assess(job)).Words;
        said.ShouldContain("over the rear axle rating when loaded (1899 of 1600 kg)");
        said.ShouldNotContain("of constant load");
    }
}
