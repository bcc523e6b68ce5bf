namespace RuleBook.Cli.Tests;

/// <summary>
/// What a job does not know never counts as nothing. Queensland's limits are those of its announcement of October 2018
/// (au-qld/sources.yaml): 50 mm by the suspension and 75 mm in all; a tyre that has grown by 56 mm is past 25 mm.
/// </summary>
public sealed class NotKnownTests
{
    private const string Wagon =
        "registered-in: au-qld, on: 2026-11-20, vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes, tyres: "
        + "[265/65R17 112S] }";

    [Fact]
    public async Task Tyres_of_a_size_not_known_leave_open_what_is_free_without_them()
    {
        (await Invocation.Assess($"{{ {Wagon}, modification: {{ suspension-lift: 40 mm }} }}")).Words.ShouldStartWith(
            "Allowed without a certificate"
        );
        var open = await Invocation.Assess($"{{ {Wagon}, modification: {{ suspension-lift: 40 mm, tyres: unknown }} }}");
        open.Code.ShouldBe(3, open.Error);
        open.Words.ShouldStartWith("Undecided");
        open.Words.ShouldContain("size of the tyres fitted not known");
    }

    [Fact]
    public async Task A_placard_that_nobody_read_leaves_the_growth_of_the_tyres_open()
    {
        var open = await Invocation.Assess(
            "{ registered-in: au-qld, on: 2026-11-20, vehicle: { category: MC, four-wheel-drive: yes, tyres: unknown }, "
                + "modification: { tyres: 285/75R17 121S } }"
        );
        open.Code.ShouldBe(3, open.Error);
        open.Words.ShouldContain("Undecided");
    }

    /// <summary>IB-107B and the trade (au-wa/towing): without brakes 750 kg at most; with them as the maker rates.</summary>
    [Theory]
    [InlineData("unknown", "[ ] trailer braked")]
    [InlineData("yes", "[x] trailer braked")]
    public async Task Brakes_of_a_trailer_that_are_not_known_are_to_be_shown(string braked, string says)
    {
        var job = $$"""
            registered-in: au-wa
            on: 2026-11-20
            vehicle: { category: MC, ratings: { gvm: 3100 kg, braked-tow: 3500 kg } }
            trailer: { mass: 2000 kg, braked: {{braked}}, ball-load: 200 kg }
            """;
        (await Invocation.Assess(job, "--full")).Words.ShouldContain(says);
    }

    [Fact]
    public async Task What_a_job_says_that_it_does_not_know_stands_in_its_line() =>
        (await Invocation.Assess($"{{ {Wagon}, modification: {{ suspension-lift: unknown }} }}")).Words.ShouldContain(
            "MC, suspension lift not known"
        );

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

    /// <summary>A mass that is stated is not asked for, though the fuel that would make it whole is not.</summary>
    [Fact]
    public async Task A_tare_that_is_stated_is_not_told_as_missing()
    {
        var said = (
            await Invocation.Assess(
                "{ registered-in: au-qld, on: 2026-11-20, vehicle: { category: MC, tare: 2500 kg, ratings: { gvm: 3100 kg } }, "
                    + "trailer: { mass: 2000 kg, braked: yes, ball-load: 200 kg } }",
                "--full"
            )
        ).Words;
        said.ShouldContain("vehicle.tanks would give:");
        said.ShouldNotContain("vehicle.tare would give:");
    }

    /// <summary>
    /// ADR 18/03 (speedometer), ADR 43/04 (clearance) and the tyre speeds of the Australian vehicle standards (Western Australia, r 46) are
    /// told of a wagon of Queensland, and not of one of Alaska.
    /// </summary>
    [Theory]
    [InlineData("au-qld", "category: MC", true)]
    [InlineData("us-ak", "kind: truck", false)]
    public async Task A_design_rule_of_Australia_is_told_of_no_other_nation(string place, string kind, bool told)
    {
        var job = $$"""
            registered-in: {{place}}
            on: 2026-11-20
            vehicle: { {{kind}}, built: 2015, wheelbase: 2850 mm, tyres: [265/65R17 112S] }
            modification: { tyres: 265/70R17 121S }
            """;
        var said = (await Invocation.Assess(job, "--full")).Words;
        said.ShouldContain("at 100 km/h shown: true");
        foreach (var rule in (string[])["ADR 18/03:", "clearance midway between the axles", "speed symbol S (180 km/h): at least 140 km/h"])
            said.Contains(rule, StringComparison.Ordinal).ShouldBe(told, $"{rule} of {said}");
    }

