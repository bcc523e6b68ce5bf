namespace RuleBook.Tables;

/// <summary>
/// Functions of what is not known, each kept once (a reduced, ordered decision diagram with several values a variable): a variable on which
/// the value does not depend has no node.
/// </summary>
/// <param name="most">So many nodes at most.</param>
internal sealed class Diagram(int most)
{
    /// <summary>The variable of a leaf.</summary>
    public const int Leaf = int.MaxValue;

    private readonly List<(int Variable, int[] Children, ulong Value)> nodes = [];
    private readonly Dictionary<ulong, int> leaves = [];
    private readonly Dictionary<int, List<int>> unique = [];
    private readonly Dictionary<(int, int), int> joined = [];

    /// <summary>Whether it grew beyond its bound; what is asked of it is then of no use.</summary>
    public bool IsFull => nodes.Count > most;

    public int VariableOf(int node) => nodes[node].Variable;

    public ulong ValueOf(int node) => nodes[node].Value;

    public ReadOnlySpan<int> ChildrenOf(int node) => nodes[node].Children;

    /// <summary>The function that is always the same.</summary>
    public int Of(ulong value)
    {
        if (leaves.TryGetValue(value, out var known))
            return known;
        nodes.Add((Leaf, [], value));
        return leaves[value] = nodes.Count - 1;
    }

    /// <summary>The function that is one of some functions of later variables, by the value of a variable.</summary>
    public int Of(int variable, int[] children)
    {
        if (children.AsSpan().IndexOfAnyExcept(children[0]) < 0)
            return children[0];
        var hash = new HashCode();
        hash.Add(variable);
        foreach (var child in children)
            hash.Add(child);
        var code = hash.ToHashCode();
        if (!unique.TryGetValue(code, out var same))
            unique[code] = same = [];
        foreach (var node in same)
            if (nodes[node].Variable == variable && nodes[node].Children.AsSpan().SequenceEqual(children))
                return node;
        nodes.Add((variable, children, 0));
        same.Add(nodes.Count - 1);
        return nodes.Count - 1;
    }

    /// <summary>Both functions together.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    /// <param name="join">Joins two values; the same whichever comes first, and always used with this diagram.</param>
    public int Join(int left, int right, Func<ulong, ulong, ulong> join)
    {
        if (left == right || IsFull)
            return left;
        if (left > right)
            (left, right) = (right, left);
        if (joined.TryGetValue((left, right), out var known))
            return known;
        var (first, second) = (nodes[left], nodes[right]);
        if (first.Variable == Leaf && second.Variable == Leaf)
            return joined[(left, right)] = Of(join(first.Value, second.Value));
        var variable = Math.Min(first.Variable, second.Variable);
        var children = new int[first.Variable == variable ? first.Children.Length : second.Children.Length];
        for (var i = 0; i < children.Length; i++)
            children[i] = Join(
                first.Variable == variable ? first.Children[i] : left,
                second.Variable == variable ? second.Children[i] : right,
                join
            );
        return joined[(left, right)] = Of(variable, children);
    }

    /// <summary>The function with its values changed.</summary>
    public int Map(int node, Func<ulong, ulong> change)
    {
        var done = new Dictionary<int, int>();
        return Map(node);

        int Map(int at)
        {
            if (done.TryGetValue(at, out var known))
                return known;
            var (variable, children, value) = nodes[at];
            return done[at] = variable == Leaf ? Of(change(value)) : Of(variable, Array.ConvertAll(children, Map));
        }
    }
}
