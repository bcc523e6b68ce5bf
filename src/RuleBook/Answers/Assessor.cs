using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;

namespace RuleBook.Answers;

/// <summary>Answers a job from a book.</summary>
/// <example>
/// With the packages RuleBook.Authoring, which opens books, and RuleBook.Yaml:
/// <code>
/// var book = PackedBook.Read(File.ReadAllBytes("book.rulebook"), "book.rulebook").Open(); // a folder: BookReading.Open("folder")
/// var job = JobReader.Read(YamlText.ReadFile("job.yaml"), book);
/// var answer = Assessor.Assess(book, job);
/// Console.WriteLine(ShortAnswer.Of(answer));
/// File.WriteAllText("answer.json", AssessmentJson.Write(answer));
/// </code>
/// </example>
public static class Assessor
{
    /// <summary>Judges the job by the rules of the state of registration, or of <paramref name="elsewhere"/> for a what-if.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="elsewhere">Id or alias of another jurisdiction; null for the state of registration.</param>
    /// <exception cref="ArgumentException">The book has no such jurisdiction.</exception>
    public static Assessment Assess(Book book, Job job, string? elsewhere = null) =>
        EachAxle.Assess(job, each => One(book, each, elsewhere));

    private static Assessment One(Book book, Job asked, string? elsewhere)
    {
        var place =
            book.Jurisdiction(elsewhere ?? asked.RegisteredIn)
            ?? throw new ArgumentException($"the book has no jurisdiction '{elsewhere ?? asked.RegisteredIn}'", nameof(elsewhere));
        var job = asked.AsIfRegisteredIn(place.Id);
        var judged = new Judgement(book, job, place, DiameterBasis.Handbook);
        var outcome = judged.Outcome;
        Assessment? assessment = null;
        assessment = new Assessment
        {
            Job = job.Name,
            Jurisdiction = place.Id,
            JurisdictionName = place.Name,
            RegisteredIn = asked.RegisteredIn,
            On = job.Dates.Latest,
            Book = book.Digest,
            Edition = book.Edition?.Name,
            Between = outcome,
            LaterMeasures = new(judged.Measures),
            LaterFindings = new(judged.Findings),
            LaterOfUse = new(judged.OfUse),
            LaterUndecided = new(() => judged.Effects),
            LaterGaps = new(() => outcome.Decided ? [] : judged.Gaps(assessment!.Findings)),
            LaterNotJudged = new(judged.NotJudged),
            LaterMasses = new(() => MassReckoning.Of(job, place.Id)),
            LaterHeights = new(() => HeightReckoning.Of(job, () => LiftAllowed(book, job, place))),
            LaterTyres = new(() => TyreReckoning.Of(job, judged.Growth)),
            LaterCertification = new(() => Certifying.Of(book, place, job, judged.Facts, outcome, assessment!.Findings)),
            LaterHeld = new(() => PapersHeld.Of(book, place, job, assessment!)),
            LaterCautions = new(() => [.. assessment!.Foremost, .. Cautions.Of(book, place, job, judged.Facts, assessment!.Findings)]),
            LaterBlockers = new(() => Blockers.Of(assessment!, job)),
            Warnings = job.Warnings,
            Category = VehicleCategory.ChangeOf(job),
            Roads = RoadElsewhere.Of(book, job, place),
            KnownTo = place.Sources.Select(source => (DateOnly?)source.Checked.Latest).Max(),
            LaterForemost = new(() => [.. Cautions.Foremost(book, place, job, judged, assessment!.Findings.Concat(assessment.OfUse))]),
        };
        return assessment;
    }

    private static IEnumerable<(Pathway Pathway, Fraction LimitMm)> LiftAllowed(Book book, Job job, Jurisdiction place) =>
        from reach in Margins.Of(book, job, place, Lifts.Measure)?.Reaches.DistinctBy(reach => reach.Certain.Value) ?? []
        let limit = reach.Certain.Value
        where limit is not null
        select (reach.Pathway, limit.Value);
}
