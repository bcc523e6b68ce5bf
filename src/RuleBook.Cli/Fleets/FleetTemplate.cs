namespace RuleBook.Cli.Fleets;

/// <summary>A header to start from with an example row, which is an invented vehicle.</summary>
internal static class FleetTemplate
{
    public static string Text()
    {
        using var reader = new StreamReader(typeof(FleetTemplate).Assembly.GetManifestResourceStream("fleet.template.csv")!);
        return reader.ReadToEnd();
    }
}
