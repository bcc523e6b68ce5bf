using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>Where the GVM and the seats part a vehicle category from its neighbours.</summary>
/// <param name="Category">The category.</param>
/// <param name="Family">
/// Categories of one family differ by GVM and seats alone, so that a re-rating leads from one to another; null for none.
/// </param>
/// <param name="GvmOverKg">The GVM is above this, kg; null for no lower bound.</param>
/// <param name="GvmUpToKg">The GVM is no more than this, kg; null for no upper bound.</param>
/// <param name="SeatsFrom">Fewest seats, the driver's counted; null for no lower bound.</param>
/// <param name="SeatsUpTo">Most seats; null for no upper bound.</param>
/// <param name="Sources">Where it comes from.</param>
public sealed record CategoryBounds(
    string Category,
    string? Family,
    Fraction? GvmOverKg,
    Fraction? GvmUpToKg,
    int? SeatsFrom,
    int? SeatsUpTo,
    ImmutableArray<CitedSource> Sources
)
{
    /// <summary>The bounds of the GVM in words.</summary>
    internal string GvmWords =>
        (GvmOverKg, GvmUpToKg) switch
        {
            ({ } over, { } upTo) => $"a GVM over {Numbers.Show(over)} kg and up to {Numbers.Show(upTo)} kg",
            ({ } over, null) => $"a GVM over {Numbers.Show(over)} kg",
            (null, { } upTo) => $"a GVM up to {Numbers.Show(upTo)} kg",
            _ => "any GVM",
        };

    /// <summary>The bounds of the seats in words.</summary>
    internal string SeatWords =>
        (SeatsFrom, SeatsUpTo) switch
        {
            ({ } from, { } upTo) => $"{from} to {upTo} seats",
            ({ } from, null) => $"{from} seats or more",
            (null, { } upTo) => $"up to {upTo} seats",
            _ => "any number of seats",
        };

    /// <summary>Whether a vehicle of this GVM can be of the category.</summary>
    /// <param name="kg">GVM, kg.</param>
    internal bool HasGvm(Fraction kg) => !(kg <= GvmOverKg) && !(kg > GvmUpToKg);

    /// <summary>Whether a vehicle with so many seats can be of the category.</summary>
    /// <param name="seats">Seats, the driver's counted.</param>
    internal bool HasSeats(int seats) => !(seats < SeatsFrom) && !(seats > SeatsUpTo);
}
