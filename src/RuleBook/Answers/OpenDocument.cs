using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Answers;

/// <summary>A document that nobody has read, or a question that nobody has asked, and what it would settle.</summary>
/// <param name="Place">Where it counts.</param>
/// <param name="Document">The document; null where the data names none and only asking helps.</param>
/// <param name="Ask">Whom to ask.</param>
/// <param name="LookFor">What to look for in it, each a sentence without its full stop.</param>
/// <param name="Edit">Where the answer is written down: the versions of rules that are open.</param>
/// <param name="Answers">How many typical jobs of the place are undecided among others for want of it.</param>
/// <param name="Alone">How many of them are undecided for want of nothing else.</param>
public sealed record OpenDocument(
    Jurisdiction Place,
    string? Document,
    string Ask,
    ImmutableArray<string> LookFor,
    ImmutableArray<Mark> Edit,
    int Answers,
    int Alone
);

/// <summary>Ranks what is open by how many undecided answers it could decide, counted over a sample of jobs.</summary>
internal static class OpenDocuments
{
    /// <summary>The document that decides most first.</summary>
    /// <param name="book">The book.</param>
    /// <param name="day">The day as on which the jobs are asked.</param>
    /// <param name="places">The jurisdictions that are looked at.</param>
    /// <param name="jobs">The sample of a jurisdiction.</param>
    public static ImmutableArray<OpenDocument> Of(
        Book book,
        DateOnly day,
        IEnumerable<Jurisdiction> places,
        Func<Jurisdiction, IEnumerable<Job>> jobs
    ) =>
        [
            .. places
                .Where(place => place.Registers)
                .SelectMany(place => Of(book, place, day, jobs(place)))
                .OrderByDescending(open => open.Alone)
                .ThenByDescending(open => open.Answers)
                .ThenBy(open => open.Place.Id, StringComparer.Ordinal)
                .ThenBy(open => open.Document ?? open.Ask, StringComparer.Ordinal),
        ];

    private static IEnumerable<OpenDocument> Of(Book book, Jurisdiction place, DateOnly day, IEnumerable<Job> jobs)
    {
        var answers = jobs.Select(job => Assessor.Assess(book, job))
            .Where(answer => answer.Verdict is null)
            .Select(answer => answer.Gaps.Select(gap => (gap, key: Key(gap))).ToArray())
            .Where(gaps => gaps.Length > 0)
            .ToArray();
        return answers
            .SelectMany(gaps => gaps)
            .GroupBy(each => each.key)
            .Select(same => new OpenDocument(
                place,
                same.Key.Document,
                One(same.First().gap.Ask),
                [.. same.Select(each => each.gap.What).Distinct().Order(StringComparer.Ordinal)],
                [.. same.Select(each => each.gap.Rule).Distinct().Select(rule => Mark(book, place, rule, day)).OfType<Mark>().Order()],
                answers.Count(gaps => gaps.Any(each => each.key == same.Key)),
                answers.Count(gaps => gaps.All(each => each.key == same.Key))
            ));
    }

    /// <summary>An address is where to ask, and no document.</summary>
    private static (string? Document, string Ask) Key(Gap gap)
    {
        var document = gap.Open is { } open && !Uri.IsWellFormedUriString(open.Trim(), UriKind.Absolute) ? One(open) : null;
        return (document, document is null ? One(gap.Ask) : "");
    }

    private static string One(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');

    private static Mark? Mark(Book book, Jurisdiction place, string rule, DateOnly day) =>
        book.Rule(rule) is { } found
            ? Resolver.Resolve(book, found, day) is [var version, ..]
                ? found.Versions.FirstOrDefault(own => own.Decides && own.From?.Text == version.From?.Text)?.Mark ?? found.Mark
                : found.Mark
            : place.Coverage.Select(coverage => (Mark?)coverage.Mark).FirstOrDefault();
}
