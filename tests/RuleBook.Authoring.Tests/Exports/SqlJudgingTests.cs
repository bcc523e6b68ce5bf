using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using RuleBook.Authoring.Exports;
using RuleBook.Authoring.Tests.Cases;
using RuleBook.Authoring.Tests.Proof;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Exports;

/// <summary>
/// The exported tables and query, run by DuckDB, give the verdicts of the evaluator, row by row. RULEBOOK_RANDOM_VEHICLES sets how many
/// random ones, RULEBOOK_RANDOM_SEED where to begin; what differs is counted and listed.
/// </summary>
public sealed class SqlJudgingTests(ITestOutputHelper output)
{
    private const int Chunk = 20_000;

    internal static readonly int Vehicles = Number("RULEBOOK_RANDOM_VEHICLES", 3_000);
    internal static readonly int Seed = Number("RULEBOOK_RANDOM_SEED", 20_261_127);

    [Fact]
    public void The_query_gives_every_case_of_the_book_the_verdict_of_the_evaluator()
    {
        var book = TestBook.Book;
        var rulings = new Dictionary<DecisionTable, Ruling>(ReferenceEqualityComparer.Instance);
        var vehicles = CaseFilesTests
            .Cases.Value.Values.Select(one =>
            {
                var place = book.Jurisdiction(one.Job.RegisteredIn)!;
                var ruling = Ruling.Of(book, place, one.Job.Dates);
                if (!rulings.TryGetValue(ruling.Table, out var known))
                    rulings[ruling.Table] = known = ruling;
                return new SqlVehicle(
                    one.Id,
                    known,
                    JobFacts.Of(one.Job, book.Vocabulary, one.Job.Dates.For(place.DecidedBy), DiameterBasis.Handbook)
                );
            })
            .ToArray();

        vehicles.Length.ShouldBeGreaterThan(500);
        Compare(book.Vocabulary, rulings.Values, vehicles);
    }

    [Fact]
    public void The_query_gives_random_vehicles_in_every_jurisdiction_the_verdict_of_the_evaluator()
    {
        var (book, day) = (TestBook.Book, new DateOnly(2026, 11, 27));
        var rulings = book.Jurisdictions.Select(place => Ruling.On(book, place, day)).ToArray();
        ImmutableArray<ImmutableArray<ResolvedVersion>>[] rules =
        [
            .. rulings.Select(ruling => ruling.Table.RuleIds.Select(id => Resolver.Resolve(book, book.Rule(id)!, day)).ToImmutableArray()),
        ];
        for (var first = 0; first < Vehicles; first += Chunk)
            Compare(
                book.Vocabulary,
                rulings,
                [
                    .. Enumerable
                        .Range(first, Math.Min(Chunk, Vehicles - first))
                        .Select(at =>
                        {
                            var random = new Random(unchecked(Seed + at));
                            var place = random.Next(rulings.Length);
                            var facts = AsWritten(new RandomFacts(book.Vocabulary, rules[place], random).Facts);
                            return new SqlVehicle(
                                $"{at}",
                                rulings[place],
                                at % 3 == 0 ? facts : LittleChanged(book.Vocabulary, facts, random)
                            );
                        }),
                ]
            );
    }

    [Fact]
    public void The_query_gives_random_vehicles_before_random_rules_the_verdict_of_the_evaluator()
    {
        for (var at = 0; at < Math.Max(1, Vehicles / 1_500); at++)
        {
            var random = new Random(unchecked(Seed + at));
            var (book, day) = (RandomBook.Of(random), new DateOnly(2026, 1, 1));
            var ruling = Ruling.On(book, book.Jurisdictions[0], day);
            var rules = ruling.Table.RuleIds.Select(id => Resolver.Resolve(book, book.Rule(id)!, day)).ToImmutableArray();
            Compare(
                book.Vocabulary,
                [ruling],
                [
                    .. Enumerable
                        .Range(0, 200)
                        .Select(vehicle => new SqlVehicle(
                            $"{vehicle}",
                            ruling,
                            AsWritten(new RandomFacts(book.Vocabulary, rules, random).Facts)
                        )),
                ]
            );
        }
    }

    /// <summary>As vehicles mostly are: of what a job can change a few things are changed.</summary>
    private static FactSet LittleChanged(Vocabulary vocabulary, FactSet facts, Random random) =>
        vocabulary
            .Measures.Values.Where(measure => measure.IfAbsent is not null && random.Next(20) > 0)
            .Aggregate(
                facts.Without(
                    vocabulary
                        .Measures.Values.Where(measure => measure is { IfAbsent: null, IsDate: false } && random.Next(20) > 0)
                        .Select(measure => measure.Name)
                ),
                (known, measure) => known.With(measure.Name, measure.IfAbsent!.Value, "")
            );

    /// <summary>The vehicle as a table of decimals holds it: both sides are given the same.</summary>
    internal static FactSet AsWritten(FactSet facts) =>
        facts with
        {
            Measures = facts.Measures.ToDictionary(
                pair => pair.Key,
                pair =>
                    TestBook.Book.Vocabulary.Measures.GetValueOrDefault(pair.Key) is { IsDate: true }
                        ? pair.Value
                        : pair.Value with
                        {
                            Value = new Interval(Rounded(pair.Value.Value.Low), Rounded(pair.Value.Value.High)),
                        }
            ),
        };

    private static Fraction? Rounded(Fraction? value) =>
        value is { } known ? Fraction.FromString(Decimals.Of(known), CultureInfo.InvariantCulture) : null;

    private void Compare(Vocabulary vocabulary, IEnumerable<Ruling> rulings, SqlVehicle[] vehicles)
    {
        using var sql = new SqlVerdicts(vocabulary, rulings);
        var given = sql.Judge(vehicles);
        given.Count.ShouldBe(vehicles.Length);
        var (differ, excused, wider, open) = (new List<string>(), 0, 0, 0);
        foreach (var vehicle in vehicles)
        {
            var row = vehicle.Ruling.Table.NewRow();
            row.Set(vehicle.Facts);
            var (judged, completed) = (vehicle.Ruling.Table.Judge(row), vehicle.Ruling.Table.Complete(row));
            var verdict = given[vehicle.Name] ?? new Outcome(Pathway.NoCertificate, Pathway.NoCertificate); // nothing touched
            if (verdict.Best > completed.Best || verdict.Worst < completed.Worst || verdict != judged)
            {
                if (
                    vehicle.Facts.Measures.Values.Any(measure =>
                        new[] { measure.Value.Low, measure.Value.High }.Any(end => end is { } known && !Decimals.IsExact(known))
                    )
                )
                    excused++;
                differ.Add($"{vehicle.Name} in {vehicle.Ruling.Place}: SQL {verdict}, evaluator {judged}, completed {completed}");
            }

            if (!completed.Decided)
                open++;
            if (verdict != completed)
                wider++;
        }

        output.WriteLine(
            $"{vehicles.Length} vehicles, {open} undecided; {differ.Count} differ, {excused} of them with a fraction that does not "
                + $"end; {wider} wider than every value tried"
        );
        differ.ShouldBeEmpty();
    }

    private static int Number(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var number) ? number : usual;
}
