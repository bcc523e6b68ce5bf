using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>How ranges and predicates lie to one another.</summary>
internal static class Ranges
{
    /// <summary>Whether nothing can lie in the range.</summary>
    internal static bool IsEmpty(Bounds bounds) =>
        bounds is { Lower: { } lower, Upper: { } upper }
        && (lower.Value > upper.Value || (lower.Value == upper.Value && !(lower.Closed && upper.Closed)));

    /// <summary>Whether all of <paramref name="inner"/> lies in <paramref name="outer"/>.</summary>
    internal static bool Inside(Bounds inner, Bounds outer) => AtLeast(inner.Lower, outer.Lower) && AtMost(inner.Upper, outer.Upper);

    /// <summary>Whether the two have nothing in common.</summary>
    internal static bool Apart(Bounds one, Bounds other) =>
        IsEmpty(new Bounds(one.Lower, other.Upper)) || IsEmpty(new Bounds(other.Lower, one.Upper));

    /// <summary>Whether every vehicle for which <paramref name="inner"/> holds meets <paramref name="outer"/> too.</summary>
    internal static bool Implies(Predicate inner, Predicate outer) =>
        outer.Tests.All(wide =>
            inner.Tests.Any(narrow =>
                narrow.Fact == wide.Fact
                && (
                    wide.Bounds is null
                        ? narrow.Bounds is null && narrow.OneOf.All(word => wide.OneOf.Contains(word))
                        : narrow.Bounds is not null && Inside(narrow.Bounds, wide.Bounds)
                )
            )
        );

    /// <summary>Whether no vehicle can meet both.</summary>
    internal static bool Exclude(Predicate one, Predicate other) => one.Tests.Any(first => other.Tests.Any(second => Apart(first, second)));

    /// <summary>Whether the two are of one fact and nothing passes both.</summary>
    internal static bool Apart(FactTest one, FactTest other) =>
        one.Fact == other.Fact
        && (one.Bounds, other.Bounds) switch
        {
            ({ } left, { } right) => Apart(left, right),
            (null, null) => !one.OneOf.Intersect(other.OneOf).Any(),
            _ => false,
        };

    private static bool AtLeast(Bound? inner, Bound? outer) =>
        outer is null
        || (inner is not null && (inner.Value > outer.Value || (inner.Value == outer.Value && (outer.Closed || !inner.Closed))));

    private static bool AtMost(Bound? inner, Bound? outer) =>
        outer is null
        || (inner is not null && (inner.Value < outer.Value || (inner.Value == outer.Value && (outer.Closed || !inner.Closed))));
}
