namespace RuleBook.Physics.Tyres;

/// <summary>
/// Where an overall diameter comes from. A limit can be met on one basis and exceeded on another:
/// 245/70R16 to 265/65R17 grows 26 mm by the handbook and 26.9 mm unrounded.
/// </summary>
public enum DiameterBasis
{
    /// <summary>As printed in the tyre standards: rim code in whole millimetres, section height rounded to a whole millimetre.</summary>
    Handbook,

    /// <summary>As the designation says, unrounded: 25.4 mm per inch of rim code, section height exact.</summary>
    Nominal,

    /// <summary>Measured on the tyre. Tyres of one marked size differ by several millimetres.</summary>
    Measured,
}
