using System.Text.Json;

namespace RuleBook.Cli.Tests;

/// <summary>What <c>margin</c> and the mass budget of <c>assess</c> show a customer.</summary>
public sealed class MarginCommandTests
{
    [Fact]
    public async Task Margin_names_the_lift_left_the_payload_and_the_sizes_that_fit()
    {
        var answer = await Margin("wagon-touring.yaml");
        answer.Code.ShouldBe(0, answer.Error);
        // Queensland, vehicle standards notifications, LS9 and LS10: 50 mm of suspension without, 75 mm with a certificate.
        answer.Words.ShouldContain("allowed without a certificate: up, at most 50 mm");
        answer.Words.ShouldContain("allowed with a certificate: up, at most 75 mm");
        answer.Words.ShouldContain("kg too much"); // common practice: the GVM of a touring wagon is used up
        answer.Words.ShouldContain("265/70R17 28 mm"); // tyre standards' rule: 804 - 776 mm
    }

    [Fact]
    public async Task Margin_in_JSON_has_the_same_sizes_with_growth_load_and_speedometer()
    {
        using var json = JsonDocument.Parse((await Margin("wagon-touring.yaml", "--format", "json")).Out);
        var sizes = json.RootElement.GetProperty("sizes").EnumerateArray().ToArray();
        sizes.Length.ShouldBeGreaterThan(5);
        var fitted = sizes.Single(size => size.GetProperty("size").GetString() == "265/70R17");
        fitted.GetProperty("growth").GetProperty("value").GetDecimal().ShouldBe(28m);
        fitted.GetProperty("loads").GetArrayLength().ShouldBe(2);
        fitted.GetProperty("speedometer")[0].GetString().ShouldBe("within");
        json.RootElement.GetProperty("size-sources").GetArrayLength().ShouldBeGreaterThan(0);
    }

    [Fact]
    public async Task Margin_fits_a_phone_of_eighty_columns() =>
        (await Margin("wagon-touring.yaml")).Out.Split('\n').ShouldAllBe(line => line.Length <= 80);

    [Fact]
    public async Task An_overloaded_vehicle_is_told_loudly_and_the_pathway_stays()
    {
        var answer = await Assess("wagon-touring.yaml");
        answer.Code.ShouldBe(4);
        answer.Words.ShouldStartWith(
            "NOT AS PLANNED: 237 kg over GVM when loaded (3737 of 3500 kg); 22 kg over before anybody " + "gets in"
        ); // sum of the job's masses
        answer.Words.ShouldContain("The modification itself: allowed without a certificate");
    }

    [Fact]
    public async Task Springs_before_the_work_come_with_the_mass_that_is_still_needed() =>
        (await Assess("springs-before-work.yaml", "--full")).Words.ShouldContain("kg more of fixed mass over the rear axle");

    [Fact]
    public async Task A_weighed_combination_shows_the_ball_load_both_ways_and_a_lift_too_close_to_call()
    {
        var words = (await Assess("van-weighed.yaml", "--full")).Words;
        words.ShouldContain("240 kg leave the trailer, 240 kg come onto the vehicle"); // trade weighing service: 2890 - 2650 kg
        words.ShouldContain("Too close to call");
        words.ShouldNotContain("OVERLOADED"); // within the re-rated GVM
        words.ShouldContain("unless re-rated");
    }

    private static Task<Invocation> Margin(string example, params string[] options) =>
        Invocation.Of(["margin", Path.Combine(Invocation.Root, "examples", example), .. options]);

    private static Task<Invocation> Assess(string example, params string[] options) =>
        Invocation.Of(["assess", Path.Combine(Invocation.Root, "examples", example), .. options]);
}
