using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Editions;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Editions;

/// <summary>An edition as it is drafted and added to the list, from invented changes (derived).</summary>
[Trait("Basis", "derived")]
public sealed class EditionDraftTests
{
    private static readonly Mark At = new("f", 1, 1);
    private static readonly DateOnly Last = new(2026, 11, 1);
    private static readonly DateOnly Later = new(2027, 3, 1);
    private static readonly string Digest = $"sha256:{new string('a', 64)}";

    private const string Head =
        "# yaml-language-server: $schema=../schema/editions.schema.json\n# The states of the book that have a name, oldest first. "
        + "'rulebook edition NAME --since OLD' adds one; its news are edited by hand.\neditions:\n";

    /// <summary>
    /// Of two decided answers the one of days before the last edition was wrong, and one of no day; one that was open was not.
    /// </summary>
    [Fact]
    public void Past_answers_that_were_wrong_come_first_then_the_law_then_evidence_each_in_one_sentence() =>
        EditionDraft
            .News(
                new ChangeReport(
                    [
                        Change(Later, null, Pathway.NoCertificate),
                        Change(Last, Later, Pathway.NoCertificate),
                        Change(null, Later, Pathway.NoCertificate),
                        Change(null, null, Pathway.NoCertificate, "four-wheel drive"),
                        Change(Last, null, Pathway.Prohibited),
                    ],
                    [
                        new(RemarkKind.Evidence, "xa", "The nation", "xa/code", null, "is known better.", At),
                        new(RemarkKind.Corrected, "xa", "The nation", "xa/ride-height/raise", Last, "past answers were wrong", At),
                        new(RemarkKind.Other, null, "", "plate", Later, "means something else...", At),
                    ]
                ),
                Last
            )
            .Select(news => $"{news.Kind} [{string.Join(' ', news.Places)}] {news.From:yyyy-MM-dd} {news.Text}")
            .ShouldBe([
                "Corrected [xa-n] 2026-11-01 Ride height, every vehicle, from 1 November 2026 until 1 March 2027: allowed "
                    + "without a certificate -> "
                    + "allowed with a certificate.",
                "Corrected [xa-n]  Ride height, every vehicle, before 1 March 2027: allowed without a certificate -> allowed "
                    + "with a certificate.",
                "Corrected [xa-n]  Ride height, four-wheel drive yes or no, on every day: allowed without a certificate -> "
                    + "allowed with a certificate.",
                "Corrected [xa] 2026-11-01 xa/ride-height/raise: past answers were wrong.",
                "Law [xa-n] 2027-03-01 Ride height, every vehicle, from 1 March 2027: allowed without a certificate -> allowed "
                    + "with a certificate.",
                "Law [xa-n] 2026-11-01 Ride height, every vehicle, from 1 November 2026: from allowed without a certificate to "
                    + "not allowed -> "
                    + "allowed with a certificate.",
                "Law [] 2027-03-01 plate: means something else.",
                "Evidence [xa]  xa/code: is known better.",
            ]);

    [Fact]
    public void Without_an_edition_before_no_answer_was_wrong() =>
        EditionDraft
            .News(new ChangeReport([Change(null, null, Pathway.NoCertificate)], []), last: null)
            .ShouldHaveSingleItem()
            .Kind.ShouldBe(NewsKind.Law);

    [Fact]
    public void No_more_than_two_hundred_news_are_drafted() =>
        EditionDraft
            .News(new ChangeReport([.. Enumerable.Repeat(Change(Later, null, Pathway.NoCertificate), 201)], []), Last)
            .Length.ShouldBe(200);

    [Fact]
    public void The_first_edition_begins_the_list_and_the_next_stands_at_its_end()
    {
        var first = EditionDraft.Added(null, new Edition("2026.11.1", new DateOnly(2026, 11, 27), Digest, At));
        var one = $"  - edition: 2026.11.1\n    day: 2026-11-27\n    digest: {Digest}\n";
        first.ShouldBe(Head + one);
        EditionDraft
            .Added(
                first + "\n\n",
                new Edition("2026.11.2", new DateOnly(2026, 11, 28), Digest, At)
                {
                    News =
                    [
                        new(NewsKind.Corrected, ["xa", "xa-n"], Last, "The \"south\" – was wrong."),
                        new(NewsKind.Tool, [], null, "It tells more."),
                    ],
                }
            )
            .ShouldBe(
                Head
                    + one
                    + $"  - edition: 2026.11.2\n    day: 2026-11-28\n    digest: {Digest}\n    news:\n"
                    + "      - { kind: corrected, jurisdictions: [xa, xa-n], from: 2026-11-01, text: \"The \\\"south\\\" – was wrong.\" }\n"
                    + "      - { kind: tool, text: \"It tells more.\" }\n"
            );
    }

    [Fact]
    public void A_list_that_would_not_be_one_is_refused() =>
        Should
            .Throw<InputException>(() => EditionDraft.Added(null, new Edition("spring", Last, Digest, At)))
            .Problems.ShouldHaveSingleItem()
            .Mark.ShouldBe(new Mark("jurisdictions/editions.yaml", 4, 14));

    private static AnswerChange Change(DateOnly? from, DateOnly? until, Pathway worst, params string[] facts) =>
        new(
            "xa-n",
            "The north",
            "ride-height",
            "Ride height",
            from,
            until,
            [.. facts.Select(fact => new VehicleWord(fact, fact, ["yes", "no"]))],
            new Outcome(Pathway.NoCertificate, worst),
            new Outcome(Pathway.Certificate, Pathway.Certificate),
            "xa-n/ride-height/raise",
            At,
            false,
            new ShownJob("", "", Last),
            null
        );
}
