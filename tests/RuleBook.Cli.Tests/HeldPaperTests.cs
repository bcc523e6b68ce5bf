using Newtonsoft.Json.Linq;
using NJsonSchema;
using RuleBook.Authoring.Schemas;

namespace RuleBook.Cli.Tests;

/// <summary>
/// What a paper counts for after a move. Victoria asks for a certificate of its own scheme (regulations 36 and 44(d) of the vehicles
/// regulations 2021, as the book reads them); a paper never makes the verdict easier (the project's own promise).
/// </summary>
public sealed class HeldPaperTests
{
    private const string Moved = """
        registered-in: au-vic
        on: 2026-11-20
        vehicle: { category: MC, four-wheel-drive: yes, stability-control: no }
        modification: { suspension-lift: 60 mm }
        held: [ { paper: certificate of modification, issued-in: au-qld, number: 4711-03, day: 2021-03, codes: [LS10] } ]
        """;

    [Fact]
    public async Task A_certificate_from_elsewhere_is_told_with_what_the_new_state_asks_and_changes_no_verdict()
    {
        var with = await Invocation.Assess(Moved, "--full");
        var without = await Invocation.Assess(Moved[..Moved.IndexOf("held", StringComparison.Ordinal)], "--full");
        with.Code.ShouldBe(without.Code);
        with.Out.Split('\n')[0].ShouldBe(without.Out.Split('\n')[0]);
        with.Words.ShouldContain("Held certificate of modification 4711-03 (Queensland, 2021-03): not taken over unseen");
        with.Words.ShouldContain("no paper from elsewhere makes it easier");
        with.Words.ShouldContain("what Victoria asks of a vehicle that comes from elsewhere: A VASS approval certificate may be required");
        with.Words.ShouldContain("codes that the rules name and no paper held has: LS7, LS8");
        with.Words.ShouldContain("allowed with a certificate (codes LS7, LS8)");
        with.Words.ShouldContain("then, in order:");
        without.Words.ShouldNotContain("Papers held");
    }

    [Fact]
    public async Task Where_nobody_has_established_what_a_paper_counts_for_the_authority_is_named() =>
        (
            await Invocation.Assess(
                Moved
                    .Replace("registered-in: au-vic", "registered-in: au-qld", StringComparison.Ordinal)
                    .Replace("issued-in: au-qld", "issued-in: au-sa", StringComparison.Ordinal)
            )
        ).Words.ShouldContain(
            "(South Australia, 2021-03): not established what it counts for; ask Queensland Department of Transport and Main Roads"
        );

    [Fact]
    public async Task A_paper_of_the_state_itself_speaks_for_its_day_only() =>
        (
            await Invocation.Assess(Moved.Replace("issued-in: au-qld", "issued-in: au-vic", StringComparison.Ordinal), "--full")
        ).Words.ShouldContain("issued in Victoria; it speaks for the vehicle as it was that day, and for nothing changed since.");

    [Fact]
    public async Task Papers_held_stand_in_the_answer_as_JSON_and_on_the_record()
    {
        var json = (await Invocation.Assess(Moved, "--format", "json")).Out;
        var schema = await JsonSchema.FromJsonAsync(SchemaCheck.Text("assessment"), TestContext.Current.CancellationToken);
        schema.Validate(json).ShouldBeEmpty();
        var held = JObject.Parse(json)["held"]!.ShouldHaveSingleItem();
        ((string)held["counts"]!).ShouldBe("as-the-scheme-tells");
        held["codes-lacking"]!.Select(code => (string)code!).ShouldBe(["LS7", "LS8"]);
        (await Invocation.Assess(Moved, "--format", "html")).Out.ShouldContain("<h2>Papers held</h2>");
    }

    [Theory]
    [InlineData("issued-in: au-qld", "issued-in: qld", "did you mean 'au-qld'?")]
    [InlineData("paper: certificate of modification, ", "", "the key 'paper' is missing")]
    [InlineData("day: 2021-03", "day: March", "'March'")]
    [InlineData("number: 4711-03", "numbr: 4711-03", "did you mean 'number'?")]
    public async Task A_paper_that_cannot_be_read_is_refused(string was, string becomes, string told)
    {
        var refused = await Invocation.Assess(Moved.Replace(was, becomes, StringComparison.Ordinal));
        refused.Code.ShouldBe(2);
        refused.Error.ShouldContain(told);
    }
}
