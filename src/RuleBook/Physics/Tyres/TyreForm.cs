namespace RuleBook.Physics.Tyres;

/// <summary>The way in which a size is written, and so what it tells of the overall diameter.</summary>
internal enum TyreForm
{
    /// <summary>Width in millimetres and aspect ratio: <c>265/70R17</c>. The diameter follows from the designation.</summary>
    Metric,

    /// <summary>Width in millimetres without an aspect ratio: <c>205R16C</c>. The diameter stands in a handbook only.</summary>
    FullProfile,

    /// <summary>Width in inches: <c>7.50R16LT</c>. The diameter stands in a handbook only.</summary>
    Numeric,

    /// <summary>
    /// Diameter and width in inches: <c>31x10.50R15LT</c>. The designed diameter is less than the one in the designation.
    /// </summary>
    Flotation,
}
