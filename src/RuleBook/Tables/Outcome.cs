using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>The pathways that a rule can give: one when <see cref="Best"/> equals <see cref="Worst"/>.</summary>
/// <param name="Best">The least onerous.</param>
/// <param name="Worst">The most onerous.</param>
public readonly record struct Outcome(Pathway Best, Pathway Worst)
{
    /// <summary>Nothing is known.</summary>
    public static Outcome Open { get; } = new(Pathway.NoCertificate, Pathway.Prohibited);

    /// <summary>Whether one pathway is left.</summary>
    public bool Decided => Best == Worst;

    /// <summary>Both apply: the more onerous of each.</summary>
    public Outcome And(Outcome other) => new(Max(Best, other.Best), Max(Worst, other.Worst));

    /// <summary>Either may apply.</summary>
    public Outcome Or(Outcome other) => new(Best < other.Best ? Best : other.Best, Max(Worst, other.Worst));

    /// <summary>An outcome as a batch gives it: the best pathway in the two lowest bits, the worst in the next two.</summary>
    public static Outcome Unpack(byte packed) => new((Pathway)(packed & 3), (Pathway)(packed >> 2 & 3));

    /// <summary>The reverse of <see cref="Unpack"/>.</summary>
    internal byte Pack() => (byte)((int)Best | (int)Worst << 2);

    private static Pathway Max(Pathway left, Pathway right) => (Pathway)Math.Max((int)left, (int)right);
}
