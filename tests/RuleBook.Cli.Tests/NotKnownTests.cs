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
}
