using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>
/// Finds the versions in force on a day and follows adoption; apart from evaluating, so that one resolution serves many verdicts.
/// </summary>
public static class Resolver
{
    /// <summary>The most adoptions that may follow one another; the checks of a book refuse more.</summary>
    internal const int LongestChain = 8;

    /// <summary>
    /// The versions of <paramref name="rule"/> that are or may be in force on <paramref name="day"/>: one when that is known, more when a
    /// date is known only in part. Where possibly none is, a version without dates says that nothing is recorded.
    /// </summary>
    public static ImmutableArray<ResolvedVersion> Resolve(Book book, Rule rule, DateOnly day) =>
        [
            .. Resolve(book, rule, day, 0)
                .Select(version =>
                    version.Measured is { Allowances.IsEmpty: false }
                        ? version with
                        {
                            Content = Allowance.Apply(version.Content, version.Measured, book.Vocabulary),
                        }
                        : version
                ),
        ];

    private static ImmutableArray<ResolvedVersion> Resolve(Book book, Rule rule, DateOnly day, int depth)
    {
        var versions = rule.Versions.Where(version => version.Decides).ToArray();
        Timeline.Span[] spans = [.. versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return
        [
            .. Timeline
                .At(spans, day)
                .SelectMany(i =>
                    i < 0
                        ? [NothingRecorded(book, rule, versions, day)]
                        : Follow(
                            book,
                            rule,
                            versions[i],
                            versions[i].Until ?? (i + 1 < versions.Length ? versions[i + 1].From : null),
                            day,
                            depth
                        )
                ),
        ];
    }

    private static IEnumerable<ResolvedVersion> Follow(
        Book book,
        Rule rule,
        RuleVersion version,
        PartialDate? until,
        DateOnly day,
        int depth
    )
    {
        var own = new ResolvedVersion(
            rule,
            version.From,
            until,
            [],
            version.Content,
            version.Measured,
            Cited(book, rule, version.Sources),
            version.Disputes,
            version.Note is { } note ? [note] : []
        )
        {
            InForceBy = version.InForceBy,
            WarningOnly = version.WarningOnly,
            OfHead = version.OfHead,
            NotFound = version.NotFound,
            InWhole = version.InWhole,
            Evidence = new Evidence(book, [new WrittenVersion(rule, version)]),
        };
        if (version.Content is not Adoption adoption)
            return [own];
        if (depth >= LongestChain || book.Rule(adoption.Rule) is not { } adopted)
            return [own with { Content = Unknown(book, rule) }];

        var asOf = adoption.AsOf ?? day;
        return Resolve(book, adopted, asOf, depth + 1)
            .Select(theirs =>
                own with
                {
                    Adopted = [new AdoptionStep(adopted.Id, asOf, adoption.AsOf is null, theirs.From, theirs.Until), .. theirs.Adopted],
                    Content = Departures.Apply(Departures.Named(theirs.Content, adopted.Jurisdiction), adoption.Exceptions),
                    Measured = own.Measured ?? theirs.Measured,
                    Sources =
                    [
                        .. own.Sources,
                        .. adoption.Exceptions.SelectMany(change => Cited(book, rule, change.Sources)),
                        .. theirs.Sources,
                    ],
                    Disputes = [.. own.Disputes, .. theirs.Disputes],
                    Notes = [.. own.Notes, .. adoption.Exceptions.Select(change => change.Loosens).OfType<string>(), .. theirs.Notes],
                    NotFound = [.. own.NotFound, .. theirs.NotFound],
                    InWhole = own.InWhole ?? theirs.InWhole,
                    Evidence = own.Evidence.Then(theirs.Evidence),
                }
            );
    }

    private static ResolvedVersion NothingRecorded(Book book, Rule rule, RuleVersion[] versions, DateOnly day)
    {
        var next = versions.FirstOrDefault(version => (version.From?.Latest ?? version.InForceBy?.Latest ?? DateOnly.MinValue) > day);
        return new ResolvedVersion(rule, null, next?.From ?? next?.InForceBy, [], Unknown(book, rule), null, [], [], []);
    }

    private static NotEstablished Unknown(Book book, Rule rule) =>
        new(book.Jurisdiction(rule.Jurisdiction)?.Ask.Name ?? "the authority", null, null);

    /// <summary>The citations whose source is found.</summary>
    internal static ImmutableArray<CitedSource> Cited(Book book, Rule rule, ImmutableArray<Citation> citations) =>
        Cited(book, rule.Jurisdiction, citations);

    internal static ImmutableArray<CitedSource> Cited(Book book, string jurisdiction, ImmutableArray<Citation> citations) =>
        [
            .. citations
                .Select(citation => (citation, source: book.Source(jurisdiction, citation.Cite)))
                .Where(pair => pair.source is not null)
                .Select(pair => new CitedSource(pair.citation, pair.source!)),
        ];
}
