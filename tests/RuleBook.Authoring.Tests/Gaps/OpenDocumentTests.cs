using RuleBook.Answers;
using RuleBook.Authoring.Gaps;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Gaps;

/// <summary>
/// Which document to open first. Basis: the second round of evidence on the four places without a lift limit, which names for each the
/// document that would hold it.
/// </summary>
public sealed class OpenDocumentTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("au-wa", "The Road Traffic (Vehicles) Regulations 2014, consolidation 01-at0-00")]
    [InlineData("au-nt", "Information bulletin V32(lv)")]
    [InlineData("au-tas", "The modification specifications set by the Registrar")]
    [InlineData("au-act", "The territory's Light Vehicle Inspection Manual")]
    public void Each_place_without_a_lift_limit_has_one_document_to_open_first(string place, string document)
    {
        var first = Ranked(TestBook.Book, place)[0];
        first.Document.ShouldNotBeNull();
        first.Document.ShouldStartWith(document);
        first.Ask.ShouldNotBeEmpty();
        first.LookFor.ShouldContain(what => what.Contains("raising or lowering a four-wheel drive", StringComparison.Ordinal));
        first.Edit.ShouldContain(mark => mark.File == $"jurisdictions/{place}/ride-height.yaml");
    }

    [Fact]
    public void What_decides_most_answers_by_itself_comes_first()
    {
        var ranked = TypicalJobs.Rank(TestBook.Book, Day, TestBook.Book.Jurisdictions);
        ranked.Select(open => open.Alone).ShouldBeInOrder(SortDirection.Descending);
        ranked.ShouldAllBe(open => open.Alone <= open.Answers && open.Answers > 0);
        ranked.Select(open => open.Place.Id).ShouldNotContain("au"); // nobody registers a vehicle with the nation
    }

    /// <summary>
    /// Five vehicles with ten changes in Australia, two with six in New Zealand and in Canada, two with seven in Germany; a nation that the
    /// sample does not name has none.
    /// </summary>
    [Theory]
    [InlineData("au-qld", 50)]
    [InlineData("nz", 12)]
    [InlineData("de", 14)]
    [InlineData("ca-qc", 12)]
    public void A_place_has_every_vehicle_of_its_nation_with_every_change_on_the_day_that_is_asked(string place, int count)
    {
        var jobs = TypicalJobs.Of(TestBook.Book, TestBook.Book.Jurisdiction(place)!, Day).ToArray();
        jobs.Length.ShouldBe(count);
        jobs.ShouldAllBe(job => job.RegisteredIn == place && job.Dates.Latest == Day);
        TypicalJobs.Of(InventedBook.Book, InventedBook.Book.Jurisdiction("xa-n")!, Day).ShouldBeEmpty();
    }

    /// <summary>A limit written down where it was open takes its document from the list.</summary>
    [Fact]
    public void A_document_that_was_read_and_written_down_is_open_no_more()
    {
        var read = Changes.EditedBook.Of(
            path => path == "jurisdictions/au-nt/ride-height.yaml",
            _ =>
                """
                    jurisdiction: au-nt
                    topic: ride-height
                    rules:
                      - rule: raise-four-wheel-drive
                        title: An invented limit, for this test alone
                        versions:
                          - from: 2002-11-01
                            sources: [ { cite: bulletin-list } ]
                            tiers: [ { pathway: no-certificate, within: { total-lift: { at-least: -200 mm, at-most: 500 mm } } } ]
                            beyond: prohibited
                    """.ReplaceLineEndings("\n")
        );
        var before = Ranked(TestBook.Book, "au-nt").Sum(open => open.Alone);
        var after = Ranked(read, "au-nt").Sum(open => open.Alone);
        after.ShouldBeLessThan(before / 2);
    }

    private static System.Collections.Immutable.ImmutableArray<OpenDocument> Ranked(Book book, string place) =>
        TypicalJobs.Rank(book, Day, [book.Jurisdiction(place)!]);
}
