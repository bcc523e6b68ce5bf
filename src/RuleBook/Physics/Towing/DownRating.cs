using Fractions;
using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Towing;

/// <summary>A maker's advice to load the vehicle less as the ball load grows. The law looks at the stated ratings.</summary>
/// <param name="LessKg">What the maker takes off the GVM at this ball load, kg; null where the table ends before it.</param>
/// <param name="Check">The hitched vehicle against the GVM so lowered; null where it cannot be told.</param>
internal sealed record DownRating(Fraction? LessKg, LoadCheck? Check)
{
    /// <summary>What kind of statement this is.</summary>
    public const string Advisory = "the vehicle maker's advice, not a limit of the law, which looks at the stated masses and ratings";

    /// <summary>
    /// Reads the table at a ball load: the first row that reaches it, so that a load between two rows takes the stricter.
    /// </summary>
    /// <param name="table">The maker's rows; their order does not matter.</param>
    /// <param name="ballKg">Ball load, kg.</param>
    /// <param name="vehicleKg">The hitched vehicle on its own axles, kg.</param>
    /// <param name="gvmKg">The GVM that the maker states, kg.</param>
    internal static DownRating Of(IEnumerable<DownRatingRow> table, Fraction ballKg, Fraction? vehicleKg, Fraction? gvmKg)
    {
        var row = table.Where(row => row.BallUpToKg >= ballKg).MinBy(row => row.BallUpToKg);
        var check =
            gvmKg - row?.LessKg is { } lowered && vehicleKg is { } vehicle
                ? new LoadCheck(
                    "advised-gvm",
                    "vehicle against the GVM that its maker advises at this ball load",
                    vehicle,
                    lowered,
                    "vehicle.down-rating"
                )
                : null;
        return new DownRating(row?.LessKg, check);
    }
}
