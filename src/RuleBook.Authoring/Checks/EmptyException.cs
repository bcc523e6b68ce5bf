using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An exception without effect.</summary>
internal static class EmptyException
{
    internal static readonly CheckInfo Info = new(
        "empty-exception",
        "an exception changes nothing",
        "It looks as if the rule departed from the one that it takes over, and it does not.",
        "give 'within', 'when', 'provided', 'codes', 'pathway' or 'drop: yes'; or take it out"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Adoptions.SelectMany(pair => pair.Adoption.Exceptions)
            .Concat(book.Versions.SelectMany(pair => pair.Version.Like?.Changes ?? []))
            .Where(change => change.IsEmpty)
            .Select(change => Info.At(change.Mark, $"nothing is said of what changes in the tier '{change.Tier}'"));
}
