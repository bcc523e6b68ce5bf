using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An alias given to two.</summary>
internal static class AliasClash
{
    internal static readonly CheckInfo Info = new(
        "alias-clash",
        "two things have the same alias",
        "An old link would lead to either of them.",
        "leave the alias with the one that had the name"
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        Repeats
            .Of(Alias.All(book), alias => $"{alias.Kind} {alias.Name}")
            .Select(alias => Info.At(alias.Mark, $"'{alias.Name}' is already an alias of another {alias.Kind}"));
}
