namespace RuleBook.Law;

/// <summary>
/// One thing that a version says and that a citation can carry: the day it begins, a figure of a tier, what holds beyond the tiers.
/// </summary>
/// <param name="Tier">Name of the tier; null for what is said of the version as a whole.</param>
/// <param name="Name">A measure, or one of the words of this type.</param>
public readonly record struct Part(string? Tier, string Name)
{
    /// <summary>Of a tier: its conditions.</summary>
    public const string Conditions = "conditions";

    /// <summary>Of a tier: its modification codes.</summary>
    public const string Codes = "codes";

    /// <summary>Of a tier: the facts on which it is open.</summary>
    public const string When = "when";

    /// <summary>Of a tier: what it gives.</summary>
    public const string Gives = "pathway";

    /// <summary>Names every figure of a version at once.</summary>
    public const string Limits = "limits";

    /// <summary>That there is such a rule; every citation carries it.</summary>
    public static Part Existence { get; } = new(null, "existence");

    /// <summary>When the version begins.</summary>
    public static Part From { get; } = new(null, "from");

    /// <summary>When the version ends.</summary>
    public static Part Until { get; } = new(null, "until");

    /// <summary>How the measures are taken.</summary>
    public static Part Measured { get; } = new(null, "measured");

    /// <summary>What holds when no tier does.</summary>
    public static Part Beyond { get; } = new(null, "beyond");

    /// <summary>That another jurisdiction's rule is taken over.</summary>
    public static Part Adopts { get; } = new(null, "adopts");

    /// <summary>That there is no such rule.</summary>
    public static Part NotRegulated { get; } = new(null, "not-regulated");

    /// <summary>Whether it is a figure of a tier.</summary>
    internal bool IsFigure => Tier is not null && Name is not (Conditions or Codes or When or Gives);

    /// <summary>
    /// Whether a word under <c>carries</c> names it: the part itself (<c>free.total-lift</c>), its whole tier (<c>free</c>), the same in
    /// every tier (<c>total-lift</c>), or every figure (<c>limits</c>).
    /// </summary>
    internal bool IsNamed(string word) =>
        this == Existence || word == ToString() || (Tier is not null && (word == Tier || word == Name || (word == Limits && IsFigure)));

    /// <summary>As it is written under <c>carries</c>: <c>beyond</c>, <c>free.total-lift</c>.</summary>
    public override string ToString() => Tier is null ? Name : $"{Tier}.{Name}";
}
