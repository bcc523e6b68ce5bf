using System.Numerics;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Site.Views;

namespace RuleBook.Site.Pages;

/// <summary>Makes the rows of one comparison, topic by topic.</summary>
internal sealed class CompareRows(SiteBook site, CompareGroup group)
{
    public WhereList Where { get; } = new();

    public Row[] Of(Topic topic, ILookup<string, LimitStatement> lines)
    {
        var measures = lines.SelectMany(place => place).Select(line => line.Measure).Where(name => name.Length > 0).Distinct().ToArray();
        var order = site.Words.Naming(topic.Name).Select(measure => measure.Name).ToArray();
        return
        [
            .. (measures.Length == 0 ? [LimitStatements.Beyond] : measures)
                .OrderBy(name => name == LimitStatements.Beyond)
                .ThenBy(name => Array.IndexOf(order, name) is var at && at < 0 ? int.MaxValue : at)
                .ThenBy(name => name, StringComparer.Ordinal)
                .Select(name => new Row(
                    $"{Links.Slug(topic.Name)}.{Links.Slug(name)}",
                    name == LimitStatements.Beyond ? "beyond these limits" : site.MeasureTitle(name),
                    site.Shown.Contains((topic.Name, name)) ? Links.Measure(topic.Name, name) : Links.Topic(topic.Name),
                    [.. group.Places.Select(place => Cell(topic, place, name, [.. lines[place.Id]]))])),
        ];
    }

    private ComparedCell Cell(Topic topic, Jurisdiction place, string measure, LimitStatement[] lines)
    {
        var own = lines.Where(line => line.Measure == measure).ToArray();
        var covered = own.Aggregate(BigInteger.Zero, (set, line) => set | line.Kinds);
        var open = lines.Where(line => line.Measure.Length == 0 && (line.Kinds & ~covered) != 0);
        return new ComparedCell(
            [
                .. Told(own.Concat(open))
                    .GroupBy(line => (Url: Links.Rule(line.Rule), Where: Where.Id(line.Version), Marks: Trust.Marks(line), When: When(line)))
                    .Select(rule => new CellRule(
                        rule.Key.Url,
                        rule.Key.Where,
                        rule.Key.Marks,
                        rule.Key.When,
                        [.. rule.OrderBy(line => line.Pathway ?? Pathway.Prohibited).Select(Line).Distinct()])),
            ],
            lines.Length > 0 ? "no limit of its own" : Otherwise(place, topic.Name));
    }

    /// <summary>What several rules leave open is told once, with the kinds of vehicle of all of them.</summary>
    private static IEnumerable<LimitStatement> Told(IEnumerable<LimitStatement> lines) => lines
        .GroupBy(line => line.Kind is "not-established" or "not-regulated" ? $"{line.Kind} {line.Pathway} {Trust.Marks(line)}" : "")
        .SelectMany(same => same.Key.Length == 0 ? same.ToArray() : [Together([.. same])]);

    private static LimitStatement Together(LimitStatement[] same) => same[0] with
    {
        Kinds = same.Aggregate(BigInteger.Zero, (set, line) => set | line.Kinds),
        Several = same.Select(line => line.Rule.Id).Distinct().Count() > 1,
    };

    private static string Otherwise(Jurisdiction place, string topic) =>
        place.Coverage.Any(entry => entry.Topic == topic && entry.State == "none") ? "not established" : "no rule in the book";

    /// <summary>The vehicles of the rule, or of all rules that the line stands for.</summary>
    private string When(LimitStatement line) => line.Several ? group.Kinds.Words(line.Kinds) : Say.When(site.Words, line.Rule.For);

    private CellLine Line(LimitStatement line)
    {
        var isBeyond = line.Measure == LimitStatements.Beyond;
        return new CellLine(
            line.Kind,
            isBeyond && line.Kind == "limit" ? Say.Short(line.Pathway!.Value) : line.Amount(site.Words),
            line.Pathway is { } pathway ? Wording.Of(pathway) : "",
            !isBeyond && line.Pathway is { } words ? Say.Short(words) : "",
            line.Tier is { } tier ? Say.When(site.Words, tier.When) : "",
            group.Kinds.Text(line.Kinds));
    }
}
