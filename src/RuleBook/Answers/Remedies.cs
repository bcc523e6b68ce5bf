using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Answers;

/// <summary>
/// Looks for the smallest changes that mend a job: single ones first, then two together. Every one is put to the evaluator before it is
/// proposed.
/// </summary>
public static class Remedies
{
    private const int MostTried = 250;

    /// <summary>Where so many facts are open, each answer takes long and a question comes before a remedy.</summary>
    private const int ManyOpen = 4;

    private const int FewTried = 30;

    private const int MostOfAGoal = 3;

    /// <summary>The remedies, goal by goal, the easiest to reach first; none where nothing has to be mended or nothing mends it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="elsewhere">Id or alias of another jurisdiction; null for the state of registration.</param>
    /// <param name="now">The answer to the job as it is.</param>
    /// <exception cref="ArgumentException">The book has no such jurisdiction.</exception>
    public static ImmutableArray<Remedy> Find(Book book, Job job, string? elsewhere, Assessment now)
    {
        if (job.Written is null || now.Headline is Headline.NothingToJudge)
            return [];
        RemedyGoal[] goals = [.. Goals(now)];
        if (goals.Length == 0)
            return [];
        var tried = new Tried(book, elsewhere, now, now.Undecided.Length < ManyOpen ? MostTried : FewTried);
        var place =
            book.Jurisdiction(elsewhere ?? job.RegisteredIn)
            ?? throw new ArgumentException($"the book has no jurisdiction '{elsewhere ?? job.RegisteredIn}'", nameof(elsewhere));
        RemedyChange[] single = [.. new Levers(book, job, place, now).All()];
        var found = goals.ToDictionary(goal => goal, _ => new List<Remedy>());
        foreach (
            var change in single.Where(change => goals.Any(goal => !found[goal].Exists(remedy => remedy.Changes[0].Lever == change.Lever)))
        )
            Keep(found, [change], goals, now, tried.Answer(job.Written, change));
        foreach (var first in single.Where(_ => found.Values.Any(list => list.Count == 0)))
        {
            if (tried.Full || tried.Job(job.Written, first) is not { } changed)
                continue;
            foreach (var second in new Levers(book, changed.Job, place, changed.Answer).All().Where(second => Follows(first, second)))
                Keep(
                    found,
                    [first, second],
                    [.. goals.Where(goal => found[goal].TrueForAll(remedy => remedy.Changes.Length == 2))],
                    now,
                    tried.Answer(changed.Job.Written!, second)
                );
        }

        return
        [
            .. goals
                .SelectMany(goal => found[goal].Take(MostOfAGoal))
                .DistinctBy(remedy =>
                    (
                        remedy.Goal.Within is null,
                        string.Join('|', remedy.Changes.Select(change => $"{change.Path}={change.To}{string.Join(',', change.Names)}"))
                    )
                )
                .Select(remedy => Whole(remedy, now)),
        ];
    }

    private static IEnumerable<RemedyGoal> Goals(Assessment now)
    {
        if (RemedyGoal.Mendable(now).Any())
            yield return RemedyGoal.NoBlocker;
        if (now.JudgesNothing)
            yield break;
        foreach (var pathway in Enum.GetValues<Pathway>().Where(pathway => pathway < now.Between.Worst))
            yield return new RemedyGoal(pathway);
    }

    /// <summary>Two changes of one lever are one change, but for loads on two axles.</summary>
    private static bool Follows(RemedyChange first, RemedyChange second) =>
        second.Lever != first.Lever
        || (first.Lever == RemedyLever.ConstantLoad && string.CompareOrdinal(second.Names[0], first.Names[0]) > 0);

    /// <summary>Of the same levers the least change that reaches a goal, and does not make worse what stands in the way.</summary>
    private static void Keep(
        Dictionary<RemedyGoal, List<Remedy>> found,
        ImmutableArray<RemedyChange> changes,
        IEnumerable<RemedyGoal> goals,
        Assessment now,
        Assessment? answer
    )
    {
        if (answer is null || answer.Blockers.Any(then => now.Blockers.Any(blocker => blocker.Id == then.Id && blocker.Over < then.Over)))
            return;
        changes = [.. changes.OrderBy(change => change.Lever)];
        foreach (var goal in goals.Where(goal => goal.IsReachedBy(answer)))
        {
            var same = found[goal]
                .FindIndex(remedy => remedy.Changes.Select(change => change.Lever).SequenceEqual(changes.Select(change => change.Lever)));
            if (same < 0)
                found[goal].Add(new Remedy(goal, changes, answer, [], []));
            else if (Cost(changes) < Cost(found[goal][same].Changes))
                found[goal][same] = new Remedy(goal, changes, answer, [], []);
        }
    }

    private static Fraction Cost(ImmutableArray<RemedyChange> changes) =>
        changes.Aggregate(Fraction.Zero, (sum, change) => sum + (change.Cost ?? Fraction.Zero));

    private static Remedy Whole(Remedy remedy, Assessment now)
    {
        var known = now.Blockers.Select(blocker => blocker.Id).ToHashSet();
        return remedy with
        {
            Breaks = [.. remedy.After.Blockers.Where(blocker => !known.Contains(blocker.Id))],
            ToShow = [.. Conditions(remedy.After).Except(Conditions(now))],
        };
    }

    private static IEnumerable<string> Conditions(Assessment answer) =>
        answer
            .Findings.SelectMany(finding => finding.Conditions)
            .Where(condition => condition.State == Units.Truth.Unknown)
            .Select(condition => condition.Condition.Title);

    /// <summary>Changed jobs put to the evaluator, no more of them than an answer may take.</summary>
    private sealed class Tried(Book book, string? elsewhere, Assessment now, int most)
    {
        private int count;

        public bool Full => count >= most;

        public Assessment? Answer(Mapping written, RemedyChange change) => Job(written, change)?.Answer;

        /// <summary>Null where the job would contradict itself, or enough were tried.</summary>
        public (Job Job, Assessment Answer)? Job(Mapping written, RemedyChange change)
        {
            if (count++ >= most)
                return null;
            try
            {
                var job = JobReader.Read(change.Apply(written), book);
                return (job, Assessor.Assess(book, job, elsewhere ?? now.Jurisdiction));
            }
            catch (InputException)
            {
                return null;
            }
        }
    }
}
