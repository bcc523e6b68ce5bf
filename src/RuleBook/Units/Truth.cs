namespace RuleBook.Units;

/// <summary>Kleene's three values: known not to hold, not known, known to hold.</summary>
public enum Truth
{
    /// <summary>Does not hold, whatever else becomes known.</summary>
    No,

    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Holds, whatever else becomes known.</summary>
    Yes,
}

/// <summary>Three-valued logic.</summary>
internal static class TruthExtensions
{
    /// <summary>Both: the lesser of the two.</summary>
    public static Truth And(this Truth left, Truth right) => left < right ? left : right;

    /// <summary>All: yes for an empty list.</summary>
    public static Truth All(this IEnumerable<Truth> truths)
    {
        var all = Truth.Yes;
        foreach (var truth in truths)
        {
            if (truth == Truth.No)
                return Truth.No;
            all = all.And(truth);
        }

        return all;
    }
}
