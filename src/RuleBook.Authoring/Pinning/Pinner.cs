using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Walk;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>
/// Changes every number, date edge, word, condition, tier and exception of a book by the smallest step that matters, and demands that a case
/// fails. A change that changes no answer anywhere, shown by comparing the two books cell by cell, needs none.
/// </summary>
public sealed class Pinner
{
    private readonly Book book;
    private readonly Reach reach;
    private readonly ILookup<string, Case> cases;

    /// <summary>For a book and cases that all pass on it.</summary>
    public Pinner(Book book, IEnumerable<Case> cases)
    {
        this.book = book;
        this.cases = cases.ToLookup(one => one.Jurisdiction);
        reach = new Reach(book);
    }

    /// <summary>Tries every change of the rules chosen.</summary>
    /// <param name="chosen">Which rules to change.</param>
    /// <param name="progress">Told how many changes were tried, and of how many.</param>
    public PinReport Run(Func<Rule, bool> chosen, Action<int, int>? progress = null)
    {
        var mutations = Mutation.Of(book, chosen).ToArray();
        var done = 0;
        var tried = mutations.AsParallel().AsOrdered().Select(mutation =>
        {
            var result = Try(mutation);
            progress?.Invoke(Interlocked.Increment(ref done), mutations.Length);
            return (mutation, result);
        }).ToArray();
        var points = tried.GroupBy(pair => (pair.mutation.Mark, pair.mutation.What)).ToArray();
        var bearing = points.Where(point => point.Any(pair => pair.result.Noticed || pair.result.Unpinned is not null)).ToArray();
        return new PinReport(
            bearing.Length,
            bearing.Count(point => point.All(pair => pair.result.Unpinned is null)),
            mutations.Length,
            tried.Count(pair => !pair.result.Noticed && pair.result.Unpinned is null),
            [.. tried.Select(pair => pair.result.Unpinned).OfType<Unpinned>().OrderBy(unpinned => unpinned.Mark)]);
    }

    private (bool Noticed, Unpinned? Unpinned) Try(Mutation mutation)
    {
        var rules = reach.Of(mutation.Rule);
        string[] places = [.. rules.Select(rule => rule.Split('/')[0]).Distinct()];
        var topic = mutation.Rule.Split('/')[1];
        var noticed = places.SelectMany(place => cases[place])
            .OrderBy(one => one.Topic != topic)
            .Any(one => !CaseRun.Passes(mutation.Book, one));
        return noticed ? (true, null) : (false, Effect(mutation, places, topic));
    }

    /// <summary>A job whose answer the change changes; null when there is none.</summary>
    private Unpinned? Effect(Mutation mutation, string[] places, string topic)
    {
        Unpinned? unconfirmed = null;
        foreach (var place in places)
        {
            var comparison = new Comparison(book, mutation.Book, place, topic);
            foreach (var day in comparison.Days())
                foreach (var difference in comparison.On(day).Take(Enough).OrderBy(difference => difference.Witness.Weight))
                {
                    var witness = difference.Witness.Stated(book.Vocabulary);
                    if (witness.Job(book) is not { } job)
                    {
                        unconfirmed ??= Tell(mutation, witness, difference.Before, difference.After);
                        continue;
                    }

                    var (before, after) = (CaseRun.Verdict(book, job), CaseRun.Verdict(mutation.Book, job));
                    if (before != after) return Tell(mutation, witness, before, after);
                }
        }

        return unconfirmed ?? (mutation.What.StartsWith("the day of", StringComparison.Ordinal)
            ? new Unpinned(mutation.Rule, mutation.Mark, mutation.What, mutation.To, null, "", "")
            : null);
    }

    private const int Enough = 200;

    private static Unpinned Tell(Mutation mutation, Witness witness, Outcome? before, Outcome? after) =>
        new(mutation.Rule, mutation.Mark, mutation.What, mutation.To, witness, Words(before), Words(after));

    private static string Words(Outcome? outcome) => outcome is { } known ? Wording.Of(known) : "no rule covers it";
}
