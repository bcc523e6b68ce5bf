using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Answers;

/// <summary>Answers a job from a book.</summary>
public static class Assessor
{
    /// <summary>Judges the job by the rules of the state of registration, or of <paramref name="elsewhere"/> for a what-if.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="elsewhere">Id or alias of another jurisdiction; null for the state of registration.</param>
    /// <exception cref="ArgumentException">The book has no such jurisdiction.</exception>
    public static Assessment Assess(Book book, Job job, string? elsewhere = null)
    {
        var place = book.Jurisdiction(elsewhere ?? job.RegisteredIn)
            ?? throw new ArgumentException($"the book has no jurisdiction '{elsewhere ?? job.RegisteredIn}'", nameof(elsewhere));
        var inquiry = Inquiry.Open(book, job, place, DiameterBasis.Handbook);
        var (outcome, effects) = inquiry.Judge();
        var findings = inquiry.Findings();
        var gaps = outcome.Decided ? [] : inquiry.Gaps(findings, outcome);
        var assessment = new Assessment
        {
            Job = job.Name,
            Jurisdiction = place.Id,
            JurisdictionName = place.Name,
            On = job.Dates.Latest,
            Book = book.Digest,
            Between = outcome,
            Measures = inquiry.Measures(),
            Findings = findings,
            OfUse = inquiry.OfUse(job),
            Undecided = effects,
            Gaps = gaps,
            Masses = MassReckoning.Of(job, place.Id),
            Heights = HeightReckoning.Of(job, () => LiftAllowed(book, job, place)),
            Tyres = TyreReckoning.Of(job),
            Certification = Certifying.Of(book, place, job, inquiry.Facts, outcome),
            Cautions = [.. Cautions.Of(book, place, job, inquiry.Facts, outcome, findings)],
            NotJudged = NotJudgedFinder.Of(book, place, inquiry.Facts, [.. inquiry.Versions]),
        };
        return assessment with { Blockers = Answers.Blockers.Of(assessment, job) };
    }

    private static IEnumerable<(Pathway Pathway, Fraction LimitMm)> LiftAllowed(Book book, Job job, Jurisdiction place) =>
        from reach in Margins.Of(book, job, place, Lifts.Measure)?.Reaches.DistinctBy(reach => reach.Certain.Value) ?? []
        let limit = reach.Certain.Value
        where limit is not null
        select (reach.Pathway, limit.Value);
}
