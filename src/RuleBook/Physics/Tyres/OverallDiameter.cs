using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>
/// The overall diameter of a new tyre of a size, on a stated basis; the reckoning that leads to it is told when it is read.
/// </summary>
/// <remarks>
/// The handbook's formula is that of UN Regulation 30: H = 0.01 S Ra rounded to the nearest millimetre, D = d + 2 H; the wording from
/// memory, the rounding up of a half confirmed by the diameter that the Australian Standards Manual 2002 is quoted as printing for
/// 255/70R15.
/// </remarks>
/// <example>265/70R17, handbook: <c>432 + 2 x 186 = 804 mm (handbook: rim code 17 = 432 mm, ...)</c>.</example>
public sealed record OverallDiameter
{
    private static readonly Fraction Inch = Unit.Find("in")!.ToBase;

    private OverallDiameter(TyreSize size, DiameterBasis basis, Fraction? millimetres) =>
        (Size, Basis, Millimetres) = (size, basis, millimetres);

    /// <summary>The size.</summary>
    public TyreSize Size { get; }

    /// <summary>Where the diameter comes from.</summary>
    public DiameterBasis Basis { get; }

    /// <summary>The diameter in mm, exact; null where it is not established on this basis.</summary>
    public Fraction? Millimetres { get; }

    /// <summary>The diameter of a size on a basis. A measured one cannot follow from the size: use <see cref="Measured"/>.</summary>
    internal static OverallDiameter Of(TyreSize size, DiameterBasis basis) => new(size, basis, Reckon(size, basis));

    /// <summary>A diameter measured on the tyre, in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The measurement is not above zero.</exception>
    internal static OverallDiameter Measured(TyreSize size, Fraction millimetres) =>
        millimetres > 0
            ? new OverallDiameter(size, DiameterBasis.Measured, millimetres)
            : throw new ArgumentOutOfRangeException(nameof(millimetres), "a diameter is above zero");

    /// <summary>The reckoning, or why the diameter is not established; one line.</summary>
    public string Derivation =>
        (Basis, Millimetres) switch
        {
            (DiameterBasis.Handbook, { } diameter) => ByHandbook(diameter),
            (DiameterBasis.Nominal, { } diameter) => Nominally(diameter),
            (_, { } measured) => $"{Numbers.Show(measured)} mm (measured)",
            (DiameterBasis.Handbook, _) => Size.AspectRatio is null
                ? $"the diameter of {Size.Designation} stands in a handbook's table only, and that entry is not established"
                : $"the handbook's millimetres for rim code {Numbers.Show(Size.RimDiameterCode)} are not established",
            (DiameterBasis.Nominal, _) => $"{Size.Designation} has no aspect ratio, so no diameter follows from it",
            _ => "a measured diameter is read off the tyre, not off its size",
        };

    /// <summary>What a reader should know before relying on it, or null.</summary>
    public string? Caution =>
        Basis switch
        {
            DiameterBasis.Handbook when Size.AspectRatio is null => HandbookEntry.Find(Size)?.Caution,
            DiameterBasis.Nominal when Size.DiameterInches is not null => "a flotation tyre is designed smaller than its designation says",
            _ => null,
        };

    private static Fraction? Reckon(TyreSize size, DiameterBasis basis) =>
        basis switch
        {
            DiameterBasis.Handbook when size.AspectRatio is { } aspect => RimCode.Millimetres(size.RimDiameterCode)
                + 2 * Numbers.RoundHalfUp(SectionHeight(size, aspect)),
            DiameterBasis.Handbook => HandbookEntry.Find(size)?.Millimetres,
            DiameterBasis.Nominal when size.DiameterInches is { } inches => inches * Inch,
            DiameterBasis.Nominal when size.AspectRatio is { } aspect => size.RimDiameterCode * Inch + 2 * SectionHeight(size, aspect),
            _ => null,
        };

    private string ByHandbook(Fraction diameter)
    {
        if (Size.AspectRatio is not { } aspect)
            return $"{diameter} mm (handbook: table; {HandbookEntry.Find(Size)!.Origin})";
        var (code, rim) = (Numbers.Show(Size.RimDiameterCode), RimCode.Millimetres(Size.RimDiameterCode));
        var exact = SectionHeight(Size, aspect);
        var height = Numbers.RoundHalfUp(exact);
        var rounding = height == exact ? $"section height {height} mm" : $"section height {Numbers.Show(exact)} mm rounded to {height} mm";
        return $"{rim} + 2 x {height} = {diameter} mm (handbook: rim code {code} = {rim} mm, {rounding})";
    }

    private string Nominally(Fraction diameter)
    {
        var inch = Numbers.Show(Inch);
        return Size.DiameterInches is { } inches
            ? $"{Numbers.Show(inches)} x {inch} = {Numbers.Show(diameter)} mm (nominal: the designation's own diameter)"
            : $"{Numbers.Show(Size.RimDiameterCode)} x {inch} + 2 x {Numbers.Show(SectionHeight(Size, Size.AspectRatio!.Value))} = "
                + $"{Numbers.Show(diameter)} mm (nominal: not rounded)";
    }

    private static Fraction SectionHeight(TyreSize size, int aspect) => size.SectionWidth * aspect / 100;
}
