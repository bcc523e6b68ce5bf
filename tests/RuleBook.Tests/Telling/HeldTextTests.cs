using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>What papers from elsewhere count for, as it is told. Derived, on a scheme of a scenario of our own.</summary>
public sealed class HeldTextTests
{
    private const string Paper = """{ "paper": "certificate", "issued-in": "au-b", "number": "47", "day": "2021-03" }""";

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("", "certificate 47 (State B, 2021-03): not established what it counts for; ask Office A")]
    [InlineData(
        """ "reregistering": "Inspect it.", """,
        "certificate 47 (State B, 2021-03): not taken over unseen; what is asked on moving: --full"
    )]
    public void A_paper_from_elsewhere_never_counts_by_itself(string scheme, string told) => Row(scheme, Paper).ShouldBe($"Held|{told}");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_paper_of_the_place_speaks_for_its_day_only() =>
        Row("", Paper.Replace("au-b", "au-a", StringComparison.Ordinal))
            .ShouldBe("Held|certificate 47 (State A, 2021-03): issued here, speaks for that day only");

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_asked_on_moving_whom_to_ask_and_the_steps_in_their_order_stand_together()
    {
        var book = Schemed(""" "reregistering": "Inspect it.", """);
        List<string> told = [.. FixedWordsTests.All(Assessor.Assess(book, Moved(book, Paper)))];
        var at = told.IndexOf("Papers held, and what they count for in State A:");
        told[at + 1]
            .ShouldBe("- The verdict is that of the rules of the place for the vehicle as it is; no paper from elsewhere makes it easier.");
        told.Skip(at + 2)
            .Take(5)
            .ShouldBe([
                "- certificate 47 (State B, 2021-03): what State A asks of a vehicle that comes from elsewhere: Inspect it.",
                "- ask: Office A, before the move",
                "- then, in order:",
                "- ask first",
                "- inspect",
            ]);
    }

    private static string Row(string scheme, string paper)
    {
        var book = Schemed(scheme);
        var job = Moved(book, paper);
        var page = new Told();
        new FirstScreen(page, book.Vocabulary).Write(Assessor.Assess(book, job), job, null, "");
        return page.Lines.Single(line => line.StartsWith("Held|", StringComparison.Ordinal));
    }

    private static Job Moved(Book book, string paper) => Read(book, $$"""{{Lift("60 mm")}}, "held": [ {{paper}} ] """);

    private static Book Schemed(string scheme) =>
        Book(
            Rule("raise", Since("2012-01-01", Tiers)),
            (
                "jurisdictions/au-a/certification",
                $$"""
                { "topic": "certification", "schemes": [ { "scheme": "engineers", "title": "Engineers of A", "versions": [
                  { "from": "2013-01-01", "certifier": "engineer", {{scheme}}
                    "steps": [ { "text": "inspect", "pathways": [ "certificate" ] }, { "text": "ask first", "before-work": "yes",
                    "pathways": [ "certificate" ] } ],
                    "sources": [ { "cite": "law" } ] } ] } ] }
                """
            )
        );
}
