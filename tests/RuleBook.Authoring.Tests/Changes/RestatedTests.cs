using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Walk;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// What follows from other measures put as what it follows from (derived: an increase is the rating asked for less the rating before, a
/// share the one measure over the other). By the handbooks a tyre of size 265/65R17 is 776 mm across: 432 mm and twice 172 mm.
/// </summary>
[Trait("Basis", "derived")]
public sealed class RestatedTests
{
    /// <summary>A rule that compares the height of a bumper with the wheelbase, so that its share is a measure.</summary>
    private static readonly Vocabulary Words = SmallBook
        .WithVersions(
            "- {from: 2012-01-01, sources: [{cite: law}], beyond: prohibited, tiers: [{pathway: no-certificate, within: "
                + "{front-bumper-height: {at-most: {share: 20 %, of: wheelbase}}}}]}"
        )
        .Vocabulary;

    [Theory]
    [InlineData("suspension-lift 50", "suspension-lift 50")]
    [InlineData("gvm-increase 0, suspension-lift 50", "suspension-lift 50")]
    [InlineData("gvm-increase 200", "gvm 3000, new-gvm 3200")]
    [InlineData("gvm-increase 200, gvm 2500", "gvm 2500, new-gvm 2700")]
    [InlineData("gvm-increase 200, new-gvm 3000", "gvm 2800, new-gvm 3000")]
    [InlineData("gvm-increase 200, gvm 2500, new-gvm 2700", "gvm 2500, new-gvm 2700")]
    [InlineData("gvm-increase 200, gvm 2500, new-gvm 2701", null)]
    [InlineData("gvm-increase 200, new-gvm 200", null)] // a rating of nothing
    [InlineData("gvm-increase 200, new-gvm 201", "gvm 1, new-gvm 201")]
    [InlineData("gvm-increase 200, gcm-increase -100", "gcm 3000, gvm 3000, new-gcm 2900, new-gvm 3200")]
    [InlineData("total-lift 60", null)]
    [InlineData("new-gvm-over-axle-ratings 60", null)]
    [InlineData("tyre-diameter-growth-percent 10", "tyre-diameter-growth 77.6, on a placard")]
    [InlineData("tyre-diameter-reduction-percent 10", "tyre-diameter-growth -77.6, on a placard")]
    [InlineData("tyre-diameter-growth-percent 10, tyre-diameter-growth 77.6", "tyre-diameter-growth 77.6, on a placard")]
    [InlineData("tyre-diameter-growth-percent 10, tyre-diameter-growth 77", null)]
    [InlineData("front-bumper-height-per-wheelbase 20, wheelbase 3000", "front-bumper-height 600, wheelbase 3000")]
    [InlineData("front-bumper-height-per-wheelbase 20, front-bumper-height 500", "front-bumper-height 500, wheelbase 2500")]
    [InlineData("front-bumper-height-per-wheelbase 20", "front-bumper-height 320, wheelbase 1600")] // the least that is plausible
    [InlineData("front-bumper-height-per-wheelbase 20, front-bumper-height 500, wheelbase 2500", "front-bumper-height 500, wheelbase 2500")]
    [InlineData("front-bumper-height-per-wheelbase 20, front-bumper-height 501, wheelbase 2500", null)]
    [InlineData("front-bumper-height-per-wheelbase 20, wheelbase 0", null)]
    [InlineData("front-bumper-height-per-wheelbase 0, front-bumper-height 0", "front-bumper-height 0, wheelbase 1600")]
    public void A_job_states_what_the_measures_of_a_witness_follow_from(string measures, string? told)
    {
        var witness = new Witness(
            "au-qld",
            new DateOnly(2020, 1, 1),
            ImmutableDictionary<string, string>.Empty,
            [
                .. measures
                    .Split(", ")
                    .Select(each => each.Split(' '))
                    .Select(each =>
                        KeyValuePair.Create(Words.Measures[each[0]], Fraction.FromString(each[1], CultureInfo.InvariantCulture))
                    ),
            ],
            []
        );

        (Restated.Of(witness, Words) is { } restated ? Told(restated) : null).ShouldBe(told);
    }

    private static string Told(Restated restated) =>
        string.Join(
            ", ",
            restated
                .Witness.Measures.Select(pair => $"{pair.Key.Name} {pair.Value.ToDecimal().ToString("0.##", CultureInfo.InvariantCulture)}")
                .Order(StringComparer.Ordinal)
        ) + (restated.Tyres ? ", on a placard" : "");
}
