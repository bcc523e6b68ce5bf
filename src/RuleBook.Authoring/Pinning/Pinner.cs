using System.Collections.Concurrent;
using RuleBook.Authoring.AllCores;
using RuleBook.Authoring.Cases;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>
/// Changes every number, date edge, word, condition, tier, exception and paper issued of a book by the smallest step that matters, and
/// demands that a case fails. A change after which every rule gives the same everywhere, shown cell by cell, needs none.
/// </summary>
public sealed class Pinner
{
    private readonly Book book;
    private readonly ILookup<string, PreparedCase> cases;

    /// <summary>For a book and cases that all pass on it.</summary>
    public Pinner(Book book, IReadOnlyList<Case> cases)
    {
        this.book = book;
        this.cases = InOrder.Each(cases, one => new PreparedCase(book, one)).ToLookup(one => one.Case.Jurisdiction);
    }

    /// <summary>Tries every change of the jurisdictions and topics chosen.</summary>
    /// <param name="chosen">Whether to change what stands in a jurisdiction's file on a topic.</param>
    /// <param name="progress">Told how many changes were tried, and of how many; by several threads.</param>
    public PinReport Run(Func<string, string, bool> chosen, Action<int, int>? progress = null)
    {
        var changes = BookEdit.Of(book, chosen);
        var (done, all) = (0, changes.Count());
        Tried[] tried =
        [
            .. Partitioner
                .Create(changes, EnumerablePartitionerOptions.NoBuffering)
                .AsParallel()
                .AsOrdered()
                .Select(change =>
                {
                    var result = Try(change);
                    progress?.Invoke(Interlocked.Increment(ref done), all);
                    return result;
                }),
        ];
        var points = tried
            .GroupBy(one => (one.Mark, one.What))
            .Where(point => point.Any(one => one.Noticed || one.Unpinned is not null))
            .ToArray();
        return new PinReport(
            points.Length,
            points.Count(point => point.All(one => one.Unpinned is null)),
            all,
            tried.Count(one => !one.Noticed && one.Unpinned is null),
            [.. tried.Select(one => one.Unpinned).OfType<Unpinned>().OrderBy(unpinned => unpinned.Mark)]
        );
    }

    private Tried Try(BookEdit change)
    {
        var noticed = change.NoticedByAny(change.Likeliest(change.Places.SelectMany(place => cases[place])));
        return new Tried(change.Mark, change.What, noticed, noticed ? null : change.Effect(book));
    }

    private sealed record Tried(Mark Mark, string What, bool Noticed, Unpinned? Unpinned);
}
