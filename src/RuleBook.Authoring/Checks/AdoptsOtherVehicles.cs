using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

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
        let apart = pair.Rule.For.Tests.FirstOrDefault(own => theirs.For.Tests.Any(other => other.Fact == own.Fact && Apart(own, other)))
        where apart is not null
        select Info.At(
            book.Value(pair.Adoption.Mark, "rule"),
            $"'{pair.Adoption.Rule}' is for other vehicles: by {apart.Fact} no vehicle is bound by both"
        );

    private static bool Apart(FactTest one, FactTest other) =>
        (one.Bounds, other.Bounds) switch
        {
            ({ } left, { } right) => Below(left.Upper, right.Lower) || Below(right.Upper, left.Lower),
            (null, null) => !one.OneOf.Intersect(other.OneOf).Any(),
            _ => false,
        };

    private static bool Below(Bound? upper, Bound? lower) =>
        upper is not null
        && lower is not null
        && (upper.Value < lower.Value || (upper.Value == lower.Value && !(upper.Closed && lower.Closed)));
}
