using System.Collections.Immutable;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>How much larger or smaller a new tyre is than the sizes on the vehicle's placard.</summary>
/// <param name="New">The new tyre.</param>
/// <param name="Largest">The largest of the placard's tyres; null where one of their diameters is not established.</param>
/// <param name="Smallest">The smallest of the placard's tyres; null likewise.</param>
/// <param name="Growth">Overall diameter over the largest placard size, mm; negative when smaller.</param>
/// <param name="GrowthPercent">The growth as per cent of the largest placard size.</param>
/// <param name="Reduction">Overall diameter under the smallest placard size, mm; positive when smaller.</param>
/// <param name="ReductionPercent">The reduction as per cent of the smallest placard size.</param>
/// <param name="TyreLift">Half the growth, mm: what the larger tyre raises the vehicle.</param>
/// <param name="WidthPercent">Nominal section width as per cent of the widest placard size.</param>
/// <example>265/70R17 on a placard of 265/65R17, handbook: growth 28 mm, 3.608 %, tyre lift 14 mm.</example>
public sealed record TyreGrowth(
    OverallDiameter New,
    OverallDiameter? Largest,
    OverallDiameter? Smallest,
    DerivedFigure Growth,
    DerivedFigure GrowthPercent,
    DerivedFigure Reduction,
    DerivedFigure ReductionPercent,
    DerivedFigure TyreLift,
    DerivedFigure WidthPercent
)
{
    /// <summary>Compares a new size with the placard's, all on one basis.</summary>
    internal static TyreGrowth Of(TyreSize fitted, IEnumerable<TyreSize> placard, DiameterBasis basis) =>
        Of(OverallDiameter.Of(fitted, basis), placard.Select(size => OverallDiameter.Of(size, basis)));

    /// <summary>Compares a new tyre with the placard's where some diameters are measured; the basis of each is in the derivation.</summary>
    internal static TyreGrowth Of(OverallDiameter fitted, IEnumerable<OverallDiameter> placard) => Of(fitted, placard, true);

    /// <param name="fitted">The new tyre.</param>
    /// <param name="placard">The placard's.</param>
    /// <param name="told">Whether the derivations are wanted; otherwise those of figures that are known are empty.</param>
    internal static TyreGrowth Of(OverallDiameter fitted, IEnumerable<OverallDiameter> placard, bool told)
    {
        ImmutableArray<OverallDiameter> reference = [.. placard];
        var width = Width(fitted, reference, told);
        if (Unestablished(fitted, reference) is { } reason)
        {
            var none = new DerivedFigure(null, reason);
            return new TyreGrowth(fitted, null, null, none, none, none, none, none, width);
        }

        var largest = reference.MaxBy(tyre => tyre.Millimetres!.Value)!;
        var smallest = reference.MinBy(tyre => tyre.Millimetres!.Value)!;
        var growth = Difference(fitted, largest, told);
        var reduction = Difference(smallest, fitted, told);
        return new TyreGrowth(
            fitted,
            largest,
            smallest,
            growth,
            Percent(growth, largest, told),
            reduction,
            Percent(reduction, smallest, told),
            Half(growth, told),
            width
        );
    }

    private static string? Unestablished(OverallDiameter fitted, ImmutableArray<OverallDiameter> placard) =>
        placard.IsEmpty ? "no placard size is given"
        : placard.Prepend(fitted).FirstOrDefault(tyre => tyre.Millimetres is null) is { } unknown
            ? $"the overall diameter of {unknown.Size.Designation} is not established: {unknown.Derivation}"
        : null;

    private static DerivedFigure Difference(OverallDiameter from, OverallDiameter under, bool told)
    {
        var difference = from.Millimetres!.Value - under.Millimetres!.Value;
        return new DerivedFigure(
            difference,
            told ? $"{Show(from)} - {Show(under)} = {Numbers.Show(difference)} mm ({Name(from)} less {Name(under)})" : ""
        );
    }

    private static DerivedFigure Percent(DerivedFigure difference, OverallDiameter of, bool told)
    {
        var percent = 100 * difference.Amount!.Value / of.Millimetres!.Value;
        return new DerivedFigure(
            percent,
            told ? $"100 x {Numbers.Show(difference.Amount.Value)} / {Show(of)} = {Numbers.Show(percent)} % of {Name(of)}" : ""
        );
    }

    private static DerivedFigure Half(DerivedFigure growth, bool told)
    {
        var lift = growth.Amount!.Value / 2;
        return new DerivedFigure(
            lift,
            told ? $"{Numbers.Show(growth.Amount.Value)} / 2 = {Numbers.Show(lift)} mm (half the growth in diameter)" : ""
        );
    }

    private static DerivedFigure Width(OverallDiameter fitted, ImmutableArray<OverallDiameter> placard, bool told)
    {
        if (placard.IsEmpty)
            return new DerivedFigure(null, "no placard size is given");
        var widest = placard.Max(tyre => tyre.Size.SectionWidth);
        var percent = 100 * fitted.Size.SectionWidth / widest;
        return new DerivedFigure(
            percent,
            told
                ? $"100 x {Numbers.Show(fitted.Size.SectionWidth)} / {Numbers.Show(widest)} = {Numbers.Show(percent)} % of the widest "
                    + "placard size"
                : ""
        );
    }

    private static string Show(OverallDiameter tyre) => Numbers.Show(tyre.Millimetres!.Value);

    private static string Name(OverallDiameter tyre) => $"{tyre.Size.Designation} {Basis(tyre.Basis)}";

    private static string Basis(DiameterBasis basis) =>
        basis switch
        {
            DiameterBasis.Handbook => "handbook",
            DiameterBasis.Nominal => "nominal",
            _ => "measured",
        };
}
