using System.Collections.Immutable;

namespace RuleBook.Authoring.Exports;

/// <summary>A row of a decision table.</summary>
/// <param name="Cells">By name of the input; one that is missing may be anything.</param>
/// <param name="Gives">The pathway, or what stands for none.</param>
/// <param name="Why">The tier, for readers.</param>
internal sealed record DmnRow(ImmutableSortedDictionary<string, DmnCell> Cells, string Gives, string Why)
{
    /// <summary>Cells that allow all.</summary>
    public static ImmutableSortedDictionary<string, DmnCell> Anything { get; } =
        ImmutableSortedDictionary.Create<string, DmnCell>(StringComparer.Ordinal);
}

/// <summary>Tests that all have to pass, as cells: where they certainly do, and where they may.</summary>
/// <param name="Surely">Null where they never certainly pass.</param>
/// <param name="Possibly">Null where they cannot pass.</param>
internal sealed record DmnTests(ImmutableSortedDictionary<string, DmnCell>? Surely, ImmutableSortedDictionary<string, DmnCell>? Possibly)
{
    /// <summary>Both at once; null where nothing is both.</summary>
    public static ImmutableSortedDictionary<string, DmnCell>? Both(
        ImmutableSortedDictionary<string, DmnCell>? left,
        ImmutableSortedDictionary<string, DmnCell>? right
    )
    {
        if (left is null || right is null)
            return null;
        foreach (var (name, cell) in right)
        {
            if (!left.TryGetValue(name, out var mine))
                left = left.Add(name, cell);
            else if (mine.And(cell) is { } both)
                left = left.SetItem(name, both);
            else
                return null;
        }

        return left;
    }

    public DmnTests And(DmnTests other) => new(Both(Surely, other.Surely), Both(Possibly, other.Possibly));
}
