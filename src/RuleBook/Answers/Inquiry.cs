using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>One job before the rules of one jurisdiction: what is known, and the versions that may be in force on each topic touched.</summary>
internal sealed class Inquiry
{
    private readonly Book book;
    private readonly Jurisdiction place;
    private readonly Situation situation;
    private readonly ImmutableArray<string> topics;
    private readonly DateOnly on;

    private Inquiry(Book book, Jurisdiction place, Situation situation, ImmutableArray<string> topics, DateOnly on)
    {
        this.book = book;
        this.place = place;
        this.situation = situation;
        this.topics = topics;
        this.on = on;
    }

    /// <summary>What the job makes known.</summary>
    public FactSet Facts => situation.Facts;

    /// <summary>Every version that may be in force on a topic touched.</summary>
    public IEnumerable<ResolvedVersion> Versions => situation.Versions.Values.SelectMany(candidates => candidates);

    public static Inquiry Open(Book book, Job job, Jurisdiction place, DiameterBasis basis) =>
        Open(book, job, place, basis, facts => Touched(book, facts, ofUse: false));

    /// <summary>Only on the topics that a measure touches, whether or not the job touches them now.</summary>
    public static Inquiry About(Book book, Job job, Jurisdiction place, DiameterBasis basis, string measure) => Open(
        book, job, place, basis, _ =>
        [
            .. book.Vocabulary.Topics.Values
                .Where(topic => !topic.OfUse && topic.TouchedBy.Contains(measure))
                .Select(topic => topic.Name)
                .Order(StringComparer.Ordinal),
        ]);

    private static Inquiry Open(Book book, Job job, Jurisdiction place, DiameterBasis basis, Func<FactSet, ImmutableArray<string>> touched)
    {
        var facts = JobFacts.Of(job, book.Vocabulary, job.Dates.For(place.DecidedBy), basis);
        var topics = touched(facts);
        var versions = place.Rules
            .Where(rule => topics.Contains(rule.Topic))
            .ToImmutableSortedDictionary(rule => rule.Id, rule => Candidates(book, job, place, rule), StringComparer.Ordinal);
        return new Inquiry(book, place, new Situation(facts, versions), topics, job.Dates.Latest);
    }

    /// <summary>
    /// The same question to a book in which only some rules differ; null where what may be in force on this job is the same as here.
    /// </summary>
    /// <param name="other">The other book.</param>
    /// <param name="job">The job asked about.</param>
    /// <param name="rules">Full ids of the rules that may differ.</param>
    public Inquiry? Under(Book other, Job job, IEnumerable<string> rules)
    {
        var versions = situation.Versions;
        foreach (var rule in rules.Where(versions.ContainsKey))
        {
            var candidates = Candidates(other, job, place, other.Rule(rule)!);
            if (!candidates.SequenceEqual(versions[rule], SameContent.Instance)) versions = versions.SetItem(rule, candidates);
        }

        return versions == situation.Versions ? null : new Inquiry(other, place, situation with { Versions = versions }, topics, on);
    }

    /// <summary>
    /// The rules of use that the job meets: those of the state of registration, and on each road it travels those that follow the road.
    /// </summary>
    public ImmutableArray<Finding> OfUse(Job job)
    {
        var touched = Touched(book, situation.Facts, ofUse: true);
        var rules = place.Rules.Where(rule => !rule.GovernedByTravel)
            .Concat(job.TravelsThrough.Prepend(place.Id).Distinct().SelectMany(id => book.Jurisdiction(id)?.Rules ?? []).Where(rule => rule.GovernedByTravel));
        return
        [
            .. rules.Where(rule => touched.Contains(rule.Topic))
                .Select(rule => Candidates(book, job, place, rule))
                .SelectMany(candidates => candidates.Select(version => (version, certain: candidates.Length == 1)))
                .Where(pair => Tables.Judge.Binds(pair.version, situation.Facts) != Truth.No)
                .Select(pair => FindingReader.Read(book, pair.version, pair.certain, situation.Facts, on)),
        ];
    }

