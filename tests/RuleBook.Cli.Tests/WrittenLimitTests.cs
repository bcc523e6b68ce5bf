using System.Text.Json;

namespace RuleBook.Cli.Tests;

/// <summary>Limits are told in the words of the statute: inches where it has inches.</summary>
public sealed class WrittenLimitTests
{
    /// <summary>
    /// California Vehicle Code, 24008.5(b)(1): passenger vehicles, 23 inches; (b)(2): all others, up to 4500 lb, frame at most 27 inches;
    /// 7501 to 10000 lb, at most 31 inches.
    /// </summary>
    [Fact]
    public async Task The_limits_of_California_stand_in_inches_and_pounds()
    {
        var said = (await Invocation.Of(["limits", "us-ca", "--topic", "ride-height"])).Words;
        said.ShouldContain("frame-height-passenger-vehicle where kind of vehicle: passenger-car or multipurpose-passenger-vehicle *");
        said.ShouldContain("frame-height-other-vehicle where kind of vehicle: truck or motor-home or other-vehicle and GVM under 10001 lb");
        said.ShouldContain("frame height at most 27 in (685.8 mm)");
        said.ShouldContain("frame height at most 31 in (787.4 mm)");
        said.ShouldContain("under 4501 lb (2041.619 kg)");
    }

    /// <summary>13 AAC 04.005(b): the heights of Alaska bind up to 10,000 lb; 4535.924 kg would be a limit rounded.</summary>
    [Fact]
    public async Task A_question_has_the_pounds_of_the_statute() =>
        (
            await Invocation.Assess("{ registered-in: us-ak, on: 2026-11-20, vehicle: { kind: truck }, measured: { frame-height: 29 in } }")
        ).Words.ShouldContain("What is the GVM? at most 10000 lb (4535.924 kg):");

    /// <summary>Utah is in the book with heights and with tyres (Utah Code 41-6a-1629 to 1631, us-ut/sources.yaml).</summary>
    [Fact]
    public async Task Where_one_topic_is_asked_for_no_other_is_told()
    {
        (await Invocation.Of(["limits", "us-ut"])).Words.ShouldContain("us-ut/tyres-and-wheels/");
        var said = (await Invocation.Of(["limits", "us-ut", "--topic", "ride-height"])).Words;
        said.ShouldContain("us-ut/ride-height/");
        said.ShouldNotContain("us-ut/tyres-and-wheels/");
    }

    /// <summary>jurisdictions/us-md/ride-height.yaml: the head has the day, the source and how it is measured.</summary>
    [Fact]
    public async Task What_a_rule_leaves_to_the_head_of_its_file_is_told_with_its_limits()
    {
        var said = (await Invocation.Of(["limits", "us-md", "--topic", "ride-height"])).Words;
        var car = said[said.IndexOf("bumper-height-car", StringComparison.Ordinal)..];
        car[..car.IndexOf("bumper-height-light-truck", StringComparison.Ordinal)]
            .ShouldContain("from the head of the file: from, sources, measured");
    }

    [Fact]
    public async Task A_history_tells_the_positions_on_the_day_asked_for() =>
        (await Invocation.Of(["timeline", "ride-height", "--on", "2018-10-01"])).Words.ShouldContain("as on 1 October 2018");

    /// <summary>North Carolina General Statutes, 20-135.4: raised or lowered by at most six inches.</summary>
    [Fact]
    public async Task The_six_inches_of_North_Carolina_stand_in_inches() =>
        (await Invocation.Of(["limits", "us-nc", "--topic", "ride-height", "--on", "2021-06-01"])).Words.ShouldContain(
            "from -6 in (-152.4 mm) up to 6 in (152.4 mm)"
        );

    /// <summary>The same section of the code of California: 26.5 in is within 27 in, 27.5 in is not.</summary>
    [Theory]
    [InlineData("26.5 in", "frame height 26.5 in (673.1 mm), limit 27 in (685.8 mm): 0.5 in (12.7 mm) left", 0)]
    [InlineData("27.5 in", "frame height 27.5 in (698.5 mm), limit 27 in (685.8 mm): 0.5 in (12.7 mm) too much", 1)]
    public async Task An_assessment_tells_the_limit_as_the_statute_writes_it(string height, string says, int code)
    {
        var job = $$"""
            registered-in: us-ca
            on: 2026-11-25
            vehicle: { kind: truck, ratings: { gvm: 4400 lb } }
            measured: { frame-height: {{height}} }
            """;
        var text = await Invocation.Assess(job);
        text.Code.ShouldBe(code, text.Error);
        text.Words.ShouldContain(says);

        using var json = JsonDocument.Parse((await Invocation.Assess(job, "--format", "json")).Out);
        var limit = json
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .SelectMany(finding => finding.GetProperty("limits").EnumerateArray().Concat(finding.GetProperty("exceeded").EnumerateArray()))
            .First(check => check.GetProperty("measure").GetString() == "frame-height");
        limit.GetProperty("written").GetString().ShouldBe("27 in");
        limit.GetProperty("limit").GetDecimal().ShouldBe(685.8m);
        limit.GetProperty("unit").GetString().ShouldBe("mm");
    }
}
