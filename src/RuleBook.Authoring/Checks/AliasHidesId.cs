using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An alias that is a live id.</summary>
internal static class AliasHidesId
{
    internal static readonly CheckInfo Info = new(
        "alias-hides-id",
        "an alias is the id of something in use",
        "An id never vanishes and is never used again: the alias would never be reached.",
        "take the alias out, or rename what has taken the name"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var live = Alias.Live(book);
        return Alias
            .All(book)
            .Where(alias => live.Contains($"{alias.Kind} {alias.Name}"))
            .Select(alias => Info.At(alias.Mark, $"'{alias.Name}' is the name of a {alias.Kind} in use"));
    }
}
