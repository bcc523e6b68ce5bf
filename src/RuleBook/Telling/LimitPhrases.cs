using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The range of a limit and how the job stands to it, in the trade's words: <c>50 mm up or down: 20 mm left</c>.</summary>
internal static class LimitPhrases
{
    /// <summary>The vehicles that a rule binds only where it names them: they are not among all those of a rule that does not.</summary>
    public static IEnumerable<string> OnlyWhereNamed(Vocabulary vocabulary) =>
        vocabulary
            .Facts.Values.Where(fact => !fact.WhereNamed.IsEmpty)
            .OrderBy(fact => fact.Name, StringComparer.Ordinal)
            .Select(fact => $"A rule binds these only where it names them: {fact.Title} {string.Join(", ", fact.WhereNamed)}.");

    /// <summary>The range of a limit that has one.</summary>
    public static string Range(LimitCheck check) => Range(check.Limit.Bounds!, check.Measure);

    /// <summary>The range, <c>50 mm</c> for at most that, <c>under 50 mm</c>, <c>50 mm up or down</c>, <c>50 mm down</c>.</summary>
    public static string Range(Bounds bounds, Measure measure)
    {
        var unit = measure.Unit;
        return (bounds.Lower, bounds.Upper) switch
        {
            ({ } lower, { } upper) when lower.Value == upper.Value => upper.Value.IsZero ? "none at all" : $"exactly {upper.Show(unit)}",
            ({ } lower, { } upper) when lower.Value == -upper.Value && Closed(lower, upper) => $"{upper.Show(unit)} up or down",
            ({ } lower, { } upper) when lower.Value.IsNegative && upper.Value.IsPositive && Closed(lower, upper) =>
                $"{upper.Show(unit)} up, {Down(lower, unit)}",
            ({ } lower, { } upper) when Closed(lower, upper) && upper.Show(unit) == Phrases.Amount(upper.Value, unit) =>
                $"{Numbers.Show(lower.Value / unit.ToBase)} to {upper.Show(unit)}",
            ({ } lower, { } upper) when Closed(lower, upper) => $"{lower.Show(unit)} to {upper.Show(unit)}",
            ({ } lower, { } upper) => $"{End(lower, false, unit)}, {End(upper, true, unit)}",
            ({ } lower, null) => End(lower, false, unit),
            (null, { } upper) => End(upper, true, unit),
            _ => "none",
        };
    }

    /// <summary>What is left, or by how much it is passed, with its colon; empty where neither can be told.</summary>
    public static string Standing(LimitCheck check)
    {
        if (check.Margin is null)
            return check.Holds switch
            {
                Truth.Yes => ": kept",
                Truth.No => ": not kept",
                _ => ": open",
            };
        if (check.Holds == Truth.Yes)
            return TightestLimits.IsAway(check) ? ": kept" : $": {Apart(check)} left";
        if (check.Margin.Value.IsZero)
            return ": must not be reached";
        return check.IsUpper && check.Bound!.Value.IsNegative
            ? ": not lowered so far"
            : $": {Apart(check)} too {(check.IsUpper ? "much" : Low(check))}";
    }

    /// <summary>
    /// A figure of the job beside its limit: as the limit is written too where it is short in that unit, <c>29 in (736.6 mm)</c>.
    /// </summary>
    /// <param name="shown">The figure in the unit of the measure.</param>
    /// <param name="value">The same, exact, in the base unit.</param>
    /// <param name="check">The limit.</param>
    internal static string AsWritten(string shown, Fraction value, LimitCheck check)
    {
        var unit = check.Measure.Unit;
        return
            check.Bound?.Written is { Unit: var written }
            && written != unit
            && value / written.ToBase is var amount
            && (amount * 1000).Denominator.IsOne
            ? $"{Numbers.Show(amount)} {written.Symbol} ({shown} {unit.Symbol})"
            : $"{shown} {unit.Symbol}";
    }

    private static string Apart(LimitCheck check) =>
        AsWritten(Figures(check).Apart, Fraction.Abs(check.Value.Exact!.Value - check.Bound!.Value), check);

    /// <summary>
    /// The value, its nearest limit and how far they are apart, as the trade reads them; only where the value is known and there is a
    /// limit.
    /// </summary>
    internal static Precisely Figures(LimitCheck check)
    {
        var unit = check.Measure.Unit;
        return Precisely.Of(check.Value.Exact!.Value / unit.ToBase, check.Bound!.Value / unit.ToBase, unit.Symbol is "mm" or "kg" ? 0 : 2);
    }

    private static string Low(LimitCheck check) => check.Value.Exact is { IsNegative: true } ? "low" : "little";

    private static string End(Bound bound, bool upper, Unit unit) =>
        (upper, bound.Closed, bound.Value.IsNegative) switch
        {
            (false, true, true) => Down(bound, unit),
            (true, _, true) => $"{(bound.Closed ? "at least" : "more than")} {Phrases.Amount(-bound.Value, unit)} down",
            (true, true, _) => bound.Show(unit),
            (true, false, _) => $"under {bound.Show(unit)}",
            (false, true, _) => $"at least {bound.Show(unit)}",
            (false, false, true) => $"less than {Phrases.Amount(-bound.Value, unit)} down",
            _ => $"over {bound.Show(unit)}",
        };

    private static string Down(Bound bound, Unit unit) => $"{Phrases.Amount(-bound.Value, unit)} down";

    private static bool Closed(Bound lower, Bound upper) => lower.Closed && upper.Closed;
}
