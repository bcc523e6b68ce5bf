using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Site.Charts;
using RuleBook.Site.Comparison;
using RuleBook.Site.Limits;
using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>A page for each topic: drawings, the figures measure by measure with clause and data line, and who adopted what.</summary>
internal static class TopicPages
{
    public static IEnumerable<Func<Page>> Of(SiteBook site) =>
        site
            .Topics.Select(topic => (Func<Page>)(() => Of(site, topic)))
            .Concat(
                site.Topics.SelectMany(topic =>
                    Measures(site, topic)
                        .Select(measure => (Func<Page>)(() => Of(site, topic, MeasureTable.Of(site, measure.Key, measure))))
                )
            );

    private static Page Of(SiteBook site, Topic topic)
    {
        var path = Links.Topic(topic.Name);
        var body = Templates.Render(
            "topic",
            ("root", Page.Root(path)),
            ("day", Phrases.Day(site.Day)),
            ("title", topic.Title),
            ("definition", topic.Definition.Trim()),
            ("stacks", topic.Name == KnownWords.RideHeight ? TopicCharts.Stacks(site, SampleVehicle.All) : StacksView.None),
            ("steps", TopicCharts.Steps(site, topic)),
            (
                "measures",
                Measures(site, topic)
                    .Select(measure => new Link(MeasureTable.TitleOf(site, measure.Key), Links.Measure(topic.Name, measure.Key)))
                    .ToArray()
            ),
            ("boards", AdoptionBoard.Of(site, topic)),
            ("schemes", topic.Name == "certification" ? Schemes(site, topic) : null),
            ("coverage", Coverage(site, topic))
        );
        return new Page(path, SiteBook.Heading(topic.Title), "topics", body, ["fold.js"]) { Description = topic.Definition.Trim() };
    }

    private static Page Of(SiteBook site, Topic topic, MeasureTable table)
    {
        var path = Links.Measure(topic.Name, table.Measure);
        var body = Templates.Render(
            "measure",
            ("root", Page.Root(path)),
            ("day", Phrases.Day(site.Day)),
            ("m", table),
            ("topic", new Link(SiteBook.Heading(topic.Title), Links.Topic(topic.Name)))
        );
        return new Page(path, table.Title, "topics", body, []);
    }

    private static IEnumerable<IGrouping<string, LimitStatement>> Measures(SiteBook site, Topic topic)
    {
        var order = site.Words.Naming(topic.Name).Select(measure => measure.Name).ToList();
        return
        [
            .. site
                .Lines.Where(line => line.Rule.Topic == topic.Name)
                .GroupBy(line => line.Measure)
                .OrderBy(group =>
                    group.Key.Length == 0 ? 2
                    : group.Key == LimitStatements.Beyond ? 1
                    : 0
                )
                .ThenBy(group => order.IndexOf(group.Key) is var at && at < 0 ? int.MaxValue : at)
                .ThenBy(group => group.Key, StringComparer.Ordinal),
        ];
    }

    private static Matrix Schemes(SiteBook site, Topic topic) =>
        new Matrices(
            site,
            new CompareGroup("all", "", site.Places, [ComparedVehicle.Any], [], true),
            new KnownRows(site),
            site.Day,
            false
        ).Schemes(topic);

    private static CoverageView[] Coverage(SiteBook site, Topic topic) =>
        [
            .. site.Places.SelectMany(place =>
                place
                    .Coverage.Where(entry => entry.Topic == topic.Name)
                    .Select(entry => new CoverageView(place.Name, entry.State, entry.Lacks?.Trim() ?? "", Links.Line(entry.Mark)))
            ),
        ];
}

/// <summary>All that is said of a measure, place by place.</summary>
internal sealed record MeasureTable(string Measure, string Title, string Definition, MeasurePlace[] Places)
{
    public static MeasureTable Of(SiteBook site, string measure, IEnumerable<LimitStatement> lines) =>
        new(
            measure,
            TitleOf(site, measure),
            site.Words.Measures.GetValueOrDefault(measure)?.Definition.Trim() ?? "",
            [
                .. lines
                    .GroupBy(line => line.Place)
                    .Select(place => new MeasurePlace(place.Key.Name, Links.Jurisdiction(place.Key.Id), MeasureRow.Of(site, place))),
            ]
        );

    public static string TitleOf(SiteBook site, string measure) =>
        SiteBook.Heading(
            measure switch
            {
                "" => "not established or not regulated",
                LimitStatements.Beyond => "beyond these limits",
                _ => site.MeasureTitle(measure),
            }
        );
}

/// <summary>What one place says of a measure.</summary>
internal sealed record MeasurePlace(string Name, string Url, MeasureRow[] Rows);

/// <summary>One limit for one kind of vehicle, with all that says it.</summary>
internal sealed record MeasureRow(
    string Kind,
    string Amount,
    string Pathway,
    string Words,
    string When,
    string Marks,
    MeasureClause[] Clauses,
    string Report
)
{
    public static MeasureRow[] Of(SiteBook site, IEnumerable<LimitStatement> lines) =>
        [
            .. lines
                .Select(line => Of(site, line))
                .GroupBy(row => (row.Kind, row.Amount, row.Pathway, row.When, row.Marks))
                .Select(same => same.First() with { Clauses = MeasureClause.Together(same.SelectMany(row => row.Clauses)) }),
        ];

    private static MeasureRow Of(SiteBook site, LimitStatement line) =>
        new(
            line.Kind,
            (line.Measure, line.Kind) switch
            {
                (LimitStatements.Beyond, "limit") => "",
                ("", _) => $"{line.Rule.Title}: {line.Amount(site.Words)}",
                _ => line.Amount(site.Words),
            },
            line.Pathway is { } pathway ? Wording.Of(pathway) : "",
            line.Pathway is { } words ? Say.Short(words) : "",
            Say.When(site.Words, line.Rule.For, line.Tier),
            Trust.Marks(line),
            [MeasureClause.Of(line)],
            Links.Report(line.Rule)
        );
}

/// <summary>A clause that says a limit, with the lines of data that hold it.</summary>
internal sealed record MeasureClause(string Text, string Url, string[] Lines)
{
    public static MeasureClause Of(LimitStatement line) =>
        new(
            line.Standing.Cited is { } cited ? $"{cited.Source.Title}{(cited.Citation.Clause is { } clause ? $", {clause}" : "")}" : "",
            line.Standing.Cited is { } from ? Links.Source(from.Source) : Links.Rule(line.Rule),
            [Links.Line(line.Limit?.Mark ?? Links.Mark(line.Version))]
        );

    public static MeasureClause[] Together(IEnumerable<MeasureClause> clauses) =>
        [
            .. clauses
                .GroupBy(clause => (clause.Text, clause.Url))
                .Select(same => new MeasureClause(same.Key.Text, same.Key.Url, [.. same.SelectMany(clause => clause.Lines).Distinct()])),
        ];
}
