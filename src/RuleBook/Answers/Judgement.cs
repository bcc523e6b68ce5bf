using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Figures;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>
/// One job before the rules of one jurisdiction: what is known, placed on the table of the days that may decide, and judged.
/// </summary>
internal sealed class Judgement
{
    private readonly Book book;
    private readonly Jurisdiction place;
    private readonly Job job;
    private readonly TableBook tables;
    private Completion? completion;
    private ImmutableArray<int> rules;
    private ImmutableArray<int> binding;
    private ImmutableArray<Row> ofUse;

    public Judgement(Book book, Job job, Jurisdiction place, DiameterBasis basis)
        : this(book, job, place, basis, FittedTyre.Growth(job, basis)) { }

    private Judgement(Book book, Job job, Jurisdiction place, DiameterBasis basis, TyreGrowth? growth)
        : this(book, job, place, JobFacts.Of(job, book.Vocabulary, job.Dates.For(place.DecidedBy), basis, growth)) => Growth = growth;

    private Judgement(Book book, Job job, Jurisdiction place, FactSet facts, DecisionTable? table = null)
    {
        (this.book, this.job, this.place, Facts) = (book, job, place, facts);
        tables = TableBook.Of(book);
        Table = table ?? tables.Table(place, job.Dates);
        Row = Table.NewRow();
        Row.Set(facts);
        Touched = Table.Touched(Row.Cells);
    }

    /// <summary>What the job makes known.</summary>
    public FactSet Facts { get; }

    /// <summary>Growth of the tyres over the placard; null where they stay.</summary>
    public TyreGrowth? Growth { get; }

    public DecisionTable Table { get; }

    public Row Row { get; }

    public Touched Touched { get; private init; }

    public Outcome Outcome => Completion.Outcome;

    /// <summary>What is not known and would change the verdict.</summary>
    public ImmutableArray<Effect> Effects => [.. Completion.Effects().Select(Stated)];

    /// <summary>Every version that may be in force on a topic touched.</summary>
    public IEnumerable<ResolvedVersion> Versions => Rules.SelectMany(rule => Table.InForce[rule].Candidates);

    private Completion Completion => completion ??= new Completion(Table, Row, Touched);

    /// <summary>The topics touched, in ordinal order.</summary>
    private IEnumerable<string> Topics => Table.Topics.Where((_, topic) => (Touched.Topics >> topic & 1) != 0);

    private ImmutableArray<int> Rules => rules.IsDefault ? rules = Table.RulesOn(Touched.Topics) : rules;

    /// <summary>Only on the topics that a measure touches, whether or not the job touches them now.</summary>
    public static Judgement About(Book book, Job job, Jurisdiction place, DiameterBasis basis, string measure)
    {
        var judged = new Judgement(book, job, place, basis);
        return new Judgement(book, job, place, judged.Facts) { Touched = judged.About(measure, judged.Row) };
    }

    /// <summary>The same job before a book in which only some rules differ.</summary>
    /// <param name="other">The other book, with the same words.</param>
    /// <param name="table">Its rules of modification that may decide the job.</param>
    public Judgement Under(Book other, DecisionTable table) => new(other, job, other.Jurisdiction(place.Id)!, Facts, table);

    /// <summary>The days that may decide what is in force of a rule.</summary>
    public ImmutableArray<DateOnly> Days(Rule rule) => job.Dates.For(rule.DecidedBy ?? place.DecidedBy);

    /// <summary>
    /// What tyre diameters of another basis would give; judged only where they lead into other cells, or where a total is not known and
    /// what is left of it could differ.
    /// </summary>
    public Outcome On(DiameterBasis basis)
    {
        var other = Placed(Table, JobFacts.On(basis, Facts, job, book.Vocabulary));
        return Row.Cells.SequenceEqual(other.Cells) && Table.Sums.All(axis => Row.Known(axis.Sum).IsExact)
            ? Outcome
            : new Completion(Table, other, other.Touched).Outcome;
    }

    /// <summary>What other facts would give, on the same topics.</summary>
    public Outcome With(FactSet facts) => Completed(facts).Outcome;

