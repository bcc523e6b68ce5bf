using System.Globalization;
using System.Numerics;
using Fractions;
using RuleBook.Physics.Tyres;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>How the tables in these tests turn into exact values.</summary>
internal static class Inputs
{
    public static Fraction Exact(string number)
    {
        var point = number.IndexOf('.', StringComparison.Ordinal);
        var digits = BigInteger.Parse(number.Replace(".", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return point < 0 ? new Fraction(digits) : new Fraction(digits, BigInteger.Pow(10, number.Length - point - 1));
    }

    public static OverallDiameter Handbook(string size) => OverallDiameter.Of(TyreSize.Parse(size), DiameterBasis.Handbook);

    public static OverallDiameter Nominal(string size) => OverallDiameter.Of(TyreSize.Parse(size), DiameterBasis.Nominal);

    public static TyreGrowth Growth(string fitted, DiameterBasis basis, params string[] placard) =>
        TyreGrowth.Of(TyreSize.Parse(fitted), placard.Select(TyreSize.Parse), basis);
}
