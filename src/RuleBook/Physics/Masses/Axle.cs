namespace RuleBook.Physics.Masses;

/// <summary>One of the two axles (or axle groups) of the vehicle.</summary>
public enum Axle
{
    /// <summary>The front axle; positions along the vehicle are counted from its centre line.</summary>
    Front,

    /// <summary>The rear axle, one wheelbase behind the front axle.</summary>
    Rear,
}