    /// <summary>
    /// What was weighed with people and luggage aboard of which nothing is stated is told as weighed, not as the empty vehicle.
    /// </summary>
    [Fact]
    public async Task A_weighbridge_docket_of_a_loaded_vehicle_says_nothing_of_it_before_anybody_gets_in()
    {
        var said = (
            await Invocation.Assess(
                """
                registered-in: au-qld
                on: 2026-11-28
                vehicle: { category: MC, four-wheel-drive: yes, ratings: { gvm: 3000 kg, front-axle: 1450 kg, rear-axle: 1750 kg },
                    wheelbase: 2800 mm }
                modification: { suspension-lift: 40 mm }
                measured: { weighbridge: { mass-state: loaded, front-alone: 1430 kg, rear-alone: 1740 kg } }
                """,
                "--full"
            )
        ).Words;
        said.ShouldContain("170 kg over GVM as weighed (3170 of 3000 kg)"); // 1430 + 1740 - 3000
        said.ShouldNotContain("before anybody gets in");
        said.ShouldContain("load would give: what was aboard when it was weighed");
    }

    /// <summary>An answer names a condition by its title; written so under 'shown' it is recognised.</summary>
    [Fact]
    public async Task A_condition_that_is_written_by_its_title_is_told_by_its_name()
    {
        var refused = await Invocation.Assess($"{{ {Wagon}, shown: {{ two-thirds-of-the-suspension-travel-kept: yes }} }}");
        refused.Code.ShouldBe(2);
        refused.Error.ShouldContain("did you mean 'suspension-travel-kept-two-thirds'?");
    }

    /// <summary>
    /// Load indices 108 and 112 carry 1000 and 1120 kg, speed symbols L and S are for 120 and 180 km/h (tables of the tyre standards): a
    /// tyre of the placard's size that carries less, or is made for less speed, is a change, of which Western Australia's rules ask and
    /// Queensland's say nothing.
    /// </summary>
    [Theory]
    [InlineData("au-qld", "108S", "not judged, no rule in the book speaks of it: change in tyre load rating (-120 kg)")]
    [InlineData("au-wa", "108S", "condition not met: tyre load rating not below the placard")]
    [InlineData("au-qld", "112L", "not judged, no rule in the book speaks of it: change in tyre speed rating (-60 km/h)")]
    [InlineData("au-wa", "112L", "tyre speed rating for the kind of vehicle")]
    [InlineData("us-ca", "108S", "no rule in the book covers this vehicle on tyres and wheels")]
    [InlineData("au-qld", "112S", "Nothing to judge")]
    public async Task A_weaker_tyre_of_the_size_on_the_placard_is_judged_or_said_not_to_be(string place, string service, string told)
    {
        var job = $$"""
            registered-in: {{place}}
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, tyres: [265/65R17 112S] }
            modification: { tyres: 265/65R17 {{service}} }
            """;
        (await Invocation.Assess(job, "--full")).Words.ShouldContain(told);
    }

