using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>
/// An adoption from elsewhere of a rule that binds none of the vehicles which the adopting rule binds; within a jurisdiction it is how the
/// same is said of two kinds.
/// </summary>
internal static class AdoptsOtherVehicles
{
    internal static readonly CheckInfo Info = new(
        "adopts-other-vehicles",
        "a rule for other vehicles is adopted",
        "Its limits were made for vehicles that this rule never meets.",
        "adopt the rule for the same vehicles, or correct 'for'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        let theirs = book.Book.Rule(pair.Adoption.Rule)
        where theirs is not null && theirs.Jurisdiction != pair.Rule.Jurisdiction
        let apart = pair.Rule.For.AnyOf.SelectMany(own => theirs.For.AnyOf.Select(other => Apart(own, other))).ToArray()
        where apart.All(fact => fact is not null)
        select Info.At(
            book.Value(pair.Adoption.Mark, "rule"),
            $"'{pair.Adoption.Rule}' is for other vehicles: by {string.Join(", ", apart.Distinct())} no vehicle is bound by both"
        );

    /// <summary>The fact by which no vehicle meets both; null where some vehicle may.</summary>
    private static string? Apart(Predicate own, Predicate other) =>
        own.Tests.FirstOrDefault(test => other.Tests.Any(their => Ranges.Apart(test, their)))?.Fact;
}