    /// <summary>What other facts would leave open.</summary>
    public IEnumerable<Opening> Open(FactSet facts) => Completed(facts).Effects().Select(effect => Stated(effect).Opening);

    /// <summary>Every edge of the rules at which something could change with a measure that <paramref name="facts"/> leave open.</summary>
    public IEnumerable<(string Measure, Fraction Value)> Edges(FactSet facts)
    {
        var row = Table.NewRow();
        row.Set(facts);
        return Unknowns.Edges(Table, row);
    }

    /// <summary>What the versions of one rule give, of use or not; none where it does not bind.</summary>
    /// <param name="id">Full id of the rule.</param>
    public IEnumerable<Finding> Findings(string id)
    {
        if (book.Rule(id) is not { } rule)
            return [];
        return book.Vocabulary.Topics[rule.Topic].OfUse
            ? OfUse().Where(finding => finding.Version.Rule.Id == id)
            : Bind(Row, Rules.Where(each => Table.RuleIds[each] == id)).Select(Read);
    }

    /// <summary>What each rule gives, the most onerous first.</summary>
    public ImmutableArray<Finding> Findings() =>
        [
            .. Bind(Row, Rules)
                .Select(Read)
                .OrderByDescending(finding => finding.Outcome.Worst)
                .ThenBy(finding => finding.Version.Rule.Id, StringComparer.Ordinal)
                .ThenBy(finding => finding.Version.From?.Earliest),
        ];

    /// <summary>
    /// The rules of use that the job meets: those of the state of registration, and on each road it travels those that follow the road.
    /// </summary>
    public ImmutableArray<Finding> OfUse()
    {
        var elsewhere = job.TravelsThrough.Distinct().Where(road => road != place.Id).Select(book.Jurisdiction).OfType<Jurisdiction>();
        return
        [
            .. PlaceOfUse.Concat(elsewhere.Select(road => Placed(tables.OfUse(road, true, place, job.Dates)))).SelectMany(Use).Select(Read),
        ];
    }

    /// <summary>
    /// The topics of use that the vocabulary names for what the job states, and on which no rule of the place binds the vehicle or may
    /// bind it.
    /// </summary>
    public IEnumerable<string> UseNotCovered()
    {
        var named = PlaceOfUse.SelectMany(row => row.Table.Named(row)).Distinct().ToArray();
        return named.Length == 0 ? [] : named.Except(PlaceOfUse.SelectMany(Use).Select(version => version.Version.Rule.Topic));
    }

    /// <summary>The measures that bear on the rules tried, so far as they are known.</summary>
    public ImmutableArray<KnownMeasure> Measures()
    {
        var parts = Versions.FirstOrDefault(version => version.Measured is { Total.IsEmpty: false })?.Parts ?? FactSet.PartsOf(null);
        return
        [
            .. tables
                .Bearing(Table, Touched.Topics)
                .Where(measure => Facts.Measure(measure.Name, parts) != Interval.Anything)
                .Select(measure => new KnownMeasure(measure, Known(measure.Name, parts))),
        ];
    }

    /// <summary>What nobody has established, in findings that could still make the verdict more onerous.</summary>
    public ImmutableArray<Gap> Gaps(ImmutableArray<Finding> findings) =>
        [
            .. findings
                .Where(finding => finding.Outcome.Worst > Outcome.Best)
                .SelectMany(finding => GapReader.Read(finding, place, book.Vocabulary))
                .Distinct(),
            .. Topics
                .Where(topic => !Binding.Any(rule => Table.InForce[rule].Rule.Topic == topic))
                .Select(topic => new Gap(
                    topic,
                    $"no rule in the book covers this vehicle on {book.Vocabulary.Topics[topic].Title}",
                    place.Ask.Name,
                    place.Ask.Url
                )),
            .. Topics
                .SelectMany(topic => tables.Naming(topic).Where(measure => IsUnmet(measure)).Select(measure => (topic, measure)))
                .Select(pair => new Gap(
                    pair.topic,
                    $"no rule in the book speaks of the {pair.measure.Title} of this vehicle",
                    place.Ask.Name,
                    place.Ask.Url
                )),
        ];

