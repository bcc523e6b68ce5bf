using System.Collections.Immutable;
using System.Globalization;
using nietras.SeparatedValues;

namespace RuleBook.Benchmarks;

/// <summary>A row of <see cref="Vehicles"/> for engines that take expressions. Lengths in mm.</summary>
public sealed record Vehicle(string Category, string FourWheelDrive, string StabilityControl, decimal SuspensionLift, decimal BodyLift)
{
    /// <summary>The facts that a row states in words, with the words that rows have.</summary>
    public static ImmutableArray<(string Fact, ImmutableArray<string> Words)> Facts { get; } =
    [("category", ["MC", "NA"]), ("four-wheel-drive", ["yes", "no"]), ("stability-control", ["yes", "no"])];

    public static Vehicle Of(SepReader.Row row) =>
        new(row[3].ToString(), row[4].ToString(), row[5].ToString(), Millimetres(row[6].Span), Millimetres(row[7].Span));

    /// <summary>The property that is a fact; null where the rows do not state it.</summary>
    public static string? Property(string fact) =>
        fact switch
        {
            "category" => nameof(Category),
            "four-wheel-drive" => nameof(FourWheelDrive),
            "stability-control" => nameof(StabilityControl),
            "suspension-lift" => nameof(SuspensionLift),
            "body-lift" => nameof(BodyLift),
            _ => null,
        };

    private static decimal Millimetres(ReadOnlySpan<char> cell) => decimal.Parse(cell[..cell.IndexOf(' ')], CultureInfo.InvariantCulture);
}
