using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A range whose ends exclude one another.</summary>
internal static class BoundsContradict
{
    internal static readonly CheckInfo Info = new(
        "bounds-contradict",
        "nothing can lie within a range",
        "The tier or rule would never hold.",
        "the lower end must not be above the upper one; at-least and at-most include the figure itself, over and under do not"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var tiers = book.TierLists.SelectMany(tiers => tiers).ToArray();
        var limits = tiers
            .SelectMany(tier => tier.Limits)
            .Concat(book.Adoptions.SelectMany(pair => pair.Adoption.Exceptions).SelectMany(change => change.Limits));
        var tests = tiers
            .Select(tier => tier.When)
            .Concat(book.Rules.SelectMany(rule => rule.For.AnyOf))
            .Concat(book.Book.Jurisdictions.SelectMany(place => place.Schemes).Select(scheme => scheme.For))
            .Concat(book.Book.Jurisdictions.SelectMany(place => place.Cautions).Select(caution => caution.When))
            .SelectMany(predicate => predicate.Tests);
        return limits
            .Select(limit => (limit.Measure, limit.Bounds, limit.Mark))
            .Concat(tests.Select(test => (test.Fact, test.Bounds, test.Mark)))
            .Where(range => range.Bounds is not null && Ranges.IsEmpty(range.Bounds))
            .Select(range => Info.At(range.Mark, $"nothing can lie within this range of {range.Item1}"));
    }
}