    private static ImmutableArray<string> Touched(Book book, FactSet facts, bool ofUse) =>
    [
        .. book.Vocabulary.Topics.Values
            .Where(topic => topic.OfUse == ofUse)
            .Where(topic => topic.TouchedBy.Any(measure => Touches(book, facts, measure)))
            .Select(topic => topic.Name)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>
    /// A measure that is not what it is when nothing changes it; one that no job has to state, such as a height above ground, touches only where
    /// it is known.
    /// </summary>
    private static bool Touches(Book book, FactSet facts, string measure)
    {
        var unchanged = book.Vocabulary.Measures.GetValueOrDefault(measure)?.IfAbsent;
        return (facts.Measures.ContainsKey(measure) || unchanged is not null)
            && facts.Measure(measure, FactSet.PartsOf(null)).Exact != (unchanged ?? Fraction.Zero);
    }

    public (Outcome Outcome, ImmutableArray<Effect> Effects) Judge() =>
        Completions.Try(situation, Openings.Of(situation, book.Vocabulary), Judge);

    /// <summary>What other facts would give.</summary>
    public Outcome Judge(FactSet facts)
    {
        var other = situation with { Facts = facts };
        return Completions.Try(other, Openings.Of(other, book.Vocabulary), Judge).Outcome;
    }

    public ImmutableArray<KnownMeasure> Measures() =>
    [
        .. topics
            .SelectMany(topic => book.Vocabulary.Topics[topic].TouchedBy)
            .Concat(Used())
            .Distinct()
            .Where(book.Vocabulary.Measures.ContainsKey)
            .Select(name => Known(book.Vocabulary.Measures[name]))
            .Where(known => known.Value != Interval.Anything && !known.Measure.IsDate)
            .OrderBy(known => known.Measure.Name, StringComparer.Ordinal),
    ];

    public ImmutableArray<Finding> Findings() =>
    [
        .. situation.Versions.Values
            .SelectMany(candidates => candidates.Select(version => (version, certain: candidates.Length == 1)))
            .Where(pair => Tables.Judge.Binds(pair.version, situation.Facts) != Truth.No)
            .Select(pair => FindingReader.Read(book, pair.version, pair.certain, situation.Facts, on))
            .OrderByDescending(finding => finding.Outcome.Worst)
            .ThenBy(finding => finding.Version.Rule.Id, StringComparer.Ordinal)
            .ThenBy(finding => finding.Version.From?.Earliest),
    ];

    /// <summary>What nobody has established, in findings that could still make the verdict more onerous.</summary>
    public ImmutableArray<Gap> Gaps(ImmutableArray<Finding> findings, Outcome outcome) =>
    [
        .. findings.Where(finding => finding.Outcome.Worst > outcome.Best).SelectMany(finding => GapReader.Read(finding, situation.Facts, place, book.Vocabulary)).Distinct(),
        .. topics
            .Where(topic => situation.Versions.Values.All(candidates => candidates[0].Rule.Topic != topic || NoneBinds(candidates)))
            .Select(topic => new Gap(topic, $"no rule in the book covers this vehicle on {book.Vocabulary.Topics[topic].Title}", place.Ask.Name, place.Ask.Url)),
        .. topics
            .SelectMany(topic => Covering.Changed(book.Vocabulary.Topics[topic], book.Vocabulary, situation.Facts).Select(measure => (topic, measure)))
            .Where(pair => !Versions.Any(version => Covering.Speaks(version, pair.measure.Name) && Tables.Judge.Binds(version, situation.Facts) != Truth.No))
            .Select(pair => new Gap(pair.topic, $"no rule in the book speaks of the {pair.measure.Title} of this vehicle", place.Ask.Name, place.Ask.Url)),
    ];

    private bool NoneBinds(ImmutableArray<ResolvedVersion> candidates) =>
        candidates.All(version => Tables.Judge.Binds(version, situation.Facts) == Truth.No);

    /// <summary>The most onerous over the topics touched; a topic on which no rule binds is open.</summary>
    private Outcome Judge(Situation known)
    {
        var verdict = new Outcome(Pathway.NoCertificate, Pathway.NoCertificate);
        foreach (var topic in topics)
        {
            var bound = false;
            var unmet = Covering.Changed(book.Vocabulary.Topics[topic], book.Vocabulary, known.Facts).ToList();
            foreach (var candidates in known.Versions.Values.Where(candidates => candidates[0].Rule.Topic == topic))
            {
                var binds = candidates.Select(version => Tables.Judge.Binds(version, known.Facts)).Max();
                if (binds == Truth.No) continue;
                bound |= binds == Truth.Yes;
                if (binds == Truth.Yes) unmet.RemoveAll(measure => candidates.Any(version => Covering.Speaks(version, measure.Name)));
                var outcome = candidates.Select(version => Tables.Judge.Try(version, known.Facts)).Aggregate((left, right) => left.Or(right));
                verdict = verdict.And(binds == Truth.Yes ? outcome : outcome.Or(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate)));
            }

            if (!bound || unmet.Count > 0) verdict = verdict.And(Outcome.Open);
        }

        return verdict;
    }

    private static ImmutableArray<ResolvedVersion> Candidates(Book book, Job job, Jurisdiction place, Rule rule) =>
    [
        .. job.Dates.For(rule.DecidedBy ?? place.DecidedBy)
            .SelectMany(day => Resolver.Resolve(book, rule, day))
            .DistinctBy(version => (version.From, version.Until, string.Join(' ', version.Adopted.Select(Taken)))),
    ];

    /// <summary>Which version an adoption takes over; one that moves takes over the same on many days.</summary>
    private static (string, DateOnly?, string?, string?) Taken(AdoptionStep step) => (step.Rule, step.Moving ? null : step.AsOf, step.From?.Text, step.Until?.Text);

    private IEnumerable<string> Used() => situation.Versions.Values
        .SelectMany(candidates => candidates)
        .SelectMany(version => version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.Limits) : [])
        .Where(limit => limit.Kind == LimitKind.Bounded)
        .Select(limit => limit.Measure);

    private KnownMeasure Known(Measure measure)
    {
        var parts = situation.Versions.Values.SelectMany(candidates => candidates).FirstOrDefault(version => version.Measured is { Total.IsEmpty: false })?.Parts
            ?? FactSet.PartsOf(null);
        var value = situation.Facts.Measure(measure.Name, parts);
        var derivation = situation.Facts.Measures.TryGetValue(measure.Name, out var derived)
            ? derived.Derivation
            : Derivations.Of(measure.Name, situation.Facts, parts);
        return new KnownMeasure(measure, value, derivation);
    }
}
