using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>What one mass leaves for another under several limits at once, as corners of a piecewise-linear line.</summary>
internal static class TradeOff
{
    /// <summary>Why raising the GVM leaves the trailer less (common practice, no source).</summary>
    public const string WhyGcmStays =
        "a GCM rests on the driveline (engine output, cooling, transmission), not on the springs: a higher GVM lets the vehicle carry "
        + "a larger share of the same total";

    /// <summary>Name of the limit of the combination.</summary>
    public const string Gcm = "GCM";

    /// <summary>Name of the limit of the vehicle.</summary>
    public const string Gvm = "GVM";

    /// <summary>Name of the limit of the trailer.</summary>
    public const string Tow = "tow rating";

    /// <summary>Name of the limit on the trailer's axles.</summary>
    public const string Gtm = "GTM";

    /// <summary>Name of the limit on the trailer alone.</summary>
    public const string Atm = "ATM";

    /// <summary>Name of the limit of the rear axle.</summary>
    public const string RearAxle = "rear axle";

    /// <summary>Name of the limit on the ball.</summary>
    public const string Ball = "ball load";

    /// <summary>
    /// What the trailer's axles may carry at each mass of the hitched vehicle: the least of GCM - vehicle, tow rating - ball load, and what
    /// the trailer itself is rated for, GTM and ATM - ball load. Raising the GVM with the GCM unchanged only moves the end of the line. The
    /// trailer weighed alone has the ball load more.
    /// </summary>
    /// <param name="fromKg">The lightest vehicle looked at, ball load included, kg.</param>
    /// <param name="gvmKg">The GVM, re-rated or not, kg; the line ends there.</param>
    /// <param name="gcmKg">The GCM, kg.</param>
    /// <param name="towKg">The tow rating, held against the trailer alone, kg.</param>
    /// <param name="ballKg">Ball load, kg.</param>
    /// <param name="gtmKg">The trailer's GTM, kg; null where it is not known.</param>
    /// <param name="atmKg">The trailer's ATM, kg; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass is negative, or the lightest vehicle is above the GVM.</exception>
    public static ImmutableArray<TradeOffPoint> TrailerAgainstVehicle(
        Fraction fromKg,
        Fraction gvmKg,
        Fraction gcmKg,
        Fraction towKg,
        Fraction ballKg,
        Fraction? gtmKg = null,
        Fraction? atmKg = null
    )
    {
        Must.NotBeNegative(fromKg, nameof(fromKg));
        Must.NotBeNegative(ballKg, nameof(ballKg));
        Must.NotBeNegative(gvmKg - fromKg, nameof(gvmKg));
        var lines = ImmutableArray.Create(new LimitLine(Gcm, gcmKg, -1), new LimitLine(Tow, towKg - ballKg, 0));
        if (gtmKg is { } gtm)
            lines = lines.Add(new LimitLine(Gtm, gtm, 0));
        if (atmKg is { } atm)
            lines = lines.Add(new LimitLine(Atm, atm - ballKg, 0));
        return Corners(lines, fromKg, gvmKg, Gvm);
    }

    /// <summary>
    /// What may still be put over the rear axle at each ball load: the lesser of what the GVM leaves, falling by 1 kg a kg of ball
    /// load, and what the rear axle leaves, falling by 1 + d/L kg, because the ball stands behind it.
    /// </summary>
    /// <param name="unhitched">The loaded vehicle without ball load, axle by axle.</param>
    /// <param name="gvmKg">The GVM, kg.</param>
    /// <param name="rearAxleKg">Rating of the rear axle, kg.</param>
    /// <param name="ballLimitKg">The most on the ball, kg; the line ends there.</param>
    /// <param name="ballBehindRearAxleMm">Centre of the ball behind the rear axle, mm.</param>
    /// <param name="wheelbaseMm">Wheelbase, mm; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit on the ball is negative, or the wheelbase not above zero.</exception>
    public static ImmutableArray<TradeOffPoint> RearLoadAgainstBall(
        AxleMasses unhitched,
        Fraction gvmKg,
        Fraction rearAxleKg,
        Fraction ballLimitKg,
        Fraction ballBehindRearAxleMm,
        Fraction wheelbaseMm
    )
    {
        Must.NotBeNegative(ballLimitKg, nameof(ballLimitKg));
        var perKg = LeverArm.OnAxles(1, ballBehindRearAxleMm, wheelbaseMm).RearKg;
        return Corners(
            [new LimitLine(Gvm, gvmKg - unhitched.TotalKg, -1), new LimitLine(RearAxle, rearAxleKg - unhitched.RearKg, -perKg)],
            Fraction.Zero,
            ballLimitKg,
            Ball
        );
    }

    /// <summary>The lower edge of the lines between two ends; it stops where nothing is left, and is empty when nothing ever is.</summary>
    private static ImmutableArray<TradeOffPoint> Corners(ImmutableArray<LimitLine> lines, Fraction from, Fraction to, string atEnd)
    {
        var nothing = new LimitLine("", Fraction.Zero, Fraction.Zero);
        var places = lines
            .SelectMany(line => lines.Append(nothing).Select(line.Crosses))
            .Append(from)
            .Append(to)
            .OfType<Fraction>()
            .Where(x => x >= from && x <= to)
            .Distinct()
            .Order();
        var corners = places.Select(x => new TradeOffPoint(x, lines.Min(line => line.At(x)), Binding(x)));
        return [.. corners.Where(point => point.LeftKg >= Fraction.Zero && IsCorner(point))];

        ImmutableArray<string> Binding(Fraction x) =>
            [
                .. lines
                    .Where(line => line.At(x) == lines.Min(other => other.At(x)))
                    .Select(line => line.Limit)
                    .Concat(x == to ? [atEnd] : [])
                    .Order(StringComparer.Ordinal),
            ];

        bool IsCorner(TradeOffPoint point) =>
            point.GivenKg == from || point.GivenKg == to || point.LeftKg.IsZero || point.Binding.Length > 1;
    }
}
