using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>One line of a mass budget.</summary>
/// <param name="Item">What is added, or taken off where the mass is negative.</param>
/// <param name="MassKg">Its mass, kg; null when not known.</param>
/// <param name="Axles">Its share on each axle; null when mass, position or wheelbase is not known.</param>
/// <param name="RunningTotalKg">The vehicle's mass with this line, kg; null from the first unknown mass on.</param>
/// <param name="RunningAxles">The axles with this line; null from the first line that could not be shared on.</param>
/// <param name="Derivation">How the mass came about, where it was computed; otherwise null.</param>
public sealed record BudgetLine(
    string Item,
    Fraction? MassKg,
    AxleMasses? Axles,
    Fraction? RunningTotalKg,
    AxleMasses? RunningAxles,
    string? Derivation = null
)
{
    /// <summary>What is known of the line: a mass that is not known is at least nothing.</summary>
    public required MassRange Possible { get; init; }

    /// <summary>What is known of the vehicle with this line.</summary>
    public required MassRange RunningPossible { get; init; }
}
