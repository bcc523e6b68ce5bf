using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Site.Limits;

/// <summary>How far a version can be leaned on, in words; empty when an authority's own text stands behind it and nobody disputes it.</summary>
internal static class Trust
{
    public static string Marks(ResolvedVersion version, bool certain)
    {
        var marks = new List<string>();
        if (!certain) marks.Add("day open");
        if (!version.Disputes.IsEmpty) marks.Add("disputed");
        if (Weak(version) is { } weak) marks.Add(weak);
        return string.Join(", ", marks);
    }

    /// <summary>Null when an authority's own text was read, or when no source is cited at all.</summary>
    public static string? Weak(ResolvedVersion version)
    {
        if (version.Sources.IsEmpty || version.Sources.Any(cited => cited.Source.ReadAs == ReadAs.Primary)) return null;
        return version.Sources.Min(cited => cited.Source.ReadAs) switch
        {
            ReadAs.Secondary => "second hand",
            ReadAs.CommonPractice => "common practice",
            _ => "from memory",
        };
    }
}
