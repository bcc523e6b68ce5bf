using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>What a version says by itself, whichever others there are.</summary>
internal static class VersionAlone
{
    /// <summary>With what it adopts as on <paramref name="day"/>; more than one where the adopted version is not certain.</summary>
    public static ImmutableArray<ResolvedVersion> On(Book book, Rule rule, RuleVersion version, DateOnly day)
    {
        var alone = rule with
        {
            Versions = [version with { From = null, InForceBy = null, Announced = null, Proposed = false, Until = null }],
        };
        return [.. Resolver.Resolve(book, alone, day).Select(resolved => resolved with { Rule = rule })];
    }
}
