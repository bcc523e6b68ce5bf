using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// What a change of the law does to a job: the smallest one found that is answered differently on the day before and from the day on.
/// </summary>
/// <param name="Rule">Full id of the rule that changed.</param>
/// <param name="From">Start of the version that brought the change, as written.</param>
/// <param name="Before">The job on the last day before.</param>
/// <param name="After">The same job on the first day on which the version holds for certain.</param>
/// <param name="Was">The answer before.</param>
/// <param name="Is">The answer after.</param>
public sealed record LawChange(string Rule, string From, ShownJob Before, ShownJob After, Outcome Was, Outcome Is);

/// <summary>Puts to the evaluator what each version of a rule changed against the one before it, within one book.</summary>
public static class LawChanges
{
    /// <summary>So many classes of vehicles are tried, those with the smallest jobs first, each with so many jobs.</summary>
    private const int Classes = 4;
    private const int Jobs = 3;

    /// <summary>
    /// The versions that decide from a day on and whose change the verdict on some job shows, in the order of the book. Before the first
    /// version of a rule nothing is recorded, which leaves the answer open; a rule of use has no verdict.
    /// </summary>
    public static ImmutableArray<LawChange> Of(Book book) =>
        [
            .. book
                .Jurisdictions.Where(place => place.Registers)
                .SelectMany(place =>
                    place.Rules.SelectMany(rule =>
                        rule.Versions.Where(version => version is { Decides: true, From: not null })
                            .Select(version => (place, rule, version))
                    )
                )
                .AsParallel()
                .AsOrdered()
                .Select(each => Of(book, each.place, each.rule, each.version))
                .OfType<LawChange>(),
        ];

    private static LawChange? Of(Book book, Jurisdiction place, Rule rule, RuleVersion version)
    {
        var (day, first) = (version.From!.Latest, version.From.Earliest);
        if (first == DateOnly.MinValue || !book.Vocabulary.Topics.TryGetValue(rule.Topic, out var topic) || topic.OfUse)
            return null;
        var eve = first.AddDays(-1);
        var confirmation = new Confirmation(book, book, place, place, topic, book.Vocabulary, eve);
        Confirmed? open = null;
        foreach (
            var group in Candidates
                .Of(book.Vocabulary, topic, Slice(eve), Slice(day))
                .OrderBy(group => group.Witnesses[0].Weight)
                .Take(Classes)
        )
        {
            if (confirmation.First(group with { Witnesses = [.. group.Witnesses.Take(Jobs)] }, out _) is not { } found)
                continue;
            open ??= found;
            if (!found.Decided)
                continue;
            open = found;
            break;
        }

        return open is null
            ? null
            : new LawChange(
                rule.Id,
                version.From.Text,
                new ShownJob(open.Earlier, open.Says, eve),
                new ShownJob(open.Job, open.Says, day),
                open.Before,
                open.After
            );

        Slice Slice(DateOnly on) => new(place.Id, rule.Topic, on, [Resolver.Resolve(book, rule, on)]);
    }
}
