using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Loads over a rating, and ratings asked for that nothing can certify.</summary>
internal static class LoadBlockers
{
    private const string Asked = "modification.ratings.";

    private static readonly Unit Kg = Unit.Base(Dimension.Mass);

    public static IEnumerable<Blocker> Of(Assessment assessment, Job job)
    {
        var ceiling = Ceiling(assessment, job);
        if (ceiling is not null)
            yield return ceiling;
        if (assessment.Masses is not { } masses)
            yield break;
        if (masses.Towing?.LiftsBallKg is { } lift)
            yield return new Blocker(BlockerKind.Unsafe, "ball-load", "ball load")
            {
                State = masses.Towing.WeighedCombination is null ? "planned" : "weighed",
                Value = -lift,
                Limit = Fraction.Zero,
                Unit = Kg,
                LimitFact = "trailer.ball-load",
                Why = "the trailer lifts the back of the vehicle: load it further forward",
            };
        foreach (var (state, check) in masses.Failing)
            yield return Over(BlockerKind.OverRating, state, check);
        foreach (var (state, check) in masses.FailingBeforeRerating.Where(each => Refused(assessment, ceiling, each.Check.Subject)))
            yield return Over(BlockerKind.RefusedRating, state, check);
    }

    /// <summary>Common practice, no source: a GVM is certified only up to what axles and tyres carry together.</summary>
    private static Blocker? Ceiling(Assessment assessment, Job job)
    {
        if (assessment.Masses?.Rerating is { Carries: false, AskedKg: { } wanted, Kg: { } most } carried)
            return new Blocker(BlockerKind.NotCertifiable, "gvm", "GVM asked for")
            {
                Value = wanted,
                Limit = most,
                Unit = Kg,
                LimitWhat = string.Join(" and ", carried.Binding),
                LimitFact = "vehicle.ratings",
            };

        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        return job.Plan.Rerated?.GvmKg is { } asked && ratings.FrontAxleKg + ratings.RearAxleKg is { } axles && asked > axles
            ? new Blocker(BlockerKind.NotCertifiable, "gvm", "GVM asked for")
            {
                Value = asked,
                Limit = axles,
                Unit = Kg,
                LimitWhat = "front axle and rear axle",
                LimitFact = "vehicle.ratings",
            }
            : null;
    }

    private static Blocker Over(BlockerKind kind, string state, LoadCheck check) =>
        new(kind, check.Subject, LoadSubjects.Noun(check.Subject))
        {
            State = state,
            Value = check.ValueKg,
            AtLeast = check.Known == Known.AtLeast,
            TooCloseWithin = check.TooClose ? check.GuardKg : null,
            Limit = check.LimitKg,
            Unit = Kg,
            LimitFact = check.LimitFact,
        };

    /// <summary>A rating does not rescue a load where a rule refuses it, nothing can certify it or nobody judged it.</summary>
    private static bool Refused(Assessment assessment, Blocker? ceiling, string rating) =>
        (ceiling is not null && ceiling.Subject == rating)
        || assessment.NotJudged.Any(each => each.Fact == Asked + rating)
        || assessment.Findings.Any(finding => finding.Outcome.Best == Pathway.Prohibited && Speaks(finding, rating));

    private static bool Speaks(Finding finding, string rating) =>
        finding.Version.Speaks($"new-{rating}") || finding.Version.Speaks($"{rating}-increase");
}
