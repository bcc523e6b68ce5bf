namespace RuleBook.Law;

/// <summary>Where a figure of the reference holds.</summary>
internal static class Territory
{
    /// <summary>
    /// Whether a place is a jurisdiction or lies within it: <c>au-qld</c> lies within <c>au</c>. Every place lies within none named.
    /// </summary>
    public static bool Includes(string? jurisdiction, string place) =>
        jurisdiction is null || place == jurisdiction || place.StartsWith($"{jurisdiction}-", StringComparison.Ordinal);
}
