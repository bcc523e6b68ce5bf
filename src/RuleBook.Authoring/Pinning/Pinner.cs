using RuleBook.Authoring.Cases;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>
/// Changes every number, date edge, word, condition, tier and exception of a book by the smallest step that matters, and demands that a case
/// fails. A change after which every rule gives the same everywhere, shown cell by cell, needs none.
/// </summary>
public sealed class Pinner
{
    private readonly Book book;
    private readonly Adopters adopters;
    private readonly ILookup<string, PreparedCase> cases;

    /// <summary>For a book and cases that all pass on it.</summary>
    public Pinner(Book book, IEnumerable<Case> cases)
    {
        this.book = book;
        this.cases = cases.Select(one => new PreparedCase(book, one)).ToLookup(one => one.Case.Jurisdiction);
        adopters = new Adopters(book);
    }

    /// <summary>Tries every change of the rules chosen.</summary>
    /// <param name="chosen">Which rules to change.</param>
    /// <param name="progress">Told how many changes were tried, and of how many; by several threads.</param>
    public PinReport Run(Func<Rule, bool> chosen, Action<int, int>? progress = null)
    {
        var changes = RuleChange.Of(book, chosen).ToArray();
        var done = 0;
        Tried[] tried =
        [
            .. changes.AsParallel().AsOrdered().Select(change =>
            {
                var result = Try(change);
                progress?.Invoke(Interlocked.Increment(ref done), changes.Length);
                return result;
            }),
        ];
        var points = tried.GroupBy(one => (one.Change.Mark, one.Change.What)).Where(point => point.Any(one => one.Noticed || one.Unpinned is not null)).ToArray();
        return new PinReport(
            points.Length,
            points.Count(point => point.All(one => one.Unpinned is null)),
            changes.Length,
            tried.Count(one => !one.Noticed && one.Unpinned is null),
            [.. tried.Select(one => one.Unpinned).OfType<Unpinned>().OrderBy(unpinned => unpinned.Mark)]);
    }

    private Tried Try(RuleChange change)
    {
        var rules = adopters.Of(change.From.Id);
        var topic = book.Vocabulary.Topics[change.From.Topic];
        var noticed = rules.Select(rule => rule.Split('/')[0]).Distinct().SelectMany(place => cases[place])
            .OrderBy(one => one.Case.Topic != change.From.Topic)
            .Any(one => (!topic.OfUse || one.Case.Topic == topic.Name) && one.Notices(change.Book, topic, rules));
        if (noticed) return new Tried(change, true, null);
        var shown = rules.Select(rule => RuleEffect.Find(book, change, rule)).FirstOrDefault(found => found is not null);
        return new Tried(change, false, shown is null ? null : new Unpinned(
            change.From.Id, change.Mark, change.What, change.Becomes, shown.Witness, shown.Before.ToString(), shown.After.ToString()));
    }

    private sealed record Tried(RuleChange Change, bool Noticed, Unpinned? Unpinned);
}
