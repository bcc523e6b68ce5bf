using System.Globalization;

namespace RuleBook.Benchmarks;

/// <summary>
/// Invented vehicles, of which all is known that the limits on height in Australia ask for; mostly within a limit or a little over.
/// </summary>
internal static class Vehicles
{
    public static IReadOnlyList<string> Places { get; } = ["au-qld", "au-nsw", "au-vic", "au-sa", "au-wa", "au-tas", "au-nt", "au-act"];

    /// <summary>Writes a fleet.</summary>
    public static void Write(string file, int rows)
    {
        var random = new Random(20_261_127);
        using var text = new StreamWriter(file);
        text.WriteLine(
            "job,registered-in,on,vehicle.category,vehicle.four-wheel-drive,vehicle.stability-control,"
                + "modification.suspension-lift,modification.body-lift"
        );
        for (var at = 0; at < rows; at++)
            text.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"W-{at},{Places[random.Next(8)]},2026-11-27,{(random.Next(2) == 0 ? "MC" : "NA")},{YesNo()},{YesNo()},"
                        + $"{random.Next(0, 800) / 10m} mm,{(random.Next(3) == 0 ? random.Next(0, 60) : 0)} mm"
                )
            );

        string YesNo() => random.Next(2) == 0 ? "yes" : "no";
    }
}
