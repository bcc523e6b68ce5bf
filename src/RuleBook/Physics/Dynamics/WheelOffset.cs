using Fractions;

namespace RuleBook.Physics.Dynamics;

/// <summary>The offset of the wheels before and after others are fitted; the width of their rims does not enter.</summary>
/// <param name="BeforeMm">
/// Offset of the original wheels, mm; positive where the mounting face stands outward of the rim's centre ("10P" is +10). Null where it is
/// not known.
/// </param>
/// <param name="AfterMm">Offset of the wheels fitted, mm; null where it is not known.</param>
internal sealed record WheelOffset(Fraction? BeforeMm, Fraction? AfterMm)
{
    /// <summary>How much less the offset becomes, mm: so far each wheel goes out.</summary>
    public Fraction? LostMm => BeforeMm - AfterMm;

    /// <summary>How much wider the track becomes, between the centre lines of the treads, mm: twice the loss of offset.</summary>
    public Fraction? TrackIncreaseMm => 2 * LostMm;

    /// <summary>The one of the two that is not known where the other is, by its key in the job; null otherwise.</summary>
    public string? Missing =>
        (BeforeMm, AfterMm) switch
        {
            (null, { }) => "before",
            ({ }, null) => "after",
            _ => null,
        };
}
