using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An adoption as on a day without a version.</summary>
internal static class AdoptedNotInForce
{
    internal static readonly CheckInfo Info = new(
        "adopted-not-in-force",
        "a rule is adopted as on a day on which it was not in force",
        "There was nothing to take over.",
        "correct 'as-of', or add the version of that day"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        let rule = book.Book.Rule(pair.Adoption.Rule)
        where rule is not null && !Adopted.Versions(rule, pair.Adoption.AsOf).Any()
        select Info.At(book.Value(pair.Adoption.Mark, "as-of"), $"no version of '{rule.Id}' is in force on that day");
}