    /// <summary>A placard names each size with its own index; load index 109 carries 1030 kg, 112 carries 1120 kg.</summary>
    [Theory]
    [InlineData("265/65R17 109S", "not judged, no rule in the book speaks of it: change in tyre load rating (-90 kg)")]
    [InlineData("265/65R17 112S", "no change to the vehicle is stated")]
    public async Task Of_several_sizes_on_the_placard_the_tyre_of_the_same_size_says_what_it_has_to_carry(string fitted, string told)
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, tyres: [245/70R17 108S, 265/65R17 112S] }
            modification: { tyres: {{fitted}} }
            """;
        (await Invocation.Assess(job)).Words.ShouldContain(told);
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
    /// ADR 43/04 (as quoted): 100 mm of running clearance (6.6), and 33.33 mm for each metre between the axles midway (6.4.2).
    /// </summary>
    [Theory]
    [InlineData("ground-clearance: 80 mm", "Too little clearance: running 80 of at least 100 mm.")]
    [InlineData("ground-clearance: 99.5 mm", "running 99.5 of at least 100 mm")]
    [InlineData("ground-clearance: 100 mm", "ok running clearance: at least 100 mm")]
    [InlineData("clearance-midway: 60 mm", "vehicle.wheelbase would give: the least clearance midway between the axles")]
    [InlineData("clearance-midway: 60 mm", "Clearance midway between the axles not judged: the wheelbase is not stated.")]
    public async Task A_clearance_that_was_measured_is_held_against_the_design_rule_whatever_is_stated_of_tyres(
        string measured,
        string told
    )
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes }
            modification: { suspension-lift: -40 mm }
            measured: { {{measured}} }
            """;
        (await Invocation.Assess(job, "--full")).Words.ShouldContain(told);
    }

    /// <summary>ADR 43/04 is Australian: it is told of a vehicle as if registered there, and of no other.</summary>
    [Theory]
    [InlineData("au-qld", "au-nsw", true)]
    [InlineData("au-qld", "nz", false)]
    [InlineData("nz", "au-qld", true)]
    public async Task A_clearance_asked_of_another_place_goes_by_the_rules_of_that_place(string registered, string asked, bool told)
    {
        var job = $$"""
            registered-in: {{registered}}
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes }
            modification: { suspension-lift: -40 mm }
            measured: { ground-clearance: 80 mm }
            """;
        var answer = await Invocation.Assess(job, "--in", asked);
        answer.Words.Contains("Too little clearance: running 80 of at least 100 mm.", StringComparison.Ordinal).ShouldBe(told);
    }

    /// <summary>
    /// South Australia asks for no less than the lowest load rating on the placard, and for a speed that goes by the placard's (the
    /// authority's page as quoted in a forum, 14 May 2018): without index or symbol on either side nothing says that a tyre keeps it.
    /// </summary>
    [Theory]
    [InlineData("265/65R17 112S", "265/65R17", "load index and speed symbol")]
    [InlineData("265/65R17", "265/65R17 108S", "load index and speed symbol")]
    [InlineData("245/65R17 107S", "265/65R17 112", "speed symbol")]
    [InlineData("265/65R17 112S", "265/65R17 112S", null)]
    [InlineData("265/65R17", "265/65R17", null)]
    [InlineData("245/65R17 107S", "265/65R17 112S", null)]
    public async Task A_tyre_without_its_load_index_is_said_not_to_be_held_against_the_placard(string placard, string fitted, string? by)
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes, tyres: [{{placard}}] }
            modification: { tyres: {{fitted}} }
            """;
        var words = (await Invocation.Assess(job)).Words;
        if (by is null)
            words.ShouldNotContain("not held against the placard's");
        else
            words.ShouldContain($"Tyres not held against the placard's by {by}: not stated of each.");
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
        "suspension lift 50 mm: no certificate; change in tyre speed rating (-10 km/h) unjudged"
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
    /// Springs stand the lower the more they carry (Hooke's law): where the fuel at the rear is not known, neither is the lift, and what
    /// is asked for is told with what it is for.
    /// </summary>
    [Fact]
    public async Task What_is_asked_for_in_place_of_a_lift_is_told_with_the_lift_that_it_gives()
    {
        const string job = """
            registered-in: au-nsw
            on: 2026-11-20
            vehicle:
              category: MC
              four-wheel-drive: yes
              stability-control: yes
              built: 2020-05
              tare: 2200 kg
              tare-axles: { front: 1150 kg, rear: 1050 kg }
              wheelbase: 2850 mm
            modification: { springs: { rear: { wheel-rate: 40 N/mm, at-axle-load: 1300 kg, height-gained: 40 mm } } }
            """;
        (await Invocation.Assess(job)).Words.ShouldContain("What is the suspension lift (vehicle.tanks would tell)? under -50 mm");
        (await Invocation.Assess(job, "--full")).Words.ShouldContain("? vehicle.tanks, for the suspension lift - under -50 mm:");
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
    /// ADR 18/03 (UN Regulation 39, 5.3): never less than the true speed. By the handbook 255/65R17 has 764 mm and 265/70R17 has 804: 100
    /// shown is 105.2 where it was exact, 97.9 where it was 93, 103.1 where it was 98.
    /// </summary>
    [Theory]
    [InlineData("", "Speedometer would read low if exact before (ADR 18/03): have it checked.")]
    [InlineData("speedometer: { indicated: 100 km/h, true: 93 km/h }", null)]
    [InlineData(
        "speedometer: { indicated: 100 km/h, true: 98 km/h }",
        "Speedometer reads low with these tyres (ADR 18/03): have it checked."
    )]
    public async Task A_speedometer_outside_its_rule_is_told_in_the_first_lines(string speedometer, string? told)
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle:
              category: NA
              four-wheel-drive: yes
              built: 2019-05
              tyres: [255/65R17 110T]
              {{speedometer}}
            modification: { tyres: 265/70R17 115T }
            """;
        var words = (await Invocation.Assess(job)).Words;
        if (told is null)
            words.ShouldNotContain("Speedometer");
        else
            words.ShouldContain(told);
    }

    /// <summary>
    /// Queensland asks that two thirds of the travel are kept: what loses more than a third fails, what loses less has to be shown.
    /// </summary>
    [Theory]
    [InlineData("33.4 %", "condition not met: two thirds of the suspension travel kept")]
    [InlineData("33.3 %", "[ ] two thirds of the suspension travel kept")]
    public async Task More_than_a_third_of_the_suspension_travel_lost_fails_the_condition(string lost, string told)
    {
        var job = $$"""
            registered-in: au-qld
            on: 2026-11-20
            vehicle: { category: MC, four-wheel-drive: yes }
            modification: { suspension-lift: 40 mm }
            measured: { suspension-travel-lost: {{lost}} }
            """;
        (await Invocation.Assess(job, "--full")).Words.ShouldContain(told);
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
