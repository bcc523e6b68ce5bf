namespace RuleBook.Physics.Heights;

/// <summary>What a measurement with its uncertainty says about a limit.</summary>
public enum Conformity
{
    /// <summary>Within the limit even with the guard band counted against it.</summary>
    Within,

    /// <summary>Inside the guard band on either side of the limit: measure better before relying on it.</summary>
    TooCloseToCall,

    /// <summary>Beyond the limit even with the guard band counted in its favour.</summary>
    Beyond,
}
