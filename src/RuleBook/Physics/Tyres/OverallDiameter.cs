using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>The overall diameter of a new tyre of a size, on a stated basis, with the reckoning that leads to it.</summary>
/// <param name="Size">The size.</param>
/// <param name="Basis">Where the diameter comes from.</param>
/// <param name="Millimetres">The diameter in mm, exact; null where it is not established on this basis.</param>
/// <param name="Derivation">The reckoning, or why the diameter is not established; one line.</param>
/// <param name="Caution">What a reader should know before relying on it, or null.</param>
/// <example>265/70R17, handbook: <c>432 + 2 x 186 = 804 mm (handbook: rim code 17 = 432 mm, ...)</c>.</example>
public sealed record OverallDiameter(TyreSize Size, DiameterBasis Basis, Fraction? Millimetres, string Derivation, string? Caution = null)
{
    /// <summary>The diameter of a size on a basis. A measured one cannot follow from the size: use <see cref="Measured"/>.</summary>
    public static OverallDiameter Of(TyreSize size, DiameterBasis basis) =>
        basis switch
        {
            DiameterBasis.Handbook when size.AspectRatio is { } aspect => HandbookFormula(size, aspect),
            DiameterBasis.Handbook => HandbookTable(size),
            DiameterBasis.Nominal => Nominal(size),
            _ => Unknown(size, DiameterBasis.Measured, "a measured diameter is read off the tyre, not off its size"),
        };

    /// <summary>A diameter measured on the tyre, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The measurement is not above zero.</exception>
    public static OverallDiameter Measured(TyreSize size, Fraction millimetres) =>
        millimetres > 0
            ? new OverallDiameter(size, DiameterBasis.Measured, millimetres, $"{Numbers.Show(millimetres)} mm (measured)")
            : throw new ArgumentOutOfRangeException(nameof(millimetres), "a diameter is above zero");

    /// <summary>
    /// UN Regulation 30: H = 0.01 S Ra rounded to the nearest millimetre, D = d + 2 H; the wording from memory, the rounding up of a half
    /// confirmed by the diameter that the Australian Standards Manual 2002 is quoted as printing for 255/70R15.
    /// </summary>
    private static OverallDiameter HandbookFormula(TyreSize size, int aspect)
    {
        var code = Numbers.Show(size.RimDiameterCode);
        if (RimCode.Millimetres(size.RimDiameterCode) is not { } rim)
            return Unknown(size, DiameterBasis.Handbook, $"the handbook's millimetres for rim code {code} are not established");

        var exact = SectionHeight(size, aspect);
        var height = Numbers.RoundHalfUp(exact);
        var rounding = height == exact ? $"section height {height} mm" : $"section height {Numbers.Show(exact)} mm rounded to {height} mm";
        var diameter = rim + 2 * height;
        return new OverallDiameter(
            size,
            DiameterBasis.Handbook,
            diameter,
            $"{rim} + 2 x {height} = {diameter} mm (handbook: rim code {code} = {rim} mm, {rounding})"
        );
    }

    private static OverallDiameter HandbookTable(TyreSize size) =>
        HandbookEntry.Find(size) is { } entry
            ? new OverallDiameter(
                size,
                DiameterBasis.Handbook,
                entry.Millimetres,
                $"{entry.Millimetres} mm (handbook: table; {entry.Origin})",
                entry.Caution
            )
            : Unknown(
                size,
                DiameterBasis.Handbook,
                $"the diameter of {size.Designation} stands in a handbook's table only, and that entry is not established"
            );

    private static OverallDiameter Nominal(TyreSize size)
    {
        var inch = Unit.Find("in")!.ToBase;
        var inchText = Numbers.Show(inch);
        if (size.DiameterInches is { } inches)
        {
            return new OverallDiameter(
                size,
                DiameterBasis.Nominal,
                inches * inch,
                $"{Numbers.Show(inches)} x {inchText} = {Numbers.Show(inches * inch)} mm (nominal: the designation's own diameter)",
                "a flotation tyre is designed smaller than its designation says"
            );
        }

        if (size.AspectRatio is not { } aspect)
            return Unknown(size, DiameterBasis.Nominal, $"{size.Designation} has no aspect ratio, so no diameter follows from it");

        var height = SectionHeight(size, aspect);
        var diameter = size.RimDiameterCode * inch + 2 * height;
        return new OverallDiameter(
            size,
            DiameterBasis.Nominal,
            diameter,
            $"{Numbers.Show(size.RimDiameterCode)} x {inchText} + 2 x {Numbers.Show(height)} = {Numbers.Show(diameter)} mm "
                + "(nominal: not rounded)"
        );
    }

    private static Fraction SectionHeight(TyreSize size, int aspect) => size.SectionWidth * aspect / 100;

    private static OverallDiameter Unknown(TyreSize size, DiameterBasis basis, string reason) => new(size, basis, null, reason);
}
