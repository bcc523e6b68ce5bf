namespace RuleBook.Authoring.Checks;

/// <summary>What occurs again.</summary>
internal static class Repeats
{
    /// <summary>Every item whose key an earlier item has.</summary>
    internal static IEnumerable<T> Of<T>(IEnumerable<T> items, Func<T, string> key) =>
        items.GroupBy(key, StringComparer.Ordinal).SelectMany(group => group.Skip(1));
}
