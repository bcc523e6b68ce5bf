using System.Text.Json.Nodes;
using RuleBook.Law;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>
/// A figure as the law writes it, and where its document is found. Derived, on a scenario of our own; an inch is 25.4 mm.
/// </summary>
[Trait("Basis", "derived")]
public sealed class AsWrittenTests
{
    private const string Address = "https://example.org/law";

    /// <summary>Two documents of one rule: the law has an address, the account has none.</summary>
    private static readonly Book WithAddress = Book(
        Rule(
            "raise",
            """
            { "from": "2012-01-01", "sources": [ { "cite": "law", "clause": "7", "carries": [ "limits", "from" ] }, { "cite": "account" } ],
              "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "2 in", "body-lift": "50 mm" } } ], "beyond": "prohibited" }
            """
        ),
        (
            "jurisdictions/au-a/sources",
            $$"""
            { "sources": [ { "source": "law", "title": "The law", "publisher": "p", "url": "{{Address}}", "read-as": "primary",
              "checked": "2025-11", "recheck-after": "2027-11-25" }, { "source": "account", "title": "An account", "publisher": "q",
              "read-as": "secondary", "checked": "2025-11-25", "recheck-after": "2027-11-25" } ] }
            """
        )
    );

    [Fact]
    public void A_limit_in_inches_is_told_as_written_beside_the_millimetres_and_one_in_millimetres_is_not()
    {
        var limits = Finding(Lift("40 mm"))["limits"]!.AsArray();
        var inches = limits.Single(limit => $"{limit!["measure"]}" == "suspension-lift")!;
        ($"{inches["limit"]}", $"{inches["unit"]}", $"{inches["bound"]}", $"{inches["written"]}", $"{inches["margin"]}").ShouldBe(
            ("50.8", "mm", "at-most", "2 in", "10.8")
        );
        limits.Single(limit => $"{limit!["measure"]}" == "body-lift")!.AsObject().ContainsKey("written").ShouldBeFalse();
    }

    [Fact]
    public void Each_document_is_told_with_its_clause_how_it_is_known_and_its_address_where_it_has_one() =>
        Finding(Lift("40 mm"))["sources"]!
            .AsArray()
            .Select(source => source!.ToJsonString())
            .ShouldBe([
                """{"cite":"au-a/law","title":"The law","clause":"7","read-as":"primary","checked":"2025-11","carries":["limits","from"]"""
                    + ""","url":"https://example.org/law"}""",
                """{"cite":"au-a/account","title":"An account","clause":null,"read-as":"secondary","checked":"2025-11-25","url":null}""",
            ]);

    [Fact]
    public void The_address_stands_below_the_document_in_the_whole_answer()
    {
        var page = new Told();
        new AssessmentText(page).Write(Assess(WithAddress, Lift("40 mm")));
        var sources = page.Lines.SkipWhile(line => line != "Sources:").TakeWhile(line => line != "Bear in mind:").ToArray();
        sources.Length.ShouldBe(4);
        sources[1].ShouldStartWith("- The law, 7 (");
        sources[2].ShouldBe(Address);
        sources[3].ShouldStartWith("- An account (");
    }

    private static JsonNode Finding(string job) => JsonNode.Parse(AssessmentJson.Write(Assess(WithAddress, job)))!["findings"]![0]!;
}
