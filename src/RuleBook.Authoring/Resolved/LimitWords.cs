using System.Globalization;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Resolved;

/// <summary>
/// Limits and tests in words, each value in the unit of its measure; one that the data writes in another unit is told as written before it.
/// </summary>
internal static class LimitWords
{
    public static string Of(Limit limit, Vocabulary vocabulary) =>
        limit.Kind switch
        {
            LimitKind.None => $"{limit.Measure}: no limit",
            LimitKind.NotEstablished => $"{limit.Measure}: not established",
            _ => $"{limit.Measure}: {Of(limit.Bounds!, vocabulary.Measures[limit.Measure])}",
        };

    public static string Of(Descriptions vehicles, Vocabulary vocabulary) =>
        string.Join("; or else ", vehicles.AnyOf.Select(each => Of(each, vocabulary)));

    public static string Of(Predicate predicate, Vocabulary vocabulary) =>
        predicate.Tests.IsEmpty
            ? "every vehicle"
            : string.Join(
                "; ",
                predicate
                    .Tests.OrderBy(test => test.Fact, StringComparer.Ordinal)
                    .Select(test =>
                        test.Bounds is { } bounds
                            ? $"{test.Fact} {Of(bounds, vocabulary.Measures[test.Fact])}"
                            : $"{test.Fact} {string.Join(" or ", test.OneOf.Order(StringComparer.Ordinal))}"
                    )
            );

    public static string Of(Bounds bounds, Measure measure) =>
        string.Join(
            ", ",
            new[]
            {
                bounds.Lower is { } lower ? $"{(lower.Closed ? "at least" : "over")} {Of(lower, measure)}" : null,
                bounds.Upper is { } upper ? $"{(upper.Closed ? "at most" : "under")} {Of(upper, measure)}" : null,
            }.OfType<string>()
        );

    /// <summary>A day for a date.</summary>
    public static string Of(Bound bound, Measure measure) =>
        measure.IsDate
            ? DateOnly.FromDayNumber((int)bound.Value.ToDecimal()).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            : bound.Show(measure.Unit);
}
