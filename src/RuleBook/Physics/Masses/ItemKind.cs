namespace RuleBook.Physics.Masses;

/// <summary>What an item is, which decides the mass states that include it.</summary>
internal enum ItemKind
{
    /// <summary>An accessory permanently attached after the vehicle left its maker.</summary>
    FixedAccessory,

    /// <summary>The driver or a passenger.</summary>
    Occupant,

    /// <summary>What the occupants bring with them.</summary>
    Luggage,

    /// <summary>Goods, tools, water: whatever can be taken off again.</summary>
    Load,

    /// <summary>The mass that a coupled trailer puts on the tow ball.</summary>
    BallLoad,
}
