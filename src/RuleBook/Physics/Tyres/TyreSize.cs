using System.Diagnostics.CodeAnalysis;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>A tyre size designation, with its service description where one is written. Made only by reading a designation.</summary>
/// <remarks>
/// Metric, light-truck, full-profile, numeric and flotation designations as explained in makers' owner's manuals.
/// Equal when every part is equal, however the designation was spaced: <c>LT265/70 R17</c> equals <c>265/70R17LT</c>.
/// </remarks>
/// <example><c>TyreSize.Parse("265/70R17 115S").SectionWidth</c> is 265 (mm).</example>
public sealed record TyreSize
{
    /// <summary>The most characters that a written size may have.</summary>
    public const int LongestText = 40;

    internal TyreSize() { }

    /// <summary>The way in which the size is written.</summary>
    internal TyreForm Form { get; init; }

    /// <summary>Nominal section width in mm, exact; 25.4 mm to the inch where it is written in inches.</summary>
    public required Fraction SectionWidth { get; init; }

    /// <summary>Section height as per cent of section width; null unless the form is metric.</summary>
    public int? AspectRatio { get; init; }

    /// <summary>Overall diameter in inches as written in a flotation size; null in every other form.</summary>
    public Fraction? DiameterInches { get; init; }

    /// <summary>Rim diameter code, in inches: whole or half.</summary>
    public required Fraction RimDiameterCode { get; init; }

    /// <summary>How the carcass is built.</summary>
    internal TyreConstruction Construction { get; init; }

    /// <summary>The service for which the tyre is made.</summary>
    internal TyreService Service { get; init; }

    /// <summary>Extra load or reinforced.</summary>
    internal Reinforcement Reinforcement { get; init; }

    /// <summary>Load index of a tyre fitted singly; null when none is written.</summary>
    public LoadIndex? LoadIndex { get; init; }

    /// <summary>Load index of a tyre in a dual (twin) fitment; null when none is written.</summary>
    public LoadIndex? DualLoadIndex { get; init; }

    /// <summary>
    /// Speed symbol; <c>ZR</c> where the size says ZR and no symbol is written; null when the size says nothing of speed.
    /// </summary>
    public SpeedSymbol? SpeedSymbol { get; init; }

    /// <summary>Reads a designation; spaces and the case of letters do not matter.</summary>
    /// <returns>False, with <paramref name="error"/> saying which part is wrong and what would be right, when it cannot be read.</returns>
    public static bool TryParse(string text, [NotNullWhen(true)] out TyreSize? size, [NotNullWhen(false)] out string? error) =>
        TyreSizeReader.TryRead(text, out size, out error);

    /// <summary>Reads a designation that is known to be well written.</summary>
    /// <exception cref="FormatException">The text is not a tyre size.</exception>
    public static TyreSize Parse(string text) => TryParse(text, out var size, out var error) ? size : throw new FormatException(error);

    /// <summary>
    /// The canonical designation: <c>LT285/75R16 126/123Q</c>, <c>205R16C</c>, <c>7.50R16LT</c>, <c>31x10.50R15LT 109Q</c>.
    /// </summary>
    public override string ToString() => TyreSizeText.Write(this);

    /// <summary>The size alone, without load index, speed symbol and reinforcement: what an overall diameter belongs to.</summary>
    public string Designation { get; internal init; } = "";

    internal Fraction SectionWidthInches => SectionWidth / Unit.Find("in")!.ToBase;
}
