using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A rule adopted as of a day on which it spares earlier alterations for a time: the adoption spares them for good.</summary>
internal static class GraceKept
{
    internal static readonly CheckInfo Info = new(
        "grace-kept",
        "an adoption keeps a grace that has an end",
        "As it stood on a day the rule spares what was altered earlier, and nothing ends that here: it stays permitted for good.",
        "adopt it as 'amended', or drop the tier: except: [ { tier: NAME, drop: yes } ]",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in book.Adoptions
        where pair.Adoption.AsOf is not null
        let rule = book.Book.Rule(pair.Adoption.Rule)
        where rule is not null
        from version in Adopted.Versions(rule, pair.Adoption.AsOf)
        let end = Grace.End(rule, version)
        where end is not null
        from grace in Grace.Of(version)
        where !pair.Adoption.Exceptions.Any(change => change.Dropped && change.Tier == grace.Tier.Name)
        select Info.At(
            book.Value(pair.Adoption.Mark, "as-of"),
            $"'{grace.Tier.Name}' of '{pair.Adoption.Rule}' spares earlier alterations for a time, and here for good"
        );
}
