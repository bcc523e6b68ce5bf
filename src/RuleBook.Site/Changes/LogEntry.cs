using System.Globalization;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Feeds;
using RuleBook.Site.Limits;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Changes;

/// <summary>One change as an entry of the log.</summary>
/// <param name="Order">The day by which it is sorted.</param>
/// <param name="Kind">law, evidence or corrected.</param>
/// <param name="Place">Id of the jurisdiction; empty where it concerns several.</param>
/// <param name="PlaceName">Its name.</param>
/// <param name="Topic">Name of the topic; empty where it concerns several.</param>
/// <param name="Year">Of the day.</param>
/// <param name="Date">The day, month or year, in words.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Url">To where that stands.</param>
/// <param name="Before">What held before.</param>
/// <param name="After">What holds from then on.</param>
/// <param name="Source">The document that carries it, with how it was read; empty where the entry itself says it.</param>
/// <param name="SourceUrl">To the document.</param>
/// <param name="Line">To the data line; empty where there is none.</param>
internal sealed record LogEntry(
    DateOnly Order,
    string Kind,
    string Place,
    string PlaceName,
    string Topic,
    string Year,
    string Date,
    string Title,
    string Url,
    string[] Before,
    string[] After,
    string Source,
    string SourceUrl,
    string Line
)
{
    /// <summary>How far what it says can be leaned on: the day may be known better than the figures.</summary>
    public string Marks { get; init; } = "";

    /// <summary>The smallest job that shows it; null where none was found.</summary>
    public ShownView? Shown { get; init; }

    /// <summary>Why there is no such job; empty where there is one, and on a site for which nobody looked.</summary>
    public string Unshown { get; init; } = "";

    /// <summary>The kind for a reader.</summary>
    public string KindWords => Words(Kind);

    public static string Words(string kind) =>
        kind switch
        {
            "law" => "law changed",
            "evidence" => "evidence improved",
            _ => "figure corrected",
        };

    /// <summary>Everything that lies behind, latest first.</summary>
    public static LogEntry[] All(SiteBook site, IEnumerable<VersionChange> past) =>
        [
            .. past.Select(change => Law(site, change))
                .Concat(
                    site.Places.SelectMany(place =>
                        place.Rules.SelectMany(rule =>
                            rule.Versions.SelectMany(version =>
                                version.Corrected.Select(correction => Corrected(site, place, rule, version, correction))
                            )
                        )
                    )
                )
                .Concat(
                    site.Book.Editions.SelectMany(edition =>
                        edition.News.Where(news => news.Kind == NewsKind.Evidence).Select(news => Evidence(site, edition, news))
                    )
                )
                .OrderByDescending(entry => entry.Order)
                .ThenBy(entry => entry.Url, StringComparer.Ordinal)
                .ThenBy(entry => entry.Title, StringComparer.Ordinal),
        ];

    private static LogEntry Law(SiteBook site, VersionChange change)
    {
        var figures = FigureChange.Of(site, change.Rule, change.Version);
        var shown = site.Input.Shown.FirstOrDefault(shown => shown.Rule == change.Rule.Id && shown.From == change.Date!.Text);
        return Of(
            site,
            "law",
            change.Place,
            change.Rule,
            change.Version,
            change.Date!.Earliest,
            In(change.Date),
            figures.Before,
            figures.After
        ) with
        {
            Shown = shown is null ? null : ShownView.Of(site, shown),
            Unshown = shown is null && !site.Input.Shown.IsEmpty ? Why(site, change, figures) : "",
        };
    }

    private static string Why(SiteBook site, VersionChange change, FigureChange figures) =>
        !change.Place.Registers ? "none: no vehicles registered here"
        : site.Words.Topics[change.Rule.Topic].OfUse ? "none: a rule of use"
        : figures.IsOpen ? "none: as open as before"
        : "no job found";

    private static string In(PartialDate date) => date.Earliest == date.Latest ? Phrases.Day(date.Earliest) : date.Words;

    private static LogEntry Corrected(SiteBook site, Jurisdiction place, Rule rule, RuleVersion version, Correction correction) =>
        Of(site, "corrected", place, rule, version, correction.On, Phrases.Day(correction.On), [correction.Was], [correction.Because]);

    private static LogEntry Of(
        SiteBook site,
        string kind,
        Jurisdiction place,
        Rule rule,
        RuleVersion version,
        DateOnly day,
        string date,
        string[] before,
        string[] after
    )
    {
        var alone = VersionAlone.On(site.Book, rule, version, day);
        var cited =
            alone.Select(resolved => resolved.Evidence.Of(Part.From).Cited).FirstOrDefault(each => each is not null)
            ?? Resolver.Cited(site.Book, place.Id, version.Sources).OrderBy(each => each.Source.ReadAs).FirstOrDefault();
        return new LogEntry(
            day,
            kind,
            place.Id,
            place.Name,
            rule.Topic,
            day.Year.ToString(CultureInfo.InvariantCulture),
            date,
            rule.Title,
            Links.Version(rule, version),
            before,
            after,
            cited is null
                ? ""
                : $"{cited.Source.Title}{(cited.Citation.Clause is { } clause ? $", {clause}" : "")} ({Phrases.ReadAs(cited.Source)})",
            cited is null ? "" : Links.Source(cited.Source),
            Links.Line(version.Mark)
        )
        {
            Marks = Trust.Marks(alone[0], alone.Length == 1),
        };
    }

    private static LogEntry Evidence(SiteBook site, Edition edition, News news) =>
        new(
            edition.Day,
            "evidence",
            news.Places.Length == 1 ? news.Places[0] : "",
            string.Join(", ", news.Places.Select(site.PlaceName)),
            "",
            edition.Day.Year.ToString(CultureInfo.InvariantCulture),
            Phrases.Day(edition.Day),
            $"Edition {edition.Name}",
            "changes.html#editions",
            ["the same answers"],
            [news.Text],
            "",
            "",
            ""
        );
}
