namespace RuleBook.Units;

/// <summary>What a unit measures. Quantities compare only within one dimension.</summary>
public enum Dimension
{
    /// <summary>Length; base unit millimetre.</summary>
    Length,

    /// <summary>Mass; base unit kilogram.</summary>
    Mass,

    /// <summary>Volume; base unit litre.</summary>
    Volume,

    /// <summary>Density; base unit kilogram per litre.</summary>
    Density,

    /// <summary>Ratio; base unit per cent.</summary>
    Ratio,

    /// <summary>Speed; base unit kilometre per hour.</summary>
    Speed,

    /// <summary>Spring or wheel rate; base unit newton per millimetre.</summary>
    Rate,

    /// <summary>Plane angle; base unit degree.</summary>
    Angle,

    /// <summary>Number of things, without a unit sign.</summary>
    Count,

    /// <summary>Money; the unit is the currency, by its code in ISO 4217.</summary>
    Money,
}
