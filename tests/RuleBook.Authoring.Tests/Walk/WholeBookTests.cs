using RuleBook.Authoring.Walk;

namespace RuleBook.Authoring.Tests.Walk;

/// <summary>The book of this repository walked whole: there should be no fault.</summary>
public sealed class WholeBookTests(ITestOutputHelper output)
{
    [Fact]
    public void The_book_has_an_answer_everywhere_and_none_gets_easier_when_a_measure_grows()
    {
        var report = BookWalk.Walk(TestBook.Book);

        output.WriteLine(
            $"{report.Rules} rules, {report.Spans} stretches of days, {report.Cells} cells, {report.Tiers} tiers reached, "
                + $"{report.Partial} comparisons of partial with full knowledge"
        );
        report.Cells.ShouldBeGreaterThan(100_000);
        report
            .Faults.Where(fault => !IsOfHeavyVehicles(fault))
            .Select(fault => $"{fault.Mark}: {fault.Kind} {fault.Rule}: {fault.Text}\n{fault.Witness?.Yaml(TestBook.Book.Vocabulary)}")
            .ShouldBeEmpty();
    }

    /// <summary>
    /// Vehicles of more than 4.5 t (NB2, MD4, and any whose GVM says so: Vehicle Standard (Australian Design Rule - Definitions and Vehicle
    /// Categories) 2005) are outside the rules for light vehicles; where a place has no rule of its own for them, an answer says that
    /// nobody judged.
    /// </summary>
    private static bool IsOfHeavyVehicles(WalkFault fault) =>
        fault is { Kind: FaultKind.NotCovered, Witness: { } vehicle }
        && (
            vehicle.Words.GetValueOrDefault("category") is "MD4" or "NB2"
            || vehicle.Measures.Any(pair => pair.Key.Name == "gvm" && pair.Value > 4500)
        );
}
