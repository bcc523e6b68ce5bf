using RuleBook.Evaluation;
using RuleBook.Rules;
using RuleBook.Site.Limits;

namespace RuleBook.Site.Pages;

/// <summary>One statement in a cell.</summary>
/// <param name="Kind">limit, none, not-established or not-regulated.</param>
/// <param name="Amount">Number and unit, or which kind of nothing.</param>
/// <param name="Pathway">Word of the data; empty where no pathway is stated.</param>
/// <param name="Words">The pathway for a reader.</param>
/// <param name="When">For which vehicles.</param>
/// <param name="Kinds">The kinds of vehicle bound, for the page's filter.</param>
internal sealed record CellLine(string Kind, string Amount, string Pathway, string Words, string When, string Kinds);

/// <summary>The statements of one rule in a cell.</summary>
/// <param name="Url">To the rule with clause, data line and correction report.</param>
/// <param name="Marks">disputed, second hand, day open.</param>
/// <param name="Lines">What it says.</param>
internal sealed record CellRule(string Url, string Marks, CellLine[] Lines);

/// <summary>A jurisdiction's statements on a measure; <paramref name="Otherwise"/> says why there is none.</summary>
internal sealed record Cell(string Column, CellRule[] Rules, string Otherwise);

/// <summary>A measure, or what else is compared.</summary>
internal sealed record Row(string Id, string Title, string Url, Cell[] Cells);

/// <summary>The rows of a topic.</summary>
internal sealed record RowGroup(string Id, string Title, string Url, Row[] Rows);

/// <summary>A jurisdiction as a column.</summary>
internal sealed record Column(string Id, string Name, string Url);

/// <summary>The comparison on one day.</summary>
internal static class CompareModel
{
    public static RowGroup[] Of(SiteBook site, CompareGroup group, DateOnly day)
    {
        var lines = group.Places.SelectMany(place => LimitLines.Of(site.Book, group.Kinds, place, day)).ToLookup(line => line.Rule.Topic);
        return
        [
            .. site.Topics
                .Where(topic => topic.Name != "certification")
                .Select(topic => new RowGroup(Links.Slug(topic.Name), SiteBook.Heading(topic.Title), Links.Topic(topic.Name), Rows(site, group, topic, lines[topic.Name].ToLookup(line => line.Place.Id))))
                .Where(rows => rows.Rows.Length > 0),
            Certification.Of(site, group.Places, day),
        ];
    }

    private static Row[] Rows(SiteBook site, CompareGroup group, Topic topic, ILookup<string, LimitLine> lines)
    {
        var measures = lines.SelectMany(place => place).Select(line => line.Measure).Where(name => name.Length > 0).Distinct().ToArray();
        var order = topic.TouchedBy.ToArray();
        return
        [
            .. (measures.Length == 0 ? [LimitLines.Beyond] : measures)
                .OrderBy(name => name == LimitLines.Beyond)
                .ThenBy(name => Array.IndexOf(order, name) is var at && at < 0 ? int.MaxValue : at)
                .ThenBy(name => name, StringComparer.Ordinal)
                .Select(name => new Row(
                    $"{Links.Slug(topic.Name)}.{Links.Slug(name)}",
                    name == LimitLines.Beyond ? "beyond these limits" : site.MeasureTitle(name),
                    site.Shown.Contains((topic.Name, name)) ? Links.Measure(topic.Name, name) : Links.Topic(topic.Name),
                    [.. group.Places.Select(place => Cell(site, group.Kinds, topic, place, name, [.. lines[place.Id]]))])),
        ];
    }

    private static Cell Cell(SiteBook site, VehicleKinds kinds, Topic topic, Jurisdiction place, string measure, LimitLine[] lines)
    {
        var own = lines.Where(line => line.Measure == measure).ToArray();
        var covered = own.Aggregate(System.Numerics.BigInteger.Zero, (set, line) => set | line.Kinds);
        var open = lines.Where(line => line.Measure.Length == 0 && (line.Kinds & ~covered) != 0);
        return new Cell(
            place.Id,
            [
                .. Told(own.Concat(open))
                    .GroupBy(line => (Url: Links.Rule(line.Rule), Marks: Trust.Marks(line.Version, line.Certain)))
                    .Select(rule => new CellRule(rule.Key.Url, rule.Key.Marks, [.. rule.OrderBy(line => line.Pathway ?? Pathway.Prohibited).Select(line => Line(site, kinds, line)).Distinct()])),
            ],
            lines.Length > 0 ? "no limit of its own" : Otherwise(place, topic.Name));
    }

    /// <summary>What several rules leave open is told once, with the kinds of vehicle of all of them.</summary>
    private static IEnumerable<LimitLine> Told(IEnumerable<LimitLine> lines) => lines
        .GroupBy(line => line.Kind is "not-established" or "not-regulated" ? $"{line.Kind} {line.Pathway} {Trust.Marks(line.Version, line.Certain)}" : "")
        .SelectMany(group => group.Key.Length == 0
            ? group.ToArray()
            : [group.First() with { Kinds = group.Aggregate(System.Numerics.BigInteger.Zero, (set, line) => set | line.Kinds), Several = group.Select(line => line.Rule.Id).Distinct().Count() > 1 }]);

    private static string Otherwise(Jurisdiction place, string topic) =>
        place.Coverage.Any(entry => entry.Topic == topic && entry.State == "none") ? "not established" : "no rule in the book";

    private static CellLine Line(SiteBook site, VehicleKinds kinds, LimitLine line)
    {
        var isBeyond = line.Measure == LimitLines.Beyond;
        return new CellLine(
            line.Kind,
            isBeyond && line.Kind == "limit" ? Say.Short(line.Pathway!.Value) : line.Amount(site.Words),
            line.Pathway is { } pathway ? Wording.Of(pathway) : "",
            !isBeyond && line.Pathway is { } words ? Say.Short(words) : "",
            line.Several ? kinds.Words(line.Kinds) : line.Tier is { } tier ? Say.When(site.Words, line.Rule.For, tier.When) : Say.When(site.Words, line.Rule.For),
            kinds.Text(line.Kinds));
    }
}
