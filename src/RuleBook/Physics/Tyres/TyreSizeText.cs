using System.Globalization;
using System.Text;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>How a size is written in its canonical form.</summary>
internal static class TyreSizeText
{
    public static string Write(TyreSize size)
    {
        var text = new StringBuilder(WriteSize(size));
        if (WriteService(size) is { Length: > 0 } service)
            text.Append(' ').Append(service);
        if (size.Reinforcement != Reinforcement.None)
            text.Append(size.Reinforcement == Reinforcement.ExtraLoad ? " XL" : " RF");
        return text.ToString();
    }

    public static string WriteSize(TyreSize size) =>
        Before(size) + Dimensions(size) + Construction(size) + Numbers.Show(size.RimDiameterCode) + After(size);

    private static string Dimensions(TyreSize size) =>
        size.Form switch
        {
            TyreForm.Metric => $"{Numbers.Show(size.SectionWidth)}/{size.AspectRatio}",
            TyreForm.FullProfile => Numbers.Show(size.SectionWidth),
            TyreForm.Numeric => Hundredths(size.SectionWidthInches),
            _ => $"{Numbers.Show(size.DiameterInches!.Value)}x{Hundredths(size.SectionWidthInches)}",
        };

    private static string Hundredths(Fraction inches)
    {
        var digits = Numbers.Show(inches * 100, 0).PadLeft(3, '0');
        return $"{digits[..^2]}.{digits[^2..]}";
    }

    private static string Before(TyreSize size) =>
        size.Service switch
        {
            TyreService.Passenger => "P",
            TyreService.Temporary => "T",
            TyreService.LightTruck when size.Form == TyreForm.Metric => "LT",
            _ => "",
        };

    private static string After(TyreSize size) =>
        size.Service switch
        {
            TyreService.Commercial => "C",
            TyreService.LightTruck when size.Form != TyreForm.Metric => "LT",
            _ => "",
        };

    private static string Construction(TyreSize size) =>
        size.Construction switch
        {
            TyreConstruction.Radial => "R",
            TyreConstruction.HighSpeedRadial => "ZR",
            TyreConstruction.BiasBelted => "B",
            _ => size.Form == TyreForm.Metric ? "D" : "-",
        };

    private static string WriteService(TyreSize size)
    {
        var load = size.DualLoadIndex is null ? $"{size.LoadIndex}" : $"{size.LoadIndex}/{size.DualLoadIndex}";
        return size.SpeedSymbol?.Symbol switch
        {
            null or "ZR" => load,
            "(Y)" => string.Create(CultureInfo.InvariantCulture, $"({load}Y)"),
            var symbol when load.Length == 0 => symbol,
            var symbol => load + symbol,
        };
    }
}
