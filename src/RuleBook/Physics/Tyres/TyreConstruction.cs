namespace RuleBook.Physics.Tyres;

/// <summary>How the carcass is built: the letter or dash before the rim code.</summary>
internal enum TyreConstruction
{
    /// <summary><c>R</c>: radial ply.</summary>
    Radial,

    /// <summary><c>ZR</c>: radial ply, for speeds over 240 km/h.</summary>
    HighSpeedRadial,

    /// <summary><c>D</c> or <c>-</c>: diagonal (cross) ply.</summary>
    Diagonal,

    /// <summary><c>B</c>: bias belted.</summary>
    BiasBelted,
}