    /// <summary>
    /// What the job changes and no rule of the place that binds the vehicle, or may bind it, reads. A measure that the vocabulary puts on a
    /// topic is left out where that topic is open for want of a rule, which its gap tells; so is what only follows from a change that is
    /// judged. What only describes the vehicle is no change.
    /// </summary>
    public ImmutableArray<NotJudged> NotJudged()
    {
        var left = ImmutableArray.CreateBuilder<NotJudged>();
        foreach (ref readonly var movement in Table.Movements)
        {
            if (!movement.Moves(Row.Cells))
                continue;
            var measure = book.Vocabulary.Measures[movement.Measure];
            if (IsToldElsewhere(measure, movement.Suggested) || IsRead(measure, movement.Topics))
                continue;
            // The title of a lift or an increase does not tell that it goes down.
            var figure = Downward(measure) is { } less ? $" ({Numbers.Show(less / measure.Unit.ToBase)} {measure.Unit.Symbol})" : "";
            left.Add(new NotJudged(measure.Job, measure.Title + figure, place.Ask.Name));
        }

        return left.ToImmutable();
    }

    private bool IsToldElsewhere(Measure measure, ulong topics) =>
        measure.Name is KnownWords.LoadRatingChange or KnownWords.SpeedRatingChange
            ? Downward(measure) is null || IsOpen(topics) || AsksFor(measure)
            : !measure.NeedsOwnRule
                && (IsStated(measure) ? IsOpen(topics) || JudgesResult(topics) : measure.IfAbsent is null || OnTopic(measure));

    private bool IsRead(Measure measure, ulong topics) =>
        Binding.Any(rule =>
            Reads(rule, measure, topics) || (!measure.NeedsOwnRule && StatedWith(measure).Any(other => Reads(rule, other, topics)))
        );

    /// <summary>
    /// Whether a rule that binds the vehicle, or may bind it, asks for a condition that hangs on what the tyres fitted carry or for which
    /// speed they are made.
    /// </summary>
    private bool AsksFor(Measure rating)
    {
        var conditions =
            rating.Name == KnownWords.SpeedRatingChange
                ? job.Plan.Reference.TyreSpeeds.Select(rule => rule.Condition)
                : VocabularyIndex
                    .Of(book.Vocabulary)
                    .Decided.Where(condition => condition.DecidedBy == Comparison.TyresAgainstPlacard)
                    .Select(condition => condition.Name);
        return Binding.Any(rule =>
            Table.InForce[rule].Candidates.SelectMany(version => version.Tiers()).SelectMany(tier => tier.Provided).Any(conditions.Contains)
        );
    }

    /// <summary>How far a measure goes down, where it does: below zero.</summary>
    private Fraction? Downward(Measure measure) =>
        Facts.Measures.GetValueOrDefault(measure.Name)?.Value.Exact is { IsNegative: true } less ? less : null;

    /// <summary>
    /// Whether the job states it as a change, and no measure that asks for a rule of its own is stated in the same place.
    /// </summary>
    private bool IsStated(Measure measure) =>
        job.Measures.ContainsKey(measure.Name)
        && measure.Job.StartsWith("modification.", StringComparison.Ordinal)
        && !StatedWith(measure).Any(other => other.NeedsOwnRule);

    /// <summary>
    /// What a job states is asked for: of a share one of its two measures, of a track that follows from offsets the offset that is missing.
    /// </summary>
    private Effect Stated(Effect effect) =>
        effect.Opening.Options switch
        {
            [{ Cell.Measure: { Share: not null } share }, ..] => Asking(effect, MeasureShares.Asked(share, Facts, book.Vocabulary).Job),
            [{ Cell.Measure.Name: KnownWords.TrackIncrease }, ..] when job.Plan.WheelOffset?.Missing is { } missing => Asking(
                effect,
                $"modification.wheel-offset.{missing}"
            ),
            _ => effect,
        };

    private static Effect Asking(Effect effect, string path) => effect with { Opening = effect.Opening with { Name = path } };

    /// <summary>The measures that a job states in the same place.</summary>
    private IEnumerable<Measure> StatedWith(Measure measure) => VocabularyIndex.Of(book.Vocabulary).ByJob[measure.Job];

