namespace RuleBook.Physics.Tyres;

/// <summary>The mark of a tyre built for more load at more pressure than the standard one of its size.</summary>
internal enum Reinforcement
{
    /// <summary>No mark.</summary>
    None,

    /// <summary><c>XL</c>: extra load.</summary>
    ExtraLoad,

    /// <summary><c>RF</c>: reinforced.</summary>
    Reinforced,
}
