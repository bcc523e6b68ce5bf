using RuleBook.Authoring.Resolved;

namespace RuleBook.Authoring.Tests.Resolved;

/// <summary>The committed texts against the book, and what the text shows of small books (derived).</summary>
public sealed class ResolvedTextTests
{
    private const string Sources = "sources: [{cite: law}]";

    [Fact]
    public void The_resolved_texts_are_those_of_the_book() =>
        ResolvedFolder
            .Stale(ResolvedFolder.Within(TestBook.Folder), TestBook.Book)
            .ShouldBeEmpty("run 'rulebook resolved --write' and look at what changed");

    /// <summary>By hand, <c>tests/invented-book/held/resolved</c>: dates known in part, an adoption, a proposal, a dispute.</summary>
    [Theory]
    [InlineData("xa")]
    [InlineData("xa-n")]
    public void Every_rule_of_an_invented_place_is_told_whole_from_each_day_on_which_it_changes(string place) =>
        ResolvedText
            .Of(InventedBook.Book, InventedBook.Book.Jurisdiction(place)!)
            .ShouldBe(InventedBook.Held(Path.Combine("resolved", $"{place}.txt")));

    [Fact]
    public void A_change_of_an_adopted_rule_shows_in_the_text_of_the_adopting_jurisdiction()
    {
        Text("50 mm").ShouldNotBe(Text("51 mm"));

        static string Text(string limit)
        {
            var book = SmallBook.Of(
                ("au", RideHeight($"tiers: [{{pathway: no-certificate, within: {{total-lift: {limit}}}}}], beyond: prohibited")),
                ("au-qld", RideHeight("adopts: {rule: au/ride-height/raise, as-of: amended}"))
            );
            return ResolvedText.Of(book, book.Jurisdiction("au-qld")!);
        }

        static string RideHeight(string content) =>
            $"{{topic: ride-height, rules: [{{rule: raise, title: Raising, versions: [{{from: 2012-01-01, {Sources}, {content}}}]}}]}}";
    }

    [Fact]
    public void A_new_wording_of_a_note_does_not_change_the_text() => Text("old words").ShouldBe(Text("new words"));

    [Fact]
    public void The_text_of_a_jurisdiction_that_is_gone_goes_with_it()
    {
        using var folder = new TemporaryFolder();
        folder.Write("au-gone.txt", "limits of a place that the book has no more");
        var book = SmallBook.WithVersions($"- {{from: 2012-01-01, {Sources}, not-regulated: no rule}}");
        ResolvedFolder.Refresh(folder.Path, book, TestContext.Current.CancellationToken).ShouldContain("au-gone.txt");
        Directory
            .GetFiles(folder.Path)
            .Select(Path.GetFileName)
            .Order()
            .ShouldBe(book.Jurisdictions.Select(place => $"{place.Id}.txt").Order());
        ResolvedFolder.Stale(folder.Path, book).ShouldBeEmpty();
    }

    private static string Text(string note)
    {
        var book = SmallBook.WithVersions($"- {{from: 2012-01-01, {Sources}, not-regulated: no rule, note: {note}}}");
        return ResolvedText.Of(book, book.Jurisdiction("au-qld")!);
    }
}
