using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Changes;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// What each version of a rule brings, by the smallest job that is answered otherwise on its eve and from its day on (derived from
/// invented limits).
/// </summary>
[Trait("Basis", "derived")]
public sealed class LawChangesTests
{
    private const string Sources = "sources: [{cite: law}]";

    /// <summary>The smallest change is a tenth of a millimetre, down or up; of a day known to its month the last is asked.</summary>
    [Fact]
    public void A_version_is_told_with_the_smallest_job_that_shows_it_on_both_days() =>
        LawChanges
            .Of(
                SmallBook.WithVersions(
                    $$"""
                    - {from: 2012-01-01, {{Sources}}, {{Free(50)}}}
                    - {from: 2018-07, {{Sources}}, {{Free(75)}}}
                    - {from: 2019-02-01, {{Sources}}, {{Free(75)}}, note: The same.}
                    - {from: 2020-01-01, {{Sources}}, not-established: { ask: Somebody } }
                    - {announced: 2030-01-01, {{Sources}}, {{Free(10)}}}
                    """
                )
            )
            .Select(change =>
                $"{change.Rule} from {change.From}: {change.After.Says}, {Wording.Of(change.Was)} on {Day(change.Before)} -> "
                + $"{Wording.Of(change.Is)} on {Day(change.After)}"
            )
            .ShouldBe([
                "au-qld/ride-height/raise from 2012-01-01: suspension lift -0.1 mm, no-certificate to prohibited on 2011-12-31 -> "
                    + "no-certificate on 2012-01-01",
                "au-qld/ride-height/raise from 2018-07: suspension lift 50.1 mm, prohibited on 2018-06-30 -> no-certificate on 2018-07-31",
                "au-qld/ride-height/raise from 2020-01-01: suspension lift -0.1 mm, no-certificate on 2019-12-31 -> no-certificate to "
                    + "prohibited on 2020-01-01",
            ]);

    /// <summary>The nation registers nobody; a rule of use gives no verdict.</summary>
    [Fact]
    public void Where_nobody_registers_and_of_a_rule_of_use_nothing_is_told() =>
        LawChanges.Of(InventedBook.Book).Select(change => change.Rule).ShouldBe(["xa-n/ride-height/raise"]);

    private static string Free(int mm) => $"tiers: [{{pathway: no-certificate, within: {{suspension-lift: {mm} mm}}}}], beyond: prohibited";

    private static string Day(ShownJob job) => job.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
