namespace RuleBook.Evaluation;

/// <summary>Versions that say the same of the same vehicles; contents are compared by identity, except where there is nothing to compare.</summary>
internal sealed class SameContent : IEqualityComparer<ResolvedVersion>
{
    public static SameContent Instance { get; } = new();

    public bool Equals(ResolvedVersion? x, ResolvedVersion? y) => ReferenceEquals(x, y) || (x is not null && y is not null
        && ReferenceEquals(x.Rule.For, y.Rule.For)
        && (ReferenceEquals(x.Content, y.Content) || (x.Content, y.Content) is (Rules.NotEstablished, Rules.NotEstablished) or (Rules.NotRegulated, Rules.NotRegulated))
        && x.Parts.SequenceEqual(y.Parts));

    public int GetHashCode(ResolvedVersion obj) => obj.Rule.Id.GetHashCode(StringComparison.Ordinal);
}
