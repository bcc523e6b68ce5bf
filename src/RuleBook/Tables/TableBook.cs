using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>
/// The decision tables of a book. Each is compiled when it is first asked for and then kept: one for a jurisdiction and a stretch of days
/// on which the same versions are in force. Safe for any number of threads.
/// </summary>
public sealed class TableBook
{
    private static readonly ConditionalWeakTable<Book, TableBook> Known = [];

    private readonly Book book;
    private readonly Lazy<ImmutableArray<Moving>> moving;
    private readonly Lazy<ImmutableArray<Moving>> movingInUse;
    private readonly ConcurrentDictionary<string, ImmutableArray<DateOnly>> edges = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<Key, DecisionTable> tables = new();
    private readonly ConcurrentDictionary<(string Rule, int Stretch), DecisionTable> ofRules = new();
    private readonly ConcurrentDictionary<string, DecisionTable> ofVersions = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ImmutableArray<Measure>> naming = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(DecisionTable Table, ulong Topics), ImmutableArray<Measure>> bearing = new();
    private readonly ConcurrentDictionary<string, PredicateTable> scopes = new(StringComparer.Ordinal);

    private TableBook(Book book)
    {
        this.book = book;
        moving = new(() => Moving.Of(book.Vocabulary, ofUse: false));
        movingInUse = new(() => Moving.Of(book.Vocabulary, ofUse: true));
    }

    private enum Kind
    {
        Modification,
        Use,
        UseByRoad,
    }

    /// <summary>The tables of a book, the same whenever it is asked.</summary>
    public static TableBook Of(Book book) => Known.GetValue(book, static book => new TableBook(book));

    /// <summary>
    /// The rules of modification of a jurisdiction as on a day: all three days of a job (work, certification, inspection) are that day.
    /// </summary>
    /// <param name="jurisdiction">Id or alias.</param>
    /// <param name="day">The day.</param>
    /// <exception cref="ArgumentException">The book has no such jurisdiction.</exception>
    public DecisionTable Table(string jurisdiction, DateOnly day) =>
        Table(
            book.Jurisdiction(jurisdiction)
                ?? throw new ArgumentException($"the book has no jurisdiction '{jurisdiction}'", nameof(jurisdiction)),
            JobDates.On(day)
        );

    /// <summary>Whether the rule of a version binds a vehicle of which some facts are known.</summary>
    internal Truth Binds(ResolvedVersion version, FactSet facts)
    {
        var table = ofVersions.GetOrAdd(version.Name, _ => DecisionTable.Of(book.Vocabulary, version));
        var row = table.NewRow();
        row.Set(facts);
        return table.Judge(0, row).Binds;
    }

    /// <summary>The rules of modification that may decide a job with these days.</summary>
    internal DecisionTable Table(Jurisdiction place, JobDates dates) => Table(place, dates, Kind.Modification);

    /// <summary>The rules of use: those that follow the registration, or those that follow the road.</summary>
    internal DecisionTable OfUse(Jurisdiction place, bool byRoad, Jurisdiction decidedBy, JobDates dates) =>
        Table(place, dates, byRoad ? Kind.UseByRoad : Kind.Use, decidedBy);

    /// <summary>
    /// The version as found on the days of a job: what is adopted as amended is looked up on the day that decides, and the table is the
    /// same on many.
    /// </summary>
    internal ResolvedVersion AsOn(VersionOnRow judged, JobDates dates, Jurisdiction place)
    {
        var rule = judged.Table.InForce[judged.Rule];
        if (judged.Version.Adopted is not [{ Moving: true }, ..])
            return judged.Version;
        var days = Edges(book.Jurisdiction(rule.Rule.Jurisdiction)!);
        var stretch = Stretch(days, rule.Days[judged.At - judged.Table.Rules[judged.Rule].FirstVersion]);
        var asOf = dates.For(rule.Rule.DecidedBy ?? place.DecidedBy).FirstOrDefault(day => Stretch(days, day) == stretch, dates.Latest);
        return judged.Version with
        {
            Adopted =
            [
                .. judged.Version.Adopted.Select(
                    (step, i) => judged.Version.Adopted.Take(i + 1).All(each => each.Moving) ? step with { AsOf = asOf } : step
                ),
            ],
        };
    }

    /// <summary>A table of modification of other rules in force, such as those of a changed book with the same words.</summary>
    internal DecisionTable Build(ImmutableArray<RuleInForce> inForce) => TableBuilder.Build(book.Vocabulary, inForce, moving.Value);

    /// <summary>The measures that the vocabulary puts on a topic, in the order in which they are written.</summary>
    internal ImmutableArray<Measure> Naming(string topic) => naming.GetOrAdd(topic, name => [.. book.Vocabulary.Naming(name)]);

