using Fractions;

namespace RuleBook.Physics.Dynamics;

/// <summary>Track, between the centre lines of the treads.</summary>
internal static class TrackWidth
{
    /// <summary>Change of track with another wheel offset, mm: twice the loss of offset. The width of the rim does not enter.</summary>
    /// <param name="oldOffsetMm">
    /// Offset before, mm, positive where the mounting face stands outward of the rim's centre ("10P" is +10).
    /// </param>
    /// <param name="newOffsetMm">Offset after, mm.</param>
    public static Fraction ChangeMm(Fraction oldOffsetMm, Fraction newOffsetMm) => 2 * (oldOffsetMm - newOffsetMm);
}
