using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Site.Limits;

/// <summary>
/// How far a version can be leaned on, in words; empty when an authority's own text stands behind it and nobody disputes it.
/// </summary>
internal static class Trust
{
    /// <summary>Of one statement: how its own figure is known.</summary>
    public static string Marks(LimitStatement line) => Marks(line.Version, line.Certain, line.Standing);

    /// <summary>Of a version as a whole: by the weakest of what it says.</summary>
    public static string Marks(ResolvedVersion version, bool certain) => Marks(version, certain, version.Evidence.OfAll(version.Content));

    private static string Marks(ResolvedVersion version, bool certain, Standing standing)
    {
        var marks = new List<string>();
        if (!certain)
            marks.Add("day open");
        if (!version.Disputes.IsEmpty)
            marks.Add("disputed");
        if (!version.Sources.IsEmpty && standing.Basis != ReadAs.Primary)
            marks.Add(Phrases.Standing(standing));
        return string.Join(", ", marks);
    }
}
