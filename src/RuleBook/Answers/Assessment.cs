using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>The answer to a job; what it tells beside the pathways is worked out when it is first read.</summary>
public sealed record Assessment
{
    private readonly Later<ImmutableArray<Blocker>> blockers = ImmutableArray<Blocker>.Empty;
    private readonly Later<ImmutableArray<NotJudged>> notJudged = ImmutableArray<NotJudged>.Empty;
    private readonly Later<ImmutableArray<KnownMeasure>> measures = ImmutableArray<KnownMeasure>.Empty;
    private readonly Later<ImmutableArray<Finding>> findings = ImmutableArray<Finding>.Empty;
    private readonly Later<ImmutableArray<Finding>> ofUse = ImmutableArray<Finding>.Empty;
    private readonly Later<ImmutableArray<Effect>> undecided = ImmutableArray<Effect>.Empty;
    private readonly Later<ImmutableArray<Gap>> gaps = ImmutableArray<Gap>.Empty;
    private readonly Later<MassAnswer?> masses = (MassAnswer?)null;
    private readonly Later<HeightAnswer?> heights = (HeightAnswer?)null;
    private readonly Later<TyreAnswer?> tyres = (TyreAnswer?)null;
    private readonly Later<ImmutableArray<PaperHeld>> held = ImmutableArray<PaperHeld>.Empty;
    private readonly Later<Certification?> certification = (Certification?)null;
    private readonly Later<ImmutableArray<string>> cautions = ImmutableArray<string>.Empty;
    private readonly Later<ImmutableArray<string>> foremost = ImmutableArray<string>.Empty;

    /// <summary>The job's own name; null where it has none.</summary>
    public string? Job { get; init; }

    /// <summary>Id of the jurisdiction that decides.</summary>
    public required string Jurisdiction { get; init; }

    /// <summary>Its name.</summary>
    public required string JurisdictionName { get; init; }

    /// <summary>Id of the jurisdiction of registration: another one where it is asked what would hold elsewhere.</summary>
    public required string RegisteredIn { get; init; }

    /// <summary>The day on which the question is asked: the latest of the job's days.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Name of the book's edition; null where it was changed since the last one.</summary>
    public string? Edition { get; init; }

    /// <summary>Digest of the book.</summary>
    public required string Book { get; init; }

    /// <summary>The pathways possible; one when decided.</summary>
    public required Outcome Between { get; init; }

    /// <summary>The verdict; null when undecided, and where there is nothing to judge.</summary>
    public Pathway? Verdict => Between.Decided && !JudgesNothing ? Between.Best : null;

    /// <summary>True where the job states no change that any rule could judge: then no pathway is told.</summary>
    public bool JudgesNothing => Between.Worst == Pathway.NoCertificate && Findings.IsEmpty;

    /// <summary>What the first line says.</summary>
    public Headline Headline => Headlines.Of(this);

    /// <summary>What must not be driven or done as planned, whatever the pathway, most urgent first.</summary>
    public ImmutableArray<Blocker> Blockers
    {
        get => blockers.Value;
        init => blockers = value;
    }

    /// <summary>Changes that the job states and that no rule of the place in the book speaks of; each is a blocker too.</summary>
    public ImmutableArray<NotJudged> NotJudged
    {
        get => notJudged.Value;
        init => notJudged = value;
    }

    /// <summary>The measures that bear on the rules tried.</summary>
    public ImmutableArray<KnownMeasure> Measures
    {
        get => measures.Value;
        init => measures = value;
    }

    /// <summary>What each rule gives.</summary>
    public ImmutableArray<Finding> Findings
    {
        get => findings.Value;
        init => findings = value;
    }

    /// <summary>Rules of use that the job meets; they do not enter the verdict.</summary>
    public ImmutableArray<Finding> OfUse
    {
        get => ofUse.Value;
        init => ofUse = value;
    }

    /// <summary>
    /// Those of them that neither allow what is planned nor are passed by it, because something is not known or not established.
    /// </summary>
    public ImmutableArray<Finding> OfUseOpen =>
        [.. OfUse.Where(finding => !finding.Certain || finding.Outcome is { Best: Pathway.NoCertificate, Decided: false })];

    /// <summary>What is not known and would change the verdict.</summary>
    public ImmutableArray<Effect> Undecided
    {
        get => undecided.Value;
        init => undecided = value;
    }

    /// <summary>What nobody has established and keeps the verdict open.</summary>
    public ImmutableArray<Gap> Gaps
    {
        get => gaps.Value;
        init => gaps = value;
    }

    /// <summary>What is hardly possible in the job, though it was read.</summary>
    public ImmutableArray<Problem> Warnings { get; init; } = [];

    /// <summary>The category that a re-rating leads to, by which the vehicle is judged; null where it stays in its own.</summary>
    public CategoryChange? Category { get; init; }

    /// <summary>The mass budget and the limits it touches; null where the job says nothing of masses.</summary>
    public MassAnswer? Masses
    {
        get => masses.Value;
        init => masses = value;
    }

    /// <summary>The lift as measured and as predicted; null where the job gives neither heights nor springs.</summary>
    public HeightAnswer? Heights
    {
        get => heights.Value;
        init => heights = value;
    }

