using System.Collections.Immutable;

namespace RuleBook.Text;

/// <summary>One node of an input as written: every scalar is its text, every node knows its place.</summary>
/// <param name="Mark">Where it starts.</param>
public abstract record Node(Mark Mark);

/// <summary>A word, number, date or text.</summary>
/// <param name="Text">As written, without quotes.</param>
/// <param name="Mark">Where it starts.</param>
public sealed record Scalar(string Text, Mark Mark) : Node(Mark);

/// <summary>A list.</summary>
/// <param name="Items">In written order.</param>
/// <param name="Mark">Where it starts.</param>
public sealed record Sequence(ImmutableArray<Node> Items, Mark Mark) : Node(Mark);

/// <summary>Keys with values.</summary>
/// <param name="Entries">In written order; keys are unique.</param>
/// <param name="Mark">Where it starts.</param>
public sealed record Mapping(ImmutableArray<KeyValuePair<Scalar, Node>> Entries, Mark Mark) : Node(Mark)
{
    /// <summary>The value under <paramref name="key"/>, or null.</summary>
    public Node? Find(string key) => Entries.FirstOrDefault(entry => entry.Key.Text == key).Value;
}
