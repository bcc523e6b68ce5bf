namespace RuleBook.Physics.Masses;

/// <summary>The state in which a vehicle is weighed or measured.</summary>
public enum MassState
{
    /// <summary>Ready for service and empty, with the small amount of fuel that the definition names.</summary>
    Tare,

    /// <summary>Fixed accessories aboard and every tank full, auxiliary tanks too; no occupants, no removable load.</summary>
    Unladen,

    /// <summary>As it travels: occupants, luggage, load and ball load aboard, every tank full.</summary>
    Loaded,
}
