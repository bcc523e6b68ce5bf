using System.Collections.Immutable;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>How the measures that follow from others are derived, as a line to read.</summary>
internal static class Derivations
{
    /// <summary>Of a measure that the job leaves as the maker built it.</summary>
    public const string NothingStated = "nothing is stated to change it";

    /// <summary>Whether the job leaves it as the maker built it.</summary>
    public static bool IsUnstated(Derived known) => ReferenceEquals(known.Derivation, NothingStated);

    public static string Of(string measure, FactSet facts, ImmutableArray<string> parts) =>
        measure switch
        {
            FactSet.TyreLift when facts.Measure(FactSet.TyreGrowth, parts).Exact is { } growth =>
                $"{Numbers.Show(growth)} / 2 = {Numbers.Show(growth / 2)} mm (half the growth in diameter)",
            FactSet.TotalLift => Sum(facts, parts),
            _ => "",
        };

    private static string Sum(FactSet facts, ImmutableArray<string> parts)
    {
        if (!parts.All(part => facts.Measure(part, parts).Exact is not null))
            return "";
        Fraction[] values = [.. parts.Select(part => facts.Measure(part, parts).Exact!.Value)];
        var terms = parts.Zip(values, (part, value) => $"{part} {Numbers.Show(value)}");
        return $"{string.Join(" + ", terms)} = {Numbers.Show(values.Aggregate(Fraction.Zero, (sum, value) => sum + value))} mm";
    }
}
