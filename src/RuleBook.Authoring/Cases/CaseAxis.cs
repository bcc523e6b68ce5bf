using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>A path of the job with the values it takes.</summary>
/// <param name="Path">Keys joined by dots.</param>
/// <param name="Values">In written order.</param>
internal sealed record CaseAxis(Scalar Path, ImmutableArray<Scalar> Values)
{
    /// <summary>The first key of the path.</summary>
    public string Root => Path.Text.Split('.')[0];

    /// <summary>What <paramref name="changes"/> has under the path.</summary>
    public Node? In(Mapping changes) => Path.Text.Split('.').Aggregate((Node?)changes, (at, key) => (at as Mapping)?.Find(key));
}
