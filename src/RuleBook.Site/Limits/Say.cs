using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Limits;

/// <summary>Limits and what they hang on, in words.</summary>
internal static class Say
{
    public static string Bounds(Measure measure, Bounds bounds)
    {
        if (measure.IsDate)
            return Dates(bounds);
        if (bounds is { Lower: { Closed: true } low, Upper: { Closed: true } high } && !low.Value.IsZero && low.Value == -high.Value)
            return $"at most {high.Show(measure.Unit)} up or down";
        var label = new Cell(measure, bounds.Lower, bounds.Upper).Label;
        return bounds is { Lower: { } from, Upper: { } to } && from.Value == to.Value ? $"exactly {label}" : label;
    }

    public static string Limit(Measure measure, Limit limit) =>
        limit.Kind switch
        {
            LimitKind.None => "no limit",
            LimitKind.NotEstablished => "not established",
            _ => Bounds(measure, limit.Bounds!),
        };

    /// <summary>For which vehicles: <c>four-wheel drive: yes; electronic stability control: no</c>; empty for all.</summary>
    public static string When(Vocabulary words, params IEnumerable<Predicate> predicates) =>
        string.Join(
            "; ",
            predicates.SelectMany(predicate => predicate.Tests).Select(test => When(words, test)).Where(text => text.Length > 0).Distinct()
        );

    /// <summary>The vehicles that a rule binds, and what opens a tier of it.</summary>
    public static string When(Vocabulary words, Descriptions vehicles, Tier? tier) =>
        string.Join("; or else ", vehicles.AnyOf.Select(each => When(words, tier is null ? [each] : [each, tier.When])));

    private static string When(Vocabulary words, FactTest test)
    {
        if (test.Bounds is { } bounds)
            return words.Measures.TryGetValue(test.Fact, out var measure) ? $"{measure.Title} {Bounds(measure, bounds)}" : test.Fact;
        if (!words.Facts.TryGetValue(test.Fact, out var fact))
            return $"{test.Fact} {string.Join(" or ", test.OneOf)}";
        if (test.OneOf.Length == fact.Values.Length)
            return "";
        return $"{fact.Title}: {string.Join(", ", test.OneOf)}";
    }

    private static string Dates(Bounds bounds) =>
        (bounds.Lower, bounds.Upper) switch
        {
            ({ } from, null) => $"{(from.Closed ? "from" : "after")} {Day(from)}{(from.Closed ? " on" : "")}",
            (null, { } to) => $"{(to.Closed ? "up to" : "before")} {Day(to)}",
            ({ } from, { } to) => $"{(from.Closed ? "from" : "after")} {Day(from)} {(to.Closed ? "up to" : "to before")} {Day(to)}",
            _ => "on any day",
        };

    private static string Day(Bound bound) => Phrases.Day(DateOnly.FromDayNumber((int)bound.Value.ToDecimal()));

    /// <summary>A short word for a pathway, for cells and charts.</summary>
    public static string Short(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "without a certificate",
            Pathway.Certificate => "with a certificate",
            Pathway.Approval => "with approval first",
            _ => "not allowed",
        };

    public static string Amount(Fractions.Fraction value, Unit unit) => Phrases.Amount(value, unit);
}
