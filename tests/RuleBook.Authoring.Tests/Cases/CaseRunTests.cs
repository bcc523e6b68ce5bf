using RuleBook.Authoring.Cases;

namespace RuleBook.Authoring.Tests.Cases;

/// <summary>
/// What a case that comes out otherwise says. The answer that the book gives is the minister's release of 20 September 2018 and
/// Queensland's page of fees: 60 mm of suspension need a certificate, for which an approved person issues a certificate of modification and
/// a plate.
/// </summary>
public sealed class CaseRunTests
{
    private const string Papers = "issued: [certificate of modification, modification plate]";

    [Theory]
    [InlineData("verdict: certificate, asks: [], conditions: [], decides: suspension-lift, certifier: approved person, " + Papers)]
    [InlineData("between: [no-certificate, prohibited]", "expected no-certificate to prohibited, got certificate")]
    [InlineData("verdict: undecided", "expected undecided, got certificate")]
    [InlineData("verdict: certificate, asks: [vehicle.seats]", "expected to be asked for vehicle.seats, got nothing")]
    [InlineData("verdict: certificate, conditions: [lane-change-test]", "expected the conditions lane-change-test, got nothing")]
    [InlineData("verdict: certificate, decides: body-lift", "expected body-lift to decide, got suspension-lift")]
    [InlineData("verdict: certificate, certifier: signatory", "expected signatory to certify, got approved person")]
    [InlineData(
        "verdict: certificate, issued: [modification plate]",
        "expected to be issued modification plate, got certificate of modification, modification plate"
    )]
    [InlineData("verdict: certificate, issued: []", "expected to be issued nothing, got certificate of modification, modification plate")]
    [InlineData(
        "findings: { raise-four-wheel-drive: nothing }",
        "expected au-qld/ride-height/raise-four-wheel-drive to give nothing, got certificate"
    )]
    public void What_differs_from_the_expectation_is_told(string expect, params string[] failures)
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "au-qld/ride-height.yaml",
            $$"""
            vehicles: { wagon: { category: MC, four-wheel-drive: yes } }
            cases:
              - id: sixty
                says: 60 mm need a certificate.
                vehicle: wagon
                changes: { modification: { suspension-lift: 60 mm } }
                on: 2026-11-20
                expect: { {{expect}} }
                because: { source: ministers-release-2018-09-20 }
            """
        );

        CaseRun.Run(TestBook.Book, CaseFolder.Load(folder.Path, TestBook.Book).Single()).Failures.ShouldBe(failures);
    }
}
