using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>
/// A paper that the owner holds, and what it counts for in the place whose rules are asked. It never makes a verdict easier.
/// </summary>
/// <param name="Paper">The paper.</param>
/// <param name="IssuedIn">Name of the place in which it was issued.</param>
/// <param name="Counts">What is known of it.</param>
/// <param name="Says">The same in a sentence without its full stop.</param>
/// <param name="Ask">Whom to ask; null where the paper is the place's own.</param>
/// <param name="CodesLacking">
/// The codes of what the job needs that stand on none of the papers held; empty where the rules name none.
/// </param>
public sealed record PaperHeld(
    HeldPaper Paper,
    string IssuedIn,
    PaperCounts Counts,
    string Says,
    string? Ask,
    ImmutableArray<string> CodesLacking
);

/// <summary>What is known of a paper in another place.</summary>
public enum PaperCounts
{
    /// <summary>Nobody has established what it counts for.</summary>
    NotEstablished,

    /// <summary>The scheme of the place tells what it asks of a vehicle that comes from elsewhere.</summary>
    AsTheSchemeTells,

    /// <summary>It was issued in the place.</summary>
    OfThePlace,
}

/// <summary>Tells what papers from elsewhere count for.</summary>
internal static class PapersHeld
{
    public static ImmutableArray<PaperHeld> Of(Book book, Jurisdiction place, Job job, Assessment assessment)
    {
        if (job.Held.IsEmpty)
            return [];
        var lacking = assessment
            .Findings.SelectMany(finding => finding.Tier?.Codes ?? [])
            .Distinct()
            .Except(job.Held.SelectMany(paper => paper.Codes))
            .ToImmutableArray();
        return [.. job.Held.Select(paper => Of(book, place, paper, assessment.Certification?.Version.Reregistering, lacking))];
    }

    private static PaperHeld Of(Book book, Jurisdiction place, HeldPaper paper, string? reregistering, ImmutableArray<string> lacking)
    {
        var from = book.Jurisdiction(paper.IssuedIn)!.Name;
        return paper.IssuedIn == place.Id
                ? new(
                    paper,
                    from,
                    PaperCounts.OfThePlace,
                    $"issued in {place.Name}; it speaks for the vehicle as it was that day, and for nothing changed since",
                    null,
                    lacking
                )
            : reregistering is not null
                ? new(
                    paper,
                    from,
                    PaperCounts.AsTheSchemeTells,
                    $"what {place.Name} asks of a vehicle that comes from elsewhere: {reregistering.Trim().TrimEnd('.')}",
                    place.Ask.Name,
                    lacking
                )
            : new(
                paper,
                from,
                PaperCounts.NotEstablished,
                $"nobody has established what it counts for in {place.Name}",
                place.Ask.Name,
                lacking
            );
    }
}
