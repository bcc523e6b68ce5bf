using System.Collections.Immutable;
using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using static RuleBook.Cli.Tests.TextByHand;

namespace RuleBook.Cli.Tests;

/// <summary>Editions and documents as data, and the news of an edition as a page; places, figures and days are invented.</summary>
public sealed class ListedDataTests
{
    private static readonly Book Named = IsleBook with
    {
        Editions =
        [
            new Edition("2026.1.1", new DateOnly(2026, 1, 5), "sha256:1", Line7) { News = [new(NewsKind.Law, ["xa"], null, "First.")] },
            new Edition("2026.11.2", new DateOnly(2026, 11, 20), "sha256:2", Line7)
            {
                News =
                [
                    new(NewsKind.Tool, [], null, "A *star* and `code` stay as they are written."),
                    new(NewsKind.Law, ["xa", "xb"], new DateOnly(2027, 1, 1), "50 mm are free."),
                    new(NewsKind.Corrected, ["xa"], null, "75 mm was wrong."),
                    new(NewsKind.Law, [], null, "Trailers are judged."),
                ],
            },
        ],
    };

    [Fact]
    public void The_news_of_the_last_edition_are_a_page_by_consequence_in_which_nothing_is_markup() =>
        EditionsText
            .Markdown(Named)
            .ShouldBe(
                """
                # Edition 2026.11.2 of the book, 20 November 2026

                `sha256:2`

                ## Past answers corrected

                - xa: 75 mm was wrong.

                ## Answers that change

                - xa, xb: 50 mm are free.
                - Trailers are judged.

                ## The tool

                - A \*star\* and \`code\` stay as they are written.

                """
            );

    [Fact]
    public void A_book_without_an_edition_has_no_news_and_says_so()
    {
        EditionsText.Markdown(IsleBook).ShouldBe("");
        Told(page => EditionsText.Write(page, IsleBook))
            .ShouldBe(
                """
                This book is no edition; it has none yet.
                To cite it: RuleBook, book 0123456789ab, sha256:0123456789abcdef
                """
            );
    }

    [Fact]
    public void Editions_are_listed_the_latest_first_and_the_book_is_cited_by_its_own() =>
        Told(page => EditionsText.Write(page, Named with { Digest = "sha256:2" }))
            .ShouldBe(
                """
                This is edition 2026.11.2 of the book.
                To cite it: RuleBook, edition 2026.11.2, sha256:2

                Edition 2026.11.2, 20 November 2026
                sha256:2
                  - Past answers corrected: xa: 75 mm was wrong.
                  - Answers that change: xa, xb: 50 mm are free.
                  - Answers that change: Trailers are judged.
                  - The tool: A *star* and `code` stay as they are written.

                Edition 2026.1.1, 5 January 2026
                sha256:1
                  - Answers that change: xa: First.
                """
            );

    [Fact]
    public void Editions_as_data_stand_as_they_are_kept_the_oldest_first() =>
        Same(
            EditionsJson.Write(Named),
            """
            {
              "book": "sha256:0123456789abcdef", "edition": null,
              "editions": [
                { "edition": "2026.1.1", "day": "2026-01-05", "digest": "sha256:1",
                  "news": [ { "kind": "law", "jurisdictions": ["xa"], "from": null, "text": "First." } ] },
                { "edition": "2026.11.2", "day": "2026-11-20", "digest": "sha256:2",
                  "news": [
                    { "kind": "tool", "jurisdictions": [], "from": null, "text": "A *star* and `code` stay as they are written." },
                    { "kind": "law", "jurisdictions": ["xa", "xb"], "from": "2027-01-01", "text": "50 mm are free." },
                    { "kind": "corrected", "jurisdictions": ["xa"], "from": null, "text": "75 mm was wrong." },
                    { "kind": "law", "jurisdictions": [], "from": null, "text": "Trailers are judged." } ] } ]
            }
            """
        );

    [Fact]
    public void Documents_as_data_say_where_each_is_to_be_written_down()
    {
        ImmutableArray<OpenDocument> found =
        [
            new(Isle, "The act", "The isle's office", ["the height"], [Line7], 9, 4),
            new(Isle, null, "The port", [], [], 2, 0),
        ];
        Same(
            GapsText.Json(IsleBook, Day, found),
            """
            {
              "on": "2026-11-25", "book": "sha256:0123456789abcdef",
              "documents": [
                { "jurisdiction": "xa", "document": "The act", "ask": "The isle's office", "answers": 9, "alone": 4,
                  "settles": ["the height"], "edit": ["jurisdictions/xa/ride-height.yaml:7:3"] },
                { "jurisdiction": "xa", "document": null, "ask": "The port", "answers": 2, "alone": 0, "settles": [], "edit": [] } ]
            }
            """
        );
    }

    private static void Same(string told, string byHand)
    {
        using var one = JsonDocument.Parse(told);
        using var other = JsonDocument.Parse(byHand);
        JsonElement.DeepEquals(one.RootElement, other.RootElement).ShouldBeTrue(told);
    }
}
