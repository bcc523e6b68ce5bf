using Fractions;
using RuleBook.Text;

namespace RuleBook.Units;

/// <summary>Reads amounts of a job in base units; <c>unknown</c> is as good as left out.</summary>
internal static class Amounts
{
    /// <summary>Zero or more.</summary>
    public static Fraction? Amount(this Fields fields, string key, Dimension dimension) =>
        Read(fields, key, dimension, value => !value.IsNegative, "is negative", "zero or more");

    /// <summary>More than zero.</summary>
    public static Fraction? AboveZero(this Fields fields, string key, Dimension dimension) =>
        Read(fields, key, dimension, value => value.IsPositive, "is not above zero", "more than zero");

    /// <summary>Of either sign.</summary>
    public static Fraction? Signed(this Fields fields, string key, Dimension dimension) => Read(fields, key, dimension, _ => true, "", "");

    public static Fraction? Mass(this Fields fields, string key) => fields.Amount(key, Dimension.Mass);

    public static Fraction? Length(this Fields fields, string key) => fields.Amount(key, Dimension.Length);

    /// <summary>The amounts under nested keys, and an end to them.</summary>
    public static T? Group<T>(this Fields fields, string key, Func<Fields, T> read)
        where T : class
    {
        if (fields.Nested(key) is not { } inner)
            return null;
        var value = read(inner);
        inner.Done();
        return value;
    }

    private static Fraction? Read(Fields fields, string key, Dimension dimension, Func<Fraction, bool> allowed, string wrong, string right)
    {
        if (fields.Node(key) is not { } node || node is Scalar { Text: "unknown" })
            return null;
        if (fields.QuantityOf(node, dimension) is not { } quantity)
            return null;
        if (allowed(quantity.Base))
            return quantity.Base;
        fields.Add("negative", node.Mark, $"'{quantity}' {wrong}", $"{key} is {right}");
        return null;
    }
}
