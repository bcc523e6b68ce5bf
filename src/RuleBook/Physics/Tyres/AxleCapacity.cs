using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>The mass that the tyres of one axle may carry, by their load index.</summary>
internal static class AxleCapacity
{
    /// <summary>Two tyres, one at each end: twice the mass of the load index, in kg.</summary>
    public static DerivedFigure Single(TyreSize size) => Of(size, size.LoadIndex, 2, "has no load index");

    /// <summary>Four tyres, two at each end: four times the mass of the second load index, in kg.</summary>
    public static DerivedFigure Dual(TyreSize size) => Of(size, size.DualLoadIndex, 4, "has no load index for a dual fitment");

    private static DerivedFigure Of(TyreSize size, LoadIndex? index, int tyres, string missing)
    {
        if (index?.Kilograms is not { } mass)
            return new DerivedFigure(null, index?.Derivation ?? $"{size} {missing}");
        Fraction capacity = tyres * mass;
        return new DerivedFigure(capacity, $"{tyres} x {mass} = {capacity} kg ({index.Derivation})");
    }
}