    /// <summary>
    /// The measures, but for dates, that bear on some topics of a table, in ordinal order: those that the vocabulary puts on them and those
    /// that their rules limit.
    /// </summary>
    /// <param name="table">A table of the book's words.</param>
    /// <param name="topics">A bit each.</param>
    internal ImmutableArray<Measure> Bearing(DecisionTable table, ulong topics) =>
        bearing.GetOrAdd(
            (table, topics),
            _ =>
                [
                    .. table
                        .Topics.Where((_, topic) => (topics >> topic & 1) != 0)
                        .SelectMany(topic => Naming(topic).Select(measure => measure.Name))
                        .Concat(
                            table
                                .RulesOn(topics)
                                .SelectMany(rule => table.InForce[rule].Candidates)
                                .SelectMany(version => version.Tiers())
                                .SelectMany(tier => tier.Limits)
                                .Where(limit => limit.Kind == LimitKind.Bounded)
                                .Select(limit => limit.Measure)
                        )
                        .Distinct()
                        .Where(book.Vocabulary.Measures.ContainsKey)
                        .Select(name => book.Vocabulary.Measures[name])
                        .Where(measure => !measure.IsDate)
                        .OrderBy(measure => measure.Name, StringComparer.Ordinal),
                ]
        );

    /// <summary>One rule alone as on a day.</summary>
    internal DecisionTable Table(Rule rule, DateOnly day)
    {
        var days = edges.GetOrAdd(rule.Id, _ => DayEdges.Of(book, [rule]));
        return ofRules.GetOrAdd(
            (rule.Id, Stretch(days, day)),
            _ => TableBuilder.Build(book.Vocabulary, [RuleInForce.On(book, rule, [day])], [])
        );
    }

    /// <summary>The vehicles that schemes serve and cautions are for, in a jurisdiction and the nation above it.</summary>
    internal PredicateTable Scopes(Jurisdiction place) =>
        scopes.GetOrAdd(
            place.Id,
            _ =>
            {
                var both = new[] { place, place.Within is { } nation ? book.Jurisdiction(nation) : null }.OfType<Jurisdiction>().ToArray();
                return new PredicateTable(
                    book.Vocabulary,
                    both.SelectMany(each => each.Schemes.Select(scheme => scheme.For).Concat(each.Cautions.Select(caution => caution.When)))
                );
            }
        );

    /// <summary>
    /// The first and the last day of the stretch around a day on which the same versions are in force in a place; an end that is open is
    /// null.
    /// </summary>
    internal (DateOnly? First, DateOnly? Last) Span(Jurisdiction place, DateOnly day)
    {
        var days = Edges(place);
        var at = Stretch(days, day);
        return (at < 1 ? null : days[at], at + 1 >= days.Length ? null : days[at + 1].AddDays(-1));
    }

    private static int Stretch(ImmutableArray<DateOnly> edges, DateOnly? day)
    {
        if (day is not { } known)
            return -2;
        var at = edges.BinarySearch(known);
        return at < 0 ? ~at - 1 : at;
    }

    private DecisionTable Table(Jurisdiction place, JobDates dates, Kind kind, Jurisdiction? decidedBy = null)
    {
        var days = Edges(place);
        var key = new Key(
            place.Id,
            kind,
            (decidedBy ?? place).DecidedBy,
            Stretch(days, dates.Work),
            Stretch(days, dates.Certification),
            Stretch(days, dates.Inspection)
        );
        return tables.TryGetValue(key, out var known) ? known : tables.GetOrAdd(key, Build(place, dates, key));
    }

    private DecisionTable Build(Jurisdiction place, JobDates dates, Key key) =>
        TableBuilder.Build(
            book.Vocabulary,
            [
                .. place
                    .Rules.Where(rule => Is(rule, key.Kind))
                    .OrderBy(rule => key.Kind == Kind.Modification ? rule.Id : "", StringComparer.Ordinal)
                    .Select(rule => RuleInForce.On(book, rule, dates.For(rule.DecidedBy ?? key.DecidedBy))),
            ],
            key.Kind == Kind.Modification ? moving.Value : movingInUse.Value
        );

    /// <summary>The days on which something changes in a place.</summary>
    private ImmutableArray<DateOnly> Edges(Jurisdiction place) =>
        edges.GetOrAdd(place.Id, static (_, of) => DayEdges.Of(of.book, of.place.Rules), (book, place));

    private bool Is(Rule rule, Kind kind)
    {
        var ofUse = book.Vocabulary.Topics[rule.Topic].OfUse;
        return kind == Kind.Modification ? !ofUse : ofUse && rule.GovernedByTravel == (kind == Kind.UseByRoad);
    }

    private readonly record struct Key(string Place, Kind Kind, string? DecidedBy, int Work, int Certification, int Inspection);
}