    /// <summary>The tyres on the road; null where the job names no tyre.</summary>
    public TyreAnswer? Tyres
    {
        get => tyres.Value;
        init => tyres = value;
    }

    /// <summary>Who certifies and what is issued; null where no scheme is recorded.</summary>
    public Certification? Certification
    {
        get => certification.Value;
        init => certification = value;
    }

    /// <summary>Papers that the owner holds, and what they count for in the place; they do not enter the verdict.</summary>
    public ImmutableArray<PaperHeld> Held
    {
        get => held.Value;
        init => held = value;
    }

    /// <summary>The weakest link among the limits that decide; null where nothing that is established does.</summary>
    public WeakestEvidence? WeakestEvidence => WeakestEvidence.Of(Findings, Between);

    /// <summary>Whether a certificate or an approval is among what the job may need.</summary>
    public bool IsCertified =>
        Certification is not null && !JudgesNothing && Between.Worst >= Pathway.Certificate && Between.Best <= Pathway.Approval;

    /// <summary>
    /// The roads that the job travels outside the state of registration, and what is known of the rules that follow them.
    /// </summary>
    public ImmutableArray<RoadElsewhere> Roads { get; init; } = [];

    /// <summary>
    /// The last day on which somebody compared what this answer rests on, or the book of the place; null where nothing was compared.
    /// </summary>
    public DateOnly? KnownTo { get; init; }

    /// <summary>
    /// The cautions that come before everything, because they can turn the answer; they stand among <see cref="Cautions"/> too.
    /// </summary>
    public ImmutableArray<string> Foremost
    {
        get => foremost.Value;
        init => foremost = value;
    }

    /// <summary>The ratings against which the loads stated could not be held, because the rating or the load on it is not known.</summary>
    public ImmutableArray<string> LoadsNotJudged => Masses is null ? [] : LoadSubjects.Unjudged(Masses);

    /// <summary>What a reader should bear in mind.</summary>
    public ImmutableArray<string> Cautions
    {
        get => cautions.Value;
        init => cautions = value;
    }

    internal Later<ImmutableArray<Blocker>> LaterBlockers
    {
        init => blockers = value;
    }

    internal Later<ImmutableArray<NotJudged>> LaterNotJudged
    {
        init => notJudged = value;
    }

    internal Later<ImmutableArray<KnownMeasure>> LaterMeasures
    {
        init => measures = value;
    }

    internal Later<ImmutableArray<Finding>> LaterFindings
    {
        init => findings = value;
    }

    internal Later<ImmutableArray<Finding>> LaterOfUse
    {
        init => ofUse = value;
    }

    internal Later<ImmutableArray<Effect>> LaterUndecided
    {
        init => undecided = value;
    }

    internal Later<ImmutableArray<Gap>> LaterGaps
    {
        init => gaps = value;
    }

    internal Later<MassAnswer?> LaterMasses
    {
        init => masses = value;
    }

    internal Later<HeightAnswer?> LaterHeights
    {
        init => heights = value;
    }

    internal Later<TyreAnswer?> LaterTyres
    {
        init => tyres = value;
    }

    internal Later<Certification?> LaterCertification
    {
        init => certification = value;
    }

    internal Later<ImmutableArray<PaperHeld>> LaterHeld
    {
        init => held = value;
    }

    internal Later<ImmutableArray<string>> LaterCautions
    {
        init => cautions = value;
    }

    internal Later<ImmutableArray<string>> LaterForemost
    {
        init => foremost = value;
    }
}

/// <summary>A measure as the job gives it.</summary>
public sealed record KnownMeasure
{
    private readonly Derived known;

    internal KnownMeasure(Measure measure, Derived known) => (Measure, this.known) = (measure, known);

    /// <summary>The measure.</summary>
    public Measure Measure { get; }

    /// <summary>What is known of it.</summary>
    public Interval Value => known.Value;

    /// <summary>How it was derived.</summary>
    public string Derivation => known.Derivation;

    /// <summary>Whether it is taken for unchanged because the job states nothing of it.</summary>
    public bool IsAssumed => Derivations.IsUnstated(known);
}

/// <summary>Something that nobody has established.</summary>
/// <param name="Rule">Full id of the rule, or the topic that no rule of the book covers.</param>
/// <param name="What">What is not established.</param>
/// <param name="Ask">Whom to ask.</param>
/// <param name="Open">Which document to open; null where none is named.</param>
public sealed record Gap(string Rule, string What, string Ask, string? Open);

/// <summary>Who certifies.</summary>
/// <param name="Scheme">The scheme's title.</param>
/// <param name="Version">As in force.</param>
/// <param name="Papers">What is issued on the verdict's pathways.</param>
/// <param name="Steps">The steps on the verdict's pathways, in order.</param>
/// <param name="MayCertify">Whether the certifier named in the job may certify; null when none is named.</param>
/// <param name="Why">Why, or what is needed instead.</param>
/// <param name="Sources">The scheme's sources.</param>
public sealed record Certification(
    string Scheme,
    SchemeVersion Version,
    ImmutableArray<string> Papers,
    ImmutableArray<Step> Steps,
    Truth? MayCertify,
    string? Why,
    ImmutableArray<CitedSource> Sources
);
