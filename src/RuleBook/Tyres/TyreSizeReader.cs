using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using Fractions;
using RuleBook.Quantities;

namespace RuleBook.Tyres;

/// <summary>Reads a size designation: finds which form it has, then checks each part.</summary>
internal static partial class TyreSizeReader
{
    private const string Form = "a tyre size is written like 265/70R17 115S, LT285/75R16 126/123Q, 205R16C, 7.50R16LT or 31x10.50R15LT 109Q";
    private const string Number = @"[0-9]{1,4}(?:\.[0-9]{1,2})?";
    private const string Prefix = @"^(?<prefix>[A-Z]+)?\s*";
    private const string Rim = $@"\s*(?<build>[A-Z]+|-|(?<=\s))\s*(?<rim>{Number})(?![0-9.])(?<rest>.*)$";

    public static bool TryRead(string text, [NotNullWhen(true)] out TyreSize? size, [NotNullWhen(false)] out string? error)
    {
        size = null;
        var trimmed = text.Length <= TyreSize.LongestText ? text.Trim().ToUpperInvariant() : "";
        if (Dimensions(trimmed, out var match, out error) is not { } dimensions)
        {
            error ??= Form;
            return false;
        }

        var rim = Read(match, "rim");
        if (!RimCode.IsPossible(rim))
        {
            error = $"rim code {match.Groups["rim"].Value} is impossible: codes are whole or half inches " +
                $"from {RimCode.Smallest} to {RimCode.Largest}; {Form}";
            return false;
        }

        if (Construction(match.Groups["build"].Value) is not { } construction)
        {
            error = $"'{match.Groups["build"].Value}' before the rim code is not a construction: " +
                $"R or ZR is radial, D or - diagonal, B bias belted; {Form}";
            return false;
        }

        if (!ServiceReader.TryRead(match.Groups["prefix"].Value, match.Groups["rest"].Value, out var service, out error)) return false;
        if (dimensions.DiameterInches <= rim)
        {
            error = $"the overall diameter of {match.Groups["od"].Value} in is not larger than the rim's {match.Groups["rim"].Value} in";
            return false;
        }

        size = dimensions with
        {
            RimDiameterCode = rim,
            Construction = construction,
            Service = service.Service,
            Reinforcement = service.Reinforcement,
            LoadIndex = service.Single,
            DualLoadIndex = service.Dual,
            SpeedSymbol = service.Speed ?? (construction == TyreConstruction.HighSpeedRadial ? SpeedSymbol.Find("ZR") : null),
        };
        return true;
    }

    private static TyreSize? Dimensions(string text, out Match match, out string? error)
    {
        error = null;
        if ((match = Metric().Match(text)).Success) return PrefixIsKnown(match, out error) ? OfMetric(match, out error) : null;
        if ((match = Flotation().Match(text)).Success) return PrefixIsKnown(match, out error) ? OfFlotation(match, out error) : null;
        if ((match = Plain().Match(text)).Success) return PrefixIsKnown(match, out error) ? OfPlain(match, out error) : null;
        return null;
    }

    private static bool PrefixIsKnown(Match match, out string? error) =>
        (error = ServiceReader.PrefixError(match.Groups["prefix"].Value)) is null;

    private static TyreSize? OfMetric(Match match, out string? error)
    {
        var (width, aspect) = (Read(match, "width"), Read(match, "aspect"));
        error = !IsMetricWidth(width) ? $"section width {match.Groups["width"].Value} should be three digits, in millimetres; {Form}"
            : !aspect.Denominator.IsOne || aspect < 20 || aspect > 100
                ? $"aspect ratio {match.Groups["aspect"].Value} should be a whole per cent from 20 to 100; {Form}"
                : null;
        return error is null ? Sized(TyreForm.Metric, width) with { AspectRatio = (int)aspect } : null;
    }

    private static TyreSize? OfFlotation(Match match, out string? error)
    {
        var (diameter, width) = (Read(match, "od"), Read(match, "width"));
        error = diameter > 60 ? $"the overall diameter of {match.Groups["od"].Value} in is too large: it is in inches, as in 31x10.50R15LT"
            : IsInchWidth(width) ? null : NotAnInchWidth(match);
        return error is null ? Sized(TyreForm.Flotation, width * Inch) with { DiameterInches = diameter } : null;
    }

    private static TyreSize? OfPlain(Match match, out string? error)
    {
        error = null;
        var width = Read(match, "width");
        if (IsMetricWidth(width)) return Sized(TyreForm.FullProfile, width);
        error = IsInchWidth(width) ? null : NotAnInchWidth(match);
        return error is null ? Sized(TyreForm.Numeric, width * Inch) : null;
    }

    private static string NotAnInchWidth(Match match) =>
        $"section width {match.Groups["width"].Value} should be three digits in millimetres, or from 2 to 20 in inches; {Form}";

    private static bool IsMetricWidth(Fraction width) => width.Denominator.IsOne && width >= 100 && width <= 999;

    private static bool IsInchWidth(Fraction width) => width >= 2 && width <= 20;

    private static Fraction Inch => Unit.Find("in")!.ToBase;

    private static TyreSize Sized(TyreForm form, Fraction width) => new()
    {
        Form = form,
        SectionWidth = width,
        RimDiameterCode = Fraction.Zero,
        Construction = TyreConstruction.Radial,
        Service = TyreService.Unmarked,
    };

    private static TyreConstruction? Construction(string build) => build switch
    {
        "R" => TyreConstruction.Radial,
        "ZR" => TyreConstruction.HighSpeedRadial,
        "D" or "-" => TyreConstruction.Diagonal,
        "B" => TyreConstruction.BiasBelted,
        _ => null,
    };

    private static Fraction Read(Match match, string group) => Quantity.Parse(match.Groups[group].Value + " mm").Amount;

    [GeneratedRegex($@"{Prefix}(?<width>{Number})\s*/\s*(?<aspect>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Metric();

    [GeneratedRegex($@"{Prefix}(?<od>{Number})\s*X\s*(?<width>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Flotation();

    [GeneratedRegex($@"{Prefix}(?<width>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