    /// <summary>Whether there are topics, and none of them has a rule that binds the vehicle.</summary>
    private bool IsOpen(ulong topics) => topics != 0 && !Binding.Any(rule => (topics >> Table.Rules[rule].Topic & 1) != 0);

    /// <summary>
    /// Whether a rule that binds on one of the topics limits what is measured on the finished vehicle: it judges the change by what it
    /// leads to.
    /// </summary>
    private bool JudgesResult(ulong topics) =>
        Binding.Any(rule =>
            (topics >> Table.Rules[rule].Topic & 1) != 0
            && Table
                .InForce[rule]
                .Candidates.SelectMany(version => version.Tiers())
                .SelectMany(tier => tier.Limits)
                .Any(limit => book.Vocabulary.Measures[limit.Measure].Job.StartsWith("measured.", StringComparison.Ordinal))
        );

    /// <summary>
    /// Whether the vocabulary puts the measure on a topic, or another one that a job states in the same place and that moves with it.
    /// </summary>
    private bool OnTopic(Measure measure) => StatedWith(measure).Any(other => !other.Topics.IsEmpty);

    /// <summary>The rules touched that bind the vehicle or may bind it.</summary>
    private ImmutableArray<int> Binding =>
        binding.IsDefault ? binding = [.. Rules.Where(rule => Table.Judge(rule, Row.Cells).Binds != Truth.No)] : binding;

    /// <summary>
    /// What is known, on the rules of use of the place: those that follow the registration, and those that follow the road.
    /// </summary>
    private ImmutableArray<Row> PlaceOfUse =>
        ofUse.IsDefault
            ? ofUse = [Placed(tables.OfUse(place, false, place, job.Dates)), Placed(tables.OfUse(place, true, place, job.Dates))]
            : ofUse;

    private bool IsUnmet(Measure measure) =>
        measure.NeedsOwnRule
        && Moves(measure.Name)
        && !Binding.Any(rule => Table.InForce[rule].Candidates.Any(version => version.Speaks(measure.Name)));

    private bool Moves(string measure)
    {
        foreach (ref readonly var movement in Table.Movements)
            if (movement.Measure == measure)
                return movement.Moves(Row.Cells);
        return false;
    }

    private bool Reads(int rule, Measure measure, ulong topics) =>
        Table.InForce[rule].Candidates.Any(version => version.Judges(measure, (topics >> Table.Rules[rule].Topic & 1) != 0));

    private Touched About(string measure, Row row)
    {
        foreach (ref readonly var movement in Table.Movements)
            if (movement.Measure == measure)
                return new Touched(movement.Topics, Table.Touched(row.Cells).Own);
        return default;
    }

    private Completion Completed(FactSet facts)
    {
        var row = Placed(Table, facts);
        return new Completion(Table, row, Touched with { Own = Table.Touched(row.Cells).Own });
    }

    private Row Placed(DecisionTable table) => Placed(table, Facts);

    private static Row Placed(DecisionTable table, FactSet facts)
    {
        var row = table.NewRow();
        row.Set(facts);
        return row;
    }

    /// <summary>The versions of use that the row meets.</summary>
    private static IEnumerable<VersionOnRow> Use(Row row) => Bind(row, row.Table.RulesOn(row.Touched.Topics));

    private static IEnumerable<VersionOnRow> Bind(Row row, IEnumerable<int> rules)
    {
        foreach (var rule in rules)
            for (var version = row.Table.Rules[rule].FirstVersion; version < row.Table.Rules[rule].EndVersion; version++)
                if (new VersionOnRow(row.Table, row, rule, version) is { Binds: not Truth.No } bound)
                    yield return bound;
    }

    private Finding Read(VersionOnRow version) =>
        FindingReader.Read(book, version, tables.AsOn(version, job.Dates, place), Facts, job.Dates.Latest);

    private Derived Known(string measure, ImmutableArray<string> parts) =>
        Facts.Measures.TryGetValue(measure, out var derived)
            ? derived
            : new Derived(Facts.Measure(measure, parts), Derivations.Of(measure, Facts, parts));
}
