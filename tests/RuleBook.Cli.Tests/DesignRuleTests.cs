namespace RuleBook.Cli.Tests;

/// <summary>
/// The design rules of Australia: told, and held against what was measured, of a vehicle registered there and of no other.
/// </summary>
public sealed class DesignRuleTests
{
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
}
