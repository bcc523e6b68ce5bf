using Fractions;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Figures as the trade reads them: whole millimetres and kilograms, unless less than one of them decides.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Limit">What it is held against.</param>
/// <param name="Apart">How far they are apart, never negative.</param>
internal sealed record Precisely(string Value, string Limit, string Apart)
{
    /// <param name="value">The figure.</param>
    /// <param name="limit">What it is held against.</param>
    /// <param name="usual">Decimals where the difference is at least one.</param>
    public static Precisely Of(Fraction value, Fraction limit, int usual = 0)
    {
        var apart = value > limit ? value - limit : limit - value;
        var decimals = Math.Max(
            usual,
            !apart.IsZero && apart < 1 ? (apart < new Fraction(1, 10) ? 3 : 1)
                : limit.Denominator.IsOne ? 0
                : 1
        );
        return new Precisely(
            Numbers.Show(value, decimals),
            Numbers.Show(limit, decimals),
            Numbers.Show(decimals == 0 ? Apart0(value, limit) : apart, decimals)
        );
    }

    /// <summary>Whole figures differ by what they show.</summary>
    private static Fraction Apart0(Fraction value, Fraction limit)
    {
        var whole = Numbers.RoundHalfUp(value);
        return whole > limit ? whole - limit : limit - whole;
    }
}
