using Fractions;
using RuleBook.Text;

namespace RuleBook.Units;

/// <summary>Reads dates and quantities from the keys of a mapping.</summary>
internal static class FieldValues
{
    /// <summary>In base units: a million kilometres, a billion tonnes.</summary>
    private static readonly Fraction Largest = 1_000_000_000_000;

    public static PartialDate? Partial(this Fields fields, string key) => fields.Read(key, fields.PartialOf);

    public static PartialDate RequiredPartial(this Fields fields, string key)
    {
        if (!fields.Has(key))
            fields.Missing(key);
        return fields.Partial(key) ?? PartialDate.Of(DateOnly.MinValue);
    }

    public static Quantity? Quantity(this Fields fields, string key, Dimension dimension) =>
        fields.Read(key, value => fields.QuantityOf(value, dimension));

    public static PartialDate? PartialOf(this Fields fields, Node value)
    {
        if (fields.TextOf(value) is not { } text)
            return null;
        if (PartialDate.TryParse(text, out var date))
            return date;
        fields.Add(
            "not-a-date",
            value.Mark,
            $"'{text}' is not a date",
            "write 2018-10-26, 2016-12, 2013, 2009~ or \"[2018-05-15..2019-01-31]\""
        );
        return null;
    }

    public static Quantity? QuantityOf(this Fields fields, Node value, Dimension dimension)
    {
        if (fields.TextOf(value) is not { } text)
            return null;
        if (!Units.Quantity.TryParse(text, out var quantity, out var error))
        {
            fields.Add("not-a-quantity", value.Mark, $"'{text}': {error}", "");
            return null;
        }

        if (Fraction.Abs(quantity.Base) > Largest)
        {
            fields.Add(
                "not-a-quantity",
                value.Mark,
                $"'{text}' is more than anything on a vehicle measures",
                "check the digits and the unit"
            );
            return null;
        }

        if (quantity.Dimension == dimension)
            return quantity;
        var units =
            dimension == Dimension.Money
                ? "the three letters of ISO 4217"
                : string.Join(", ", Unit.All.Where(unit => unit.Dimension == dimension).Select(unit => unit.Symbol));
        fields.Add("wrong-unit", value.Mark, $"'{text}' is not a {dimension.ToString().ToLowerInvariant()}", $"use one of {units}");
        return null;
    }
}
