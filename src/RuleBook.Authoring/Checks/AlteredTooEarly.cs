using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>A tier for alterations made before its version, of a rule that judges each by the version of its day of work.</summary>
internal static class AlteredTooEarly
{
    internal static readonly CheckInfo Info = new(
        "altered-too-early",
        "a tier spares alterations that its version never judges",
        "Where the day of the work picks the version, an earlier alteration is judged by the version before.",
        "take the tier out, or say 'decided-by: inspection' where the source binds what was done before, too",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from rule in place.Rules
        where (rule.DecidedBy ?? place.DecidedBy) == "work"
        from version in rule.Versions
        where version.From is not null
        from tier in version.Content is Stated stated ? stated.Tiers : []
        from test in tier.When.Tests
        where test.Fact == JobFacts.Altered && test.Bounds?.Upper is { } last && Before(last, version.From!.Earliest)
        let upper = test.Bounds!.Upper!
        let only = upper.Closed && upper.Value == version.From!.Earliest.DayNumber
        select Info.At(
            test.Mark,
            $"the version is from {version.From} and goes by the day of the work: "
                + $"'{tier.Name}' is {(only ? "met on that day alone" : "never met")}"
        );

    private static bool Before(Bound last, DateOnly from) => last.Value <= from.DayNumber;
}
