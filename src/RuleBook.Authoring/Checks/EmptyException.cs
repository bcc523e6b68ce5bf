using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An exception without effect.</summary>
internal static class EmptyException
{
    internal static readonly CheckInfo Info = new(
        "empty-exception",
        "an exception changes nothing",
        "It looks as if the jurisdiction departed from the adopted rule, and it does not.",
        "give 'within', 'provided' or 'drop: yes'; or take it out");

    internal static IEnumerable<Problem> Find(Inspected book) => book.Adoptions
        .SelectMany(pair => pair.Adoption.Exceptions)
        .Where(change => change is { Tier: not null, Limits.IsEmpty: true, Provided: null, Dropped: false })
        .Select(change => Info.At(change.Mark, $"nothing is said of what changes in the tier '{change.Tier}'"));
}
