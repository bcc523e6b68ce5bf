using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>One version of a rule on one row: what it gives and why, read from the table that judged.</summary>
/// <param name="Table">The table.</param>
/// <param name="Row">The row.</param>
/// <param name="Rule">Index of the rule.</param>
/// <param name="At">Index of the version.</param>
internal readonly record struct VersionOnRow(DecisionTable Table, Row Row, int Rule, int At)
{
    /// <summary>The version.</summary>
    public ResolvedVersion Version => Table.Version(At);

    /// <summary>Whether no other version may be in force.</summary>
    public bool Certain => Table.InForce[Rule].Candidates.Length == 1;

    /// <summary>Whether the rule binds the vehicle.</summary>
    public Truth Binds => Table.Binds(At, Row.Cells);

    /// <summary>What it gives, every value of what is not known tried.</summary>
    public Outcome Outcome => new Completion(Table, Row, Rule, At).Outcome;

    /// <summary>Whether a tier is open to the job: its facts, all its limits and all its conditions.</summary>
    public Truth Holds(Tier tier) => Table.Holds(At, IndexOf(tier), Row.Cells);

    /// <summary>Whether the facts hold that open a tier at all.</summary>
    public Truth When(Tier tier) => Table.When(At, IndexOf(tier), Row.Cells);

    /// <summary>Whether a limit is kept; unknown where it is not established.</summary>
    public Truth Holds(Limit limit) =>
        limit.Kind switch
        {
            LimitKind.None => Truth.Yes,
            LimitKind.NotEstablished => Truth.Unknown,
            _ => DecisionTable.Holds(Table.AxisOf(limit.Measure, Version.Parts), limit.Bounds!, Row.Cells),
        };

    private int IndexOf(Tier tier)
    {
        var tiers = ((Stated)Version.Content).Tiers;
        for (var i = 0; i < tiers.Length; i++)
            if (ReferenceEquals(tiers[i], tier))
                return i;
        throw new ArgumentException("a tier of another version", nameof(tier));
    }
}
