using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Pinning;
using RuleBook.Jobs;
using RuleBook.Tables;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>What pinning leaves out, held against the plain way, on a random sample of the changes of the whole book.</summary>
public sealed class ShortcutTests(ITestOutputHelper output)
{
    private static readonly int Seed = Environment.TickCount;
    private readonly Random random = new(Seed);
    private static readonly RuleChange[] Changes = [.. RuleChange.Of(TestBook.Book, _ => true, new Adopters(TestBook.Book))];

    [Fact]
    public void A_change_that_is_shown_to_change_nothing_changes_it_at_no_point_and_any_other_shows_at_the_same_point()
    {
        foreach (var change in Sample(30))
            Told(RuleEffect.Find(TestBook.Book, change)).ShouldBe(Told(RuleEffect.FindPlainly(TestBook.Book, change)), Told(change));
    }

    [Fact]
    public void A_case_notices_a_change_where_it_fails_on_the_whole_changed_book_and_nowhere_else()
    {
        var book = TestBook.Book;
        foreach (var change in Sample(12))
        {
            var places = change.Places.ToHashSet();
            Case[] cases = [.. TestBook.Cases.Where(one => places.Contains(one.Jurisdiction))];
            Case[] named = [.. cases.Where(one => change.Reached.Any(rule => one.Expect.Findings?.ContainsKey(rule) == true))];
            Case[] some = [.. Some(named), .. Some(cases)];

            some.Where(one => change.NoticedByAny([new PreparedCase(book, one)]))
                .Select(one => one.Id)
                .ShouldBe(some.Where(one => !CaseRun.Run(change.Book, one).Passed).Select(one => one.Id), Told(change));
        }
    }

    /// <summary>Every change of the invented book before every case, so that what is kept of one case is there for the next.</summary>
    [Fact]
    public void On_the_invented_book_each_case_notices_the_changes_on_which_it_fails_and_no_other()
    {
        var (book, cases) = (InventedBook.WithSouth, InventedBook.Cases);
        cases.SelectMany(one => CaseRun.Run(book, one).Failures.Select(failure => $"{one.Id}: {failure}")).ShouldBeEmpty();
        PreparedCase[] prepared = [.. cases.Select(one => new PreparedCase(book, one))];
        foreach (var change in RuleChange.Of(book, _ => true, new Adopters(book)))
        {
            var known = new Dictionary<(DecisionTable, JobDates), RulesChanged?>();
            prepared
                .Where(one => one.Notices(change, known))
                .Select(one => one.Case.Id)
                .ShouldBe(cases.Where(one => !CaseRun.Run(change.Book, one).Passed).Select(one => one.Id), Told(change));
        }
    }

    private Case[] Some(Case[] cases) => cases.Length == 0 ? [] : random.GetItems(cases, 8);

    private RuleChange[] Sample(int size)
    {
        output.WriteLine($"seed {Seed}");
        return random.GetItems(Changes, size);
    }

    private static string Told(ChangedPoint? point) =>
        point is null ? "nowhere" : $"{point.Witness.Yaml(TestBook.Book.Vocabulary)}\n{point.Before} -> {point.After}";

    private static string Told(RuleChange change) => $"{change.Mark}: {change.Subject}: {change.What} -> {change.Becomes}";
}
