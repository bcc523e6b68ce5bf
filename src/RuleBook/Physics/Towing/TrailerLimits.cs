using Fractions;

namespace RuleBook.Physics.Towing;

/// <summary>The limits that the trailer and the coupling bring; null where not known.</summary>
internal sealed record TrailerLimits
{
    /// <summary>True when the driver works the trailer's brakes; null when not known.</summary>
    public bool? Braked { get; init; }

    /// <summary>Aggregate trailer mass (ATM): most for the trailer alone, on level ground on its jockey wheel, kg.</summary>
    public Fraction? AtmKg { get; init; }

    /// <summary>Gross trailer mass (GTM): most on the trailer's axles when hitched, kg.</summary>
    public Fraction? GtmKg { get; init; }

    /// <summary>Most that the towbar may pull, kg.</summary>
    public Fraction? TowbarKg { get; init; }

    /// <summary>Most that the towbar may carry on its ball, kg.</summary>
    public Fraction? TowbarBallKg { get; init; }

    /// <summary>Most that the coupling may pull, kg.</summary>
    public Fraction? CouplingKg { get; init; }

    /// <summary>Most that the coupling may carry, kg.</summary>
    public Fraction? CouplingBallKg { get; init; }
}
