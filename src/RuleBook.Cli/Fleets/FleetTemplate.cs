using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>A header to start from with an example row, which is an invented vehicle.</summary>
internal static class FleetTemplate
{
    public static string Text { get; } = Csv.Row(Example.Select(each => each.Header)) + Csv.Row(Example.Select(each => each.Cell));

    private static (string Header, string Cell)[] Example =>
    [
        ("job", "W-0117"), ("registered-in", "au-qld"), ("on", "2026-11-20"),
        ("vehicle.category", "MC"), ("vehicle.four-wheel-drive", "yes"), ("vehicle.stability-control", "yes"), ("vehicle.tyres", "265/65R17 112S; 245/70R17 110S"),
        ("modification.suspension-lift", "45 mm"), ("modification.body-lift", "0 mm"), ("modification.tyres", "265/70R17 115S"),
    ];
}
