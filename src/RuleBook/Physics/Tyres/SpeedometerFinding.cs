namespace RuleBook.Physics.Tyres;

/// <summary>How a speedometer stands against a rule.</summary>
public enum SpeedometerFinding
{
    /// <summary>Within the tolerance, its ends included.</summary>
    Within,

    /// <summary>Indicates less than the rule allows for the true speed.</summary>
    ReadsLow,

    /// <summary>Indicates more than the rule allows for the true speed.</summary>
    ReadsHigh,

    /// <summary>The rule asks for no accuracy at this speed.</summary>
    NotCovered,
}
