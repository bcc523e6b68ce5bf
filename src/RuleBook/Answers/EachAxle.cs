using System.Collections.Immutable;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Physics.Masses;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>
/// A limit on lift binds both axles. Where one figure cannot stand for both (one raised and one lowered, one not measured), each is judged
/// by itself and the more onerous answer holds.
/// </summary>
internal static class EachAxle
{
    /// <param name="job">The job.</param>
    /// <param name="assess">Judges a job whose lift is that of one axle.</param>
    public static Assessment Assess(Job job, Func<Job, Assessment> assess)
    {
        Axle[] axles = [.. Lifts.ToJudge(job)];
        if (axles.Length == 0)
        {
            var whole = assess(job);
            return job.Plan.TellsLift ? whole with { Undecided = Asking(job, null, whole.Undecided) } : whole;
        }

        var answers = axles
            .Select(axle => (axle, answer: assess(job with { Plan = job.Plan with { JudgedAxle = axle } })))
            .OrderByDescending(each => each.answer.Between.Worst)
            .ThenByDescending(each => each.answer.Between.Best)
            .ToArray();
        var both = answers.Select(each => each.answer.Between).Aggregate((one, other) => one.And(other));
        return answers[0].answer with
        {
            Between = both,
            Undecided = both.Decided
                ? []
                : [.. answers.SelectMany(each => Open(job, each.axle, each.answer, answers)).DistinctBy(effect => effect.Opening.Name)],
            Gaps = both.Decided ? [] : [.. answers.SelectMany(each => each.answer.Gaps).Distinct()],
            Heights = answers[0].answer.Heights! with
            {
                Suspension = Lifts.Of(job)!.Value,
                Derivation = Lifts.Of(job)!.Derivation,
                DecidingAxle = answers[0].answer.Between == answers[1].answer.Between ? null : answers[0].axle,
            },
        };
    }

    /// <summary>What would still change the answer once the other axle is counted.</summary>
    private static IEnumerable<Effect> Open(Job job, Axle axle, Assessment answer, IEnumerable<(Axle Axle, Assessment Answer)> all)
    {
        var others = all.Where(each => each.Axle != axle).Select(each => each.Answer.Between).Aggregate((one, other) => one.And(other));
        return Asking(job, axle, answer.Undecided)
            .Select(effect => effect with { Gives = [.. effect.Gives.Select(outcome => outcome.And(others))] })
            .Where(effect => effect.Gives.Distinct().Skip(1).Any());
    }

    /// <summary>A lift that was measured or predicted is asked for by what would make it known.</summary>
    private static ImmutableArray<Effect> Asking(Job job, Axle? axle, ImmutableArray<Effect> effects) =>
        [
            .. effects.Select(effect =>
                effect.Opening.Name == $"modification.{Lifts.Measure}"
                    ? effect with
                    {
                        Opening = effect.Opening with { Name = Lifts.Ask(job, axle) },
                    }
                    : effect
            ),
        ];
}
