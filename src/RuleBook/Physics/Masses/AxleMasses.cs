using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>A mass as the two axles carry it. A negative share lightens that axle.</summary>
/// <param name="FrontKg">What the front axle carries, kg.</param>
/// <param name="RearKg">What the rear axle carries, kg.</param>
public sealed record AxleMasses(Fraction FrontKg, Fraction RearKg)
{
    /// <summary>Nothing on either axle.</summary>
    public static AxleMasses Zero { get; } = new(Fraction.Zero, Fraction.Zero);

    /// <summary>Front and rear together, kg.</summary>
    public Fraction TotalKg => FrontKg + RearKg;

    /// <summary>What one axle carries, kg.</summary>
    public Fraction On(Axle axle) => axle == Axle.Front ? FrontKg : RearKg;

    /// <summary>Axle by axle sum.</summary>
    public static AxleMasses operator +(AxleMasses left, AxleMasses right) => Add(left, right);

    /// <summary>Axle by axle difference.</summary>
    public static AxleMasses operator -(AxleMasses left, AxleMasses right) => Subtract(left, right);

    /// <summary>Axle by axle sum.</summary>
    public static AxleMasses Add(AxleMasses left, AxleMasses right) => new(left.FrontKg + right.FrontKg, left.RearKg + right.RearKg);

    /// <summary>Axle by axle difference.</summary>
    public static AxleMasses Subtract(AxleMasses left, AxleMasses right) => new(left.FrontKg - right.FrontKg, left.RearKg - right.RearKg);
}
