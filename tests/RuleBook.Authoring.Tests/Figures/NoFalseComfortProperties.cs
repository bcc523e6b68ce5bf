using System.Globalization;
using CsCheck;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>
/// Whatever a job states is judged, or the answer says in its first lines that it was not; what is not known is never counted as nothing.
/// Basis: the project's own promise, no law. RULEBOOK_RANDOM_JOBS sets how many jobs are tried; a failure prints its seed.
/// </summary>
public sealed class NoFalseComfortProperties
{
    private static readonly long Tries = long.TryParse(
        Environment.GetEnvironmentVariable("RULEBOOK_RANDOM_JOBS"),
        CultureInfo.InvariantCulture,
        out var tries
    )
        ? tries
        : 100;

    [Fact]
    public void Each_stated_change_is_met_by_a_rule_or_told_as_not_judged() =>
        Check(job =>
        {
            var answer = Assess(job);
            foreach (var path in job.Modifications)
                (
                    answer.NotJudged.Any(each => each.Fact == path)
                    || IsUnchanged(job, path)
                    || answer.Findings.Any(finding => Speaks(finding.Version, Measures(path)) || LimitsTheResult(finding.Version, path))
                    || !answer.Gaps.IsEmpty
                ).ShouldBeTrue($"{path} in\n{job}");
        });

    [Fact]
    public void Removing_a_fact_of_the_vehicle_never_turns_a_blocker_or_a_prohibition_into_a_plain_permission() =>
        Check(job =>
        {
            if (Assess(job).Headline is not (Headline.Blocked or Headline.Prohibited))
                return;
            foreach (var path in job.Facts.Keys.Where(path => path.StartsWith("vehicle.", StringComparison.Ordinal)))
            {
                var without = Assess(job.Without(path));
                (Permits(without) && without.LoadsNotJudged.IsEmpty && without.OfUseOpen.IsEmpty).ShouldBeFalse($"without {path}:\n{job}");
            }
        });

    [Fact]
    public void Adding_mass_midway_between_the_axles_never_removes_a_blocker() =>
        Check(job =>
        {
            if (job.Accessories.IsEmpty)
                return;
            var before = Assess(job).Blockers.Select(blocker => blocker.Id);
            var after = Assess(job with { Accessories = job.Accessories.Add(50) }).Blockers.Select(blocker => blocker.Id);
            before.Except(after).ShouldBeEmpty(job.ToString());
        });

    [Fact]
    public void No_first_line_permits_while_a_blocker_stands() =>
        Check(job =>
        {
            var answer = Assess(job);
            if (answer.Blockers.IsEmpty)
                return;
            FirstLines.Of(answer).First().ShouldNotStartWith("Allowed", Case.Sensitive, job.ToString());
            Permits(answer).ShouldBeFalse(job.ToString());
        });

    /// <summary>A job that the reader refuses has no answer; most have one.</summary>
    private static void Check(Action<RandomJob> holds)
    {
        var refused = 0L;
        RandomJob.Jobs.Sample(
            job =>
            {
                try
                {
                    holds(job);
                }
                catch (InputException)
                {
                    refused++;
                }
            },
            iter: Tries,
            threads: 1
        );
        refused.ShouldBeLessThan(Tries / 2);
    }

    private static Assessment Assess(RandomJob job) => RealBook.Assess(job.ToString());

    private static bool Permits(Assessment answer) =>
        answer.Headline is Headline.NoCertificate or Headline.Certificate or Headline.Approval;

    /// <summary>A rating asked for that is the one stated changes nothing.</summary>
    private static bool IsUnchanged(RandomJob job, string path) =>
        job.Facts.GetValueOrDefault(path.Replace("modification.", "vehicle.", StringComparison.Ordinal)) == job.Facts[path];

    private static string[] Measures(string path) =>
        path["modification.".Length..] switch
        {
            "suspension-lift" => ["suspension-lift", "total-lift"],
            "body-lift" => ["body-lift", "total-lift"],
            "tyres" =>
            [
                "tyre-diameter-growth",
                "tyre-diameter-growth-percent",
                "tyre-lift",
                "total-lift",
                "tyre-diameter-reduction",
                "tyre-diameter-reduction-percent",
                "tyre-section-width-ratio",
            ],
            "tanks" => ["added-fuel-capacity"],
            "tyre-diameter-growth" => ["tyre-diameter-growth", "tyre-diameter-growth-percent", "tyre-lift", "total-lift"],
            var rating when rating.StartsWith("ratings.", StringComparison.Ordinal) => [$"new-{rating[8..]}", $"{rating[8..]}-increase"],
            var other => [other],
        };

    /// <summary>
    /// A height that is measured on the finished vehicle judges what raises it: California limits the frame, whatever was done.
    /// </summary>
    private static bool LimitsTheResult(ResolvedVersion version, string path) =>
        version.Content is Stated stated
        && !path.StartsWith("modification.ratings.", StringComparison.Ordinal)
        && stated
            .Tiers.SelectMany(tier => tier.Limits)
            .Any(limit => TestBook.Book.Vocabulary.Measures[limit.Measure].Job.StartsWith("measured.", StringComparison.Ordinal));

    private static bool Speaks(ResolvedVersion version, string[] measures) =>
        version.Rule.For.Tests.Any(test => measures.Contains(test.Fact))
        || version.Content is not Stated stated
        || stated.Tiers.Any(tier =>
            tier.Limits.Any(limit => measures.Contains(limit.Measure)) || tier.When.Tests.Any(test => measures.Contains(test.Fact))
        );
}
