using System.Collections.Immutable;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Walk;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>What the search for differences leaves out, held against judging single points, on random changes of the whole book.</summary>
public sealed class DifferingCellsTests(ITestOutputHelper output)
{
    private static readonly int Seed = Environment.TickCount;
    private static readonly RuleChange[] Changes = [.. RuleChange.Of(TestBook.Book, _ => true, new Adopters(TestBook.Book))];
    private readonly Random random = new(Seed);

    [Fact]
    public void Points_at_which_no_test_differs_are_judged_alike_and_every_difference_of_a_vehicle_is_found()
    {
        output.WriteLine($"seed {Seed}");
        foreach (var change in random.GetItems(Changes, 12))
        foreach (var stretch in RuleOnDay.Of(TestBook.Book, change.Book, change.Rule.Id))
        {
            var vocabulary = TestBook.Book.Vocabulary;
            var space = new Space(vocabulary, stretch.Rule.Jurisdiction, stretch.Day, [.. stretch.Old, .. stretch.Now]);
            var at = new PointRow(vocabulary, space.Axes, [stretch.Old, stretch.Now]);
            var cells = DifferingCells.Between(at.Table, at.Table.Rules[..1], at.Table.Rules[1..]);
            var groups = Candidates.Of(vocabulary, vocabulary.Topics[change.Rule.Topic], Slice(stretch.Old), Slice(stretch.Now));
            foreach (var words in space.Words)
            {
                at.Put(words);
                var differences = new HashSet<(Outcome?, Outcome?)>();
                foreach (var point in random.GetItems(space.Points.AsSpan(), 100))
                {
                    at.Put(point);
                    var (old, now) = (Given(0), Given(1));
                    if (old != now)
                    {
                        differences.Add((old, now));
                        (cells?.Any(at.Row.Cells)).ShouldNotBe(false, $"{change.Mark}: {change.What} -> {change.Becomes}");
                    }
                }

                groups
                    .Count(group => group.Words.Count == words.Count && group.Words.All(words.Contains))
                    .ShouldBeGreaterThanOrEqualTo(differences.Count, $"{change.Mark}: {change.What} -> {change.Becomes}");
            }

            Outcome? Given(int rule) => at.Table.Judge(rule, at.Row) is { Binds: not Truth.No } judged ? judged.Outcome : null;

            Slice Slice(ImmutableArray<InForce.ResolvedVersion> versions) =>
                new(stretch.Rule.Jurisdiction, change.Rule.Topic, stretch.Day, [versions]);
        }
    }

    /// <summary>A limit that nobody has established is never known to be kept or broken, also where it alone differs.</summary>
    [Fact]
    public void Where_a_limit_is_no_longer_established_every_row_is_looked_at_and_the_limit_stays_unknown()
    {
        static string Free(string limit) =>
            $"- {{from: 2012-01-01, sources: [{{cite: law}}], tiers: [{{pathway: no-certificate, within: {{suspension-lift: {limit}}}}}], "
            + "beyond: prohibited}";
        var table = TableBuilder.Build(TestBook.Book.Vocabulary, [InForce(Free("none")), InForce(Free("not-established"))], []);
        var row = table.NewRow().Cells.ToArray();

        DifferingCells.Between(table, table.Rules[..1], table.Rules[1..])!.Within([.. row]).ShouldHaveSingleItem().ShouldBe(row);

        static RuleInForce InForce(string versions)
        {
            var book = SmallBook.WithVersions(versions);
            return RuleInForce.On(book, book.Jurisdiction("au-qld")!.Rules.Single(), [new DateOnly(2020, 1, 1)]);
        }
    }
}
