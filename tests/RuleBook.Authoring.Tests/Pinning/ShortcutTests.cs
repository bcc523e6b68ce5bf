using RuleBook.Authoring.Pinning;

namespace RuleBook.Authoring.Tests.Pinning;

/// <summary>What pinning leaves out, held against the plain way, on a random sample of the changes of the whole book.</summary>
public sealed class ShortcutTests(ITestOutputHelper output)
{
    private static readonly RuleChange[] Changes = [.. RuleChange.Of(TestBook.Book, _ => true, new Adopters(TestBook.Book))];

    [Fact]
    public void A_change_that_is_shown_to_change_nothing_changes_it_at_no_point_and_any_other_shows_at_the_same_point()
    {
        foreach (var change in Sample(60))
            Told(RuleEffect.Find(TestBook.Book, change)).ShouldBe(Told(RuleEffect.FindPlainly(TestBook.Book, change)), Told(change));
    }

    private RuleChange[] Sample(int size)
    {
        var seed = Environment.TickCount;
        output.WriteLine($"seed {seed}");
        return new Random(seed).GetItems(Changes, size);
    }

    private static string Told(ChangedPoint? point) =>
        point is null ? "nowhere" : $"{point.Witness.Yaml(TestBook.Book.Vocabulary)}\n{point.Before} -> {point.After}";

    private static string Told(RuleChange change) => $"{change.Mark}: {change.Subject}: {change.What} -> {change.Becomes}";
}
