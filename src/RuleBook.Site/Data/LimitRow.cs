using System.Globalization;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Units;

namespace RuleBook.Site.Data;

/// <summary>One limit of a version at all times, flat: the row of the table that is published as CSV and JSON.</summary>
/// <param name="Fields">Name and text in the order of the table; an absent value is empty.</param>
internal sealed record LimitRow(IReadOnlyList<(string Name, string Text)> Fields)
{
    public static readonly string[] Numbers = ["lower", "upper"];

    public static readonly string[] Flags = ["lower-included", "upper-included"];

    public static IEnumerable<LimitRow> Of(SiteBook site, Jurisdiction place) =>
        place.Rules.SelectMany(rule => rule.Versions.SelectMany((version, i) => Of(site, rule, version, i)));

    private static IEnumerable<LimitRow> Of(SiteBook site, Rule rule, RuleVersion version, int at)
    {
        foreach (var resolved in Resolved(site, rule, version, at))
        {
            if (resolved.Content is not Stated stated)
            {
                yield return Row(
                    site,
                    rule,
                    version,
                    resolved,
                    null,
                    null,
                    resolved.Content is NotRegulated ? "not-regulated" : "not-established"
                );
                continue;
            }

            foreach (var tier in stated.Tiers)
            foreach (var limit in tier.Limits)
                yield return Row(site, rule, version, resolved, tier, limit, Kind(limit));
            yield return Row(site, rule, version, resolved, null, null, stated.Beyond is null ? "beyond-not-established" : "beyond");
        }
    }

    /// <summary>As on the version's first certain day; a version that decides nothing is taken as written.</summary>
    private static IEnumerable<ResolvedVersion> Resolved(SiteBook site, Rule rule, RuleVersion version, int at)
    {
        var day = version.From?.Latest ?? version.InForceBy?.Latest ?? site.Day;
        var next = version.Until ?? rule.Versions.Skip(at + 1).FirstOrDefault(later => later.Decides)?.From;
        return VersionAlone.On(site.Book, rule, version, day).Select(resolved => resolved with { Until = next });
    }

    private static LimitRow Row(
        SiteBook site,
        Rule rule,
        RuleVersion version,
        ResolvedVersion resolved,
        Tier? tier,
        Limit? limit,
        string kind
    )
    {
        var measure = limit is null ? null : site.Words.Measures.GetValueOrDefault(limit.Measure);
        var standing = resolved.Evidence.Of(
            tier is not null && limit is not null ? new Part(tier.Name, limit.Measure) : Evidence.PartOf(resolved.Content, true)
        );
        var source = standing.Cited;
        var pathway = tier?.Pathway ?? (resolved.Content as Stated)?.Beyond;
        return new LimitRow([
            ("jurisdiction", rule.Jurisdiction),
            ("topic", rule.Topic),
            ("rule", rule.Name),
            ("title", rule.Title),
            (
                "state",
                version switch
                {
                    { Proposed: true } => "proposed",
                    { Announced: not null } => "announced",
                    _ => "in-force",
                }
            ),
            ("from", (version.From ?? version.Announced)?.Text ?? ""),
            ("in-force-by", version.InForceBy?.Text ?? ""),
            ("until", resolved.Until?.Text ?? ""),
            ("kind", kind),
            ("pathway", pathway is { } known ? Wording.Of(known) : ""),
            ("tier", tier?.Name ?? ""),
            ("vehicles", Say.When(site.Words, rule.For, tier)),
            ("measure", limit?.Measure ?? ""),
            (
                "unit",
                measure is null ? ""
                : measure.IsDate ? "date"
                : measure.Unit.Symbol
            ),
            ("lower", Value(measure, limit?.Bounds?.Lower)),
            ("lower-included", Included(limit?.Bounds?.Lower)),
            ("upper", Value(measure, limit?.Bounds?.Upper)),
            ("upper-included", Included(limit?.Bounds?.Upper)),
            ("lower-written", Written(limit?.Bounds?.Lower)),
            ("upper-written", Written(limit?.Bounds?.Upper)),
            ("conditions", string.Join(' ', tier?.Provided ?? [])),
            ("adopted-from", string.Join(' ', resolved.Adopted.Select(step => step.Rule))),
            ("disputed", resolved.Disputes.IsEmpty ? "no" : "yes"),
            ("from-read-as", Wording.Of(resolved.Evidence.Of(Part.From))),
            ("read-as", Wording.Of(standing)),
            ("source", source is null ? "" : $"{source.Source.Jurisdiction}/{source.Source.Id}"),
            ("clause", source?.Citation.Clause ?? ""),
            ("checked", source?.Source.Checked.Text ?? ""),
            ("file", (limit?.Mark ?? version.Mark).File),
            ("line", (limit?.Mark ?? version.Mark).Line.ToString(CultureInfo.InvariantCulture)),
        ]);
    }

    private static string Kind(Limit limit) =>
        limit.Kind switch
        {
            LimitKind.None => "none",
            LimitKind.NotEstablished => "not-established",
            _ => "limit",
        };

    private static string Value(Measure? measure, Bound? bound) =>
        measure is null || bound is null ? "" : Units.Numbers.Show(bound.Value / measure.Unit.ToBase, 6);

    /// <summary>What the law prints; <see cref="Value"/> has the tolerance in it.</summary>
    private static string Written(Bound? bound) => bound?.Stated ?? bound?.Written?.ToString() ?? "";

    private static string Included(Bound? bound) =>
        bound is null ? ""
        : bound.Closed ? "true"
        : "false";
}
