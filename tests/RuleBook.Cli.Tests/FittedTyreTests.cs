namespace RuleBook.Cli.Tests;

/// <summary>The tyre fitted against the placard and the speedometer: judged, or said not to be.</summary>
public sealed class FittedTyreTests
{
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

    /// <summary>A diameter says nothing of the width, the load and the speed: common practice of the trade.</summary>
    [Theory]
    [InlineData("modification: { tyre-diameter-growth: 30 mm }")]
    [InlineData("modification: { tyre-diameter-growth: -10 mm }")]
    [InlineData("modification: { tyre-diameter-reduction: 10 mm }")]
    [InlineData("modification: { tyre-diameter-reduction: unknown }")]
    [InlineData("modification: { tyres: unknown }")]
    [InlineData("modification: {}\nmeasured: { tyre-diameter: 790 mm }")]
    [InlineData("modification: { tyre-diameter-growth: 0 mm }", false)]
    [InlineData("modification: { suspension-lift: 20 mm }", false)]
    public async Task Of_tyres_known_by_their_diameter_alone_width_load_and_speed_are_said_not_to_be_judged(string change, bool said = true)
    {
        var job =
            "registered-in: au-qld\non: 2026-11-20\nvehicle: { category: MC, four-wheel-drive: yes, tyres: [265/65R17 112S] "
            + $"}}\n{change}\n";
        const string Words = "Width, load and speed of the tyres fitted not judged: their size is not stated.";
        (await Invocation.Assess(job)).Words.Contains(Words, StringComparison.Ordinal).ShouldBe(said);
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
}
