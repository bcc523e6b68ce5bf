using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Prohibited beyond the tiers, which none of the citations carries.</summary>
internal static class ProhibitionWithoutSource
{
    internal static readonly CheckInfo Info = new(
        "prohibition-without-source",
        "no citation carries a prohibition",
        "That an easier pathway ends at a figure does not say that nothing is possible beyond it.",
        "name 'beyond' under 'carries' of the citation that says so, or write 'beyond: not-established'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Versions
        where Parts.CanBeTraced(book, pair.Rule, pair.Version) && pair.Version.Content is Stated { Beyond: Pathway.Prohibited }
        where new Evidence(book.Book, [new WrittenVersion(pair.Rule, pair.Version)]).Of(Part.Beyond).Basis is null
        select Info.At(book.Key(pair.Version.Mark, "beyond"), "no citation carries that it is prohibited beyond these limits");
}
