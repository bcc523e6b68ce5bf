using RuleBook.Physics.Masses;

namespace RuleBook.Physics.Heights;

/// <summary>One round of measuring at the four corners.</summary>
/// <param name="State">The mass state in which all four were measured, or for which the maker states them.</param>
/// <param name="Front">Front corners.</param>
/// <param name="Rear">Rear corners.</param>
internal sealed record HeightReading(MassState State, AxleHeights Front, AxleHeights Rear)
{
    /// <summary>The corners of one axle.</summary>
    public AxleHeights On(Axle axle) => axle == Axle.Front ? Front : Rear;
}
