using System.Diagnostics.CodeAnalysis;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>Reads a size designation: finds which form it has, then checks each part from left to right.</summary>
internal static class TyreSizeReader
{
    private const string Form =
        "a tyre size is written like 265/70R17 115S, LT285/75R16 126/123Q, 205R16C, 7.50R16LT or 31x10.50R15LT 109Q";

    public static bool TryRead(string text, [NotNullWhen(true)] out TyreSize? size, [NotNullWhen(false)] out string? error)
    {
        size = null;
        error = Form;
        if (text.Length > TyreSize.LongestText || WrittenForm.Find(text.Trim().ToUpperInvariant()) is not { } written)
            return false;

        error =
            ServiceReader.PrefixError(written.Prefix)
            ?? WidthError(written)
            ?? OtherDimensionError(written)
            ?? ConstructionError(written)
            ?? RimError(written);
        if (error is not null)
            return false;
        if (!ServiceReader.TryRead(written.Prefix, written.Rest, out var service, out error))
            return false;

        var construction = Construction(written.Build)!.Value;
        var inInches = written.Form != TyreForm.Metric && !IsMetricWidth(written);
        size = new TyreSize
        {
            Form = written.Form == TyreForm.Numeric && !inInches ? TyreForm.FullProfile : written.Form,
            SectionWidth = WrittenForm.Amount(written.Width) * (inInches ? Unit.Find("in")!.ToBase : 1),
            AspectRatio = written.Form == TyreForm.Metric ? (int)WrittenForm.Amount(written.Other) : null,
            DiameterInches = written.Form == TyreForm.Flotation ? WrittenForm.Amount(written.Other) : null,
            RimDiameterCode = WrittenForm.Amount(written.Rim),
            Construction = construction,
            Service = service.Service,
            Reinforcement = service.Reinforcement,
            LoadIndex = service.Single,
            DualLoadIndex = service.Dual,
            SpeedSymbol = service.Speed ?? (construction == TyreConstruction.HighSpeedRadial ? SpeedSymbol.Find("ZR") : null),
        };
        size = size with { Designation = TyreSizeText.WriteSize(size) };
        return true;
    }

    private static string? WidthError(WrittenForm written) =>
        written.Form switch
        {
            TyreForm.Metric => IsMetricWidth(written) ? null : $"section width {written.Width} should be three digits, in millimetres",
            TyreForm.Flotation => IsInchWidth(written) ? null : $"section width {written.Width} should be from 2 to 20, in inches",
            _ => IsMetricWidth(written) || IsInchWidth(written)
                ? null
                : $"section width {written.Width} should be three digits in millimetres, or from 2 to 20 in inches",
        }
            is { } wrong
            ? $"{wrong}; {Form}"
            : null;

    private static string? OtherDimensionError(WrittenForm written) =>
        written.Form switch
        {
            TyreForm.Metric
                when WrittenForm.Amount(written.Other) is var aspect && (!aspect.Denominator.IsOne || aspect < 20 || aspect > 100) =>
                $"aspect ratio {written.Other} should be a whole per cent from 20 to 100; {Form}",
            TyreForm.Flotation when WrittenForm.Amount(written.Other) > 60 =>
                $"overall diameter {written.Other} is too large: it is in inches; {Form}",
            TyreForm.Flotation when WrittenForm.Amount(written.Other) <= WrittenForm.Amount(written.Rim) =>
                $"overall diameter {written.Other} is not larger than the rim, {written.Rim}; {Form}",
            _ => null,
        };

    private static string? ConstructionError(WrittenForm written) =>
        Construction(written.Build) is null
            ? $"'{written.Build}' before the rim code is not a construction: R or ZR is radial, D or - diagonal, B bias "
                + $"belted; {Form}"
            : null;

    private static string? RimError(WrittenForm written) =>
        RimCode.IsPossible(WrittenForm.Amount(written.Rim))
            ? null
            : $"rim code {written.Rim} is impossible: codes are whole or half inches from {RimCode.Smallest} to "
                + $"{RimCode.Largest}; {Form}";

    private static bool IsMetricWidth(WrittenForm written) =>
        WrittenForm.Amount(written.Width) is var width && width.Denominator.IsOne && width >= 100 && width <= 999;

    private static bool IsInchWidth(WrittenForm written) => WrittenForm.Amount(written.Width) is var width && width >= 2 && width <= 20;

    private static TyreConstruction? Construction(string build) =>
        build switch
        {
            "R" => TyreConstruction.Radial,
            "ZR" => TyreConstruction.HighSpeedRadial,
            "D" or "-" => TyreConstruction.Diagonal,
            "B" => TyreConstruction.BiasBelted,
            _ => null,
        };
}
