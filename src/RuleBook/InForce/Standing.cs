using RuleBook.Law;

namespace RuleBook.InForce;

/// <summary>How something is known: of each link that it needs, the best citation that carries it; of several links, the weakest.</summary>
/// <param name="Basis">Null where no citation carries it.</param>
/// <param name="Cited">The citation on which it hangs; null where none carries it.</param>
public sealed record Standing(ReadAs? Basis, CitedSource? Cited)
{
    /// <summary>No citation carries it.</summary>
    public static Standing None { get; } = new(null, null);

    /// <summary>From the strongest to the weakest; what nothing carries is the weakest.</summary>
    internal int Weakness => Basis is { } basis ? (int)basis : int.MaxValue;

    /// <summary>By the best of citations that each carry it; among equals one that names it.</summary>
    internal static Standing Best(IEnumerable<CitedSource> carriers, Part part) =>
        carriers
            .OrderBy(cited => cited.Source.ReadAs)
            .ThenBy(cited => !cited.Citation.DoesName(part))
            .Select(cited => new Standing(cited.Source.ReadAs, cited))
            .FirstOrDefault(None);

    /// <summary>Either suffices.</summary>
    internal Standing Or(Standing other) => other.Weakness < Weakness ? other : this;

    /// <summary>Both are needed.</summary>
    internal Standing And(Standing other) => other.Weakness > Weakness ? other : this;
}
