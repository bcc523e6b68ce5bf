using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Authoring.Exports;

/// <summary>
/// The limits in force as one plain table for readers, a row a bound; what is not limited, not regulated or not established has a row that
/// says so.
/// </summary>
internal static class LimitRelation
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("place", ColumnType.Text),
        new("topic", ColumnType.Text),
        new("rule", ColumnType.Text),
        new("tier", ColumnType.Text),
        new("pathway", ColumnType.Text),
        new("alternative", ColumnType.Text),
        new("measure", ColumnType.Text),
        new("unit", ColumnType.Text),
        new("says", ColumnType.Text),
        new("low", ColumnType.Decimal),
        new("high", ColumnType.Decimal),
        new("closed", ColumnType.Text),
        new("exact", ColumnType.Text),
        new("valid_from", ColumnType.Text),
        new("valid_until", ColumnType.Text),
        new("standing", ColumnType.Text),
        new("source", ColumnType.Text),
    ];

    /// <summary>All versions that may be in force on a day, of every place.</summary>
    public static Relation Of(Book book, DateOnly day) =>
        new(
            "limits",
            Columns,
            [
                .. book
                    .Jurisdictions.SelectMany(place => place.Rules)
                    .SelectMany(rule => Resolver.Resolve(book, rule, day))
                    .SelectMany(version => Rows(book, version)),
            ]
        );

    /// <summary>The bounds that a decimal of the base unit does not hold as they are, each with the rule that sets it.</summary>
    public static IEnumerable<string> Inexact(Relation limits) =>
        limits.Rows.Where(row => row[12] == "no").Select(row => $"{row[2]}, {row[3]}: {row[6]} {row[9] ?? row[10]} {row[7]}").Distinct();

    private static IEnumerable<ImmutableArray<string?>> Rows(Book book, ResolvedVersion version)
    {
        if (version.Content is not Stated stated)
            return [Row(version, null, null, null, Says(version.Content), version.Evidence.OfAll(version.Content))];
        var beyond = Row(
            version,
            "beyond",
            stated.Beyond,
            null,
            stated.Beyond is null ? "not established" : "beyond",
            version.Evidence.Of(Evidence.PartOf(stated, true))
        );
        return stated.Tiers.SelectMany(tier => Rows(book, version, stated, tier)).Append(beyond);
    }

    private static IEnumerable<ImmutableArray<string?>> Rows(Book book, ResolvedVersion version, Stated stated, Tier tier)
    {
        Tier[] same = [.. stated.Tiers.Where(each => each.Pathway == tier.Pathway)];
        var alternative = same.Length < 2 ? null : ((char)('A' + Array.IndexOf(same, tier))).ToString();
        if (tier.Limits.IsEmpty)
            yield return Row(
                version,
                tier.Name,
                tier.Pathway,
                alternative,
                "no bounds",
                version.Evidence.Of(Evidence.PartOf(stated, false))
            );
        foreach (var limit in tier.Limits)
        {
            var (measure, standing) = (book.Vocabulary.Measures[limit.Measure], version.Evidence.Of(tier, limit));
            var unit = measure.IsDate ? "yyyymmdd" : VocabularyRelations.Unit(measure);
            var blank = Row(version, tier.Name, tier.Pathway, alternative, Says(limit.Kind), standing)
                .SetItem(6, measure.Name)
                .SetItem(7, unit);
            if (limit.Bounds is null)
                yield return blank;
            if (limit.Bounds?.Lower is { } low)
                yield return Bounded(blank, 9, measure, low);
            if (limit.Bounds?.Upper is { } high)
                yield return Bounded(blank, 10, measure, high);
        }
    }

    private static ImmutableArray<string?> Bounded(ImmutableArray<string?> row, int at, Measure measure, Bound bound) =>
        row.SetItem(at, Decimals.Of(measure, bound.Value))
            .SetItem(11, bound.Closed ? "yes" : "no")
            .SetItem(12, measure.IsDate || Decimals.IsExact(bound.Value) ? "yes" : "no");

    private static ImmutableArray<string?> Row(
        ResolvedVersion version,
        string? tier,
        Pathway? pathway,
        string? alternative,
        string says,
        Standing standing
    ) =>
        [
            version.Rule.Jurisdiction,
            version.Rule.Topic,
            version.Rule.Id,
            tier,
            pathway is { } given ? Wording.Of(given) : null,
            alternative,
            null,
            null,
            says,
            null,
            null,
            null,
            null,
            version.From?.Text,
            version.Until?.Text,
            Phrases.Standing(standing),
            standing.Cited is { } cited
                ? $"{cited.Source.Jurisdiction}/{cited.Source.Id}{(cited.Citation.Clause is { Length: > 0 } clause ? $" {clause}" : "")}"
                : null,
        ];

    private static string Says(Content content) => content is NotRegulated ? "not regulated" : "not established";

    private static string Says(LimitKind kind) =>
        kind switch
        {
            LimitKind.None => "no limit",
            LimitKind.NotEstablished => "not established",
            _ => "limit",
        };
}
