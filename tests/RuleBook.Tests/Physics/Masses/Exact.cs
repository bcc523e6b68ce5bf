using Fractions;
using RuleBook.Units;

namespace RuleBook.Tests.Physics.Masses;

/// <summary>Exact numbers in tests, and comparison with a figure as a source prints it.</summary>
internal static class Exact
{
    internal static Fraction Of(decimal value) => (Fraction)value;

    /// <summary>Rounded to as many decimals as the source prints, it is what the source prints.</summary>
    internal static void ShouldRead(this Fraction? actual, string printed)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : printed.Length - point - 1;
        var expected = point < 0 ? printed : printed.TrimEnd('0').TrimEnd('.');
        Numbers.Show(actual.ShouldNotBeNull(), decimals).ShouldBe(expected);
    }

    internal static void ShouldRead(this Fraction actual, string printed) => ((Fraction?)actual).ShouldRead(printed);

    internal static void ShouldBeExactly(this Fraction? actual, decimal expected) => actual.ShouldBe(Of(expected));

    internal static void ShouldBeExactly(this Fraction actual, decimal expected) => actual.ShouldBe(Of(expected));
}
