using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A grace that ends, of a rule for which nobody says which day decides.</summary>
internal static class GraceEndUntold
{
    internal static readonly CheckInfo Info = new(
        "grace-end-untold",
        "the end of what is spared is not told",
        "Where it is not said which day decides, an answer cannot say that what is spared today is forbidden later.",
        "say 'decided-by: inspection' where the source binds what is on the road, whenever it was altered",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from rule in place.Rules
        where (rule.DecidedBy ?? place.DecidedBy) is null
        from version in rule.Versions
        from problem in Stated(rule, version).Concat(Adopted(book, version))
        select problem;

    private static IEnumerable<Problem> Stated(Rule rule, RuleVersion version) =>
        from grace in Grace.Of(version)
        let end = Grace.End(rule, version)
        where end is not null
        select Info.At(grace.Test.Mark, $"what '{grace.Tier.Name}' spares ends {From(end)}, and which day decides is not said");

    /// <summary>Taken over as amended, the end comes along.</summary>
    private static IEnumerable<Problem> Adopted(Inspected book, RuleVersion version)
    {
        if (
            version.Content is Adoption { AsOf: null } adoption
            && book.Book.Rule(adoption.Rule) is { } rule
            && rule.Versions.FirstOrDefault(each => Grace.Of(each).Any() && Grace.End(rule, each) is not null) is { } sparing
        )
            yield return Info.At(
                book.Value(adoption.Mark, "rule"),
                $"what '{adoption.Rule}' spares ends {From(Grace.End(rule, sparing)!)}, and which day decides is not said"
            );
    }

    private static string From(RuleVersion version) => version.From is { } day ? $"with the version from {day}" : "with a later version";
}
