using RuleBook.Site.Limits;
using RuleBook.Site.Views;

namespace RuleBook.Site.Pages;

/// <summary>One statement in a cell.</summary>
/// <param name="Kind">limit, none, not-established or not-regulated.</param>
/// <param name="Amount">Number and unit, or which kind of nothing.</param>
/// <param name="Pathway">Word of the data; empty where no pathway is stated.</param>
/// <param name="Words">The pathway for a reader.</param>
/// <param name="When">For which of the rule's vehicles; empty for all.</param>
/// <param name="Kinds">The kinds of vehicle bound, for the page's filter.</param>
internal sealed record CellLine(string Kind, string Amount, string Pathway, string Words, string When, string Kinds);

/// <summary>The statements of one rule in a cell.</summary>
/// <param name="Url">To what it stands on.</param>
/// <param name="Where">The name of the rule's <see cref="WhereView"/>; empty where there is none.</param>
/// <param name="Marks">disputed, second hand, day open.</param>
/// <param name="When">The vehicles for which the rule is; empty for all.</param>
/// <param name="Lines">What it says.</param>
internal sealed record CellRule(string Url, string Where, string Marks, string When, CellLine[] Lines);

/// <summary>A jurisdiction's statements on a measure; <paramref name="Otherwise"/> says why there is none.</summary>
internal sealed record ComparedCell(CellRule[] Rules, string Otherwise);

/// <summary>A measure, or what else is compared.</summary>
internal sealed record Row(string Id, string Title, string Url, ComparedCell[] Cells);

/// <summary>The rows of a topic.</summary>
internal sealed record RowGroup(string Id, string Title, string Url, Row[] Rows);

/// <summary>A jurisdiction as a column.</summary>
internal sealed record Column(string Id, string Name, string Url);

/// <summary>The comparison on one day.</summary>
/// <param name="Groups">Its rows by topic.</param>
/// <param name="Where">What its cells lean on.</param>
internal sealed record CompareModel(RowGroup[] Groups, WhereView[] Where)
{
    public static CompareModel Of(SiteBook site, CompareGroup group, DateOnly day)
    {
        var lines = group.Places.SelectMany(place => LimitStatements.Of(site.Book, group.Kinds, place, day)).ToLookup(line => line.Rule.Topic);
        var rows = new CompareRows(site, group);
        RowGroup[] groups =
        [
            .. site.Topics
                .Where(topic => topic.Name != "certification")
                .Select(topic => new RowGroup(
                    Links.Slug(topic.Name),
                    SiteBook.Heading(topic.Title),
                    Links.Topic(topic.Name),
                    rows.Of(topic, lines[topic.Name].ToLookup(line => line.Place.Id))))
                .Where(each => each.Rows.Length > 0),
            CertificationRows.Of(site, group.Places, day),
        ];
        return new CompareModel(groups, rows.Where.Views);
    }
}
