using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using RuleBook.Site.Building;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests.Building;

/// <summary>The whole site of the invented book: which files it has, and those that name others.</summary>
public sealed partial class InventedSiteTests
{
    private const string Fixed = "beside.js changes.js compare.js fold.js icon.svg preview.png report.js site.css";

    private const string OfTheCheckPage =
        "answer.js asking.js card.js check.js evaluator.js form.js notes.js offline.js quick.js sheet.css spelling.js vehicles.js yaml.js";

    /// <summary>
    /// A page for each topic of the vocabulary and each measure with a limit, file of the book, source, place, and day on which something
    /// begins, may have begun, is first seen or ends.
    /// </summary>
    private const string Pages = """
        changes.html compare.html compare/xa/2012-01-01.html compare/xa/2014-01-01.html compare/xa/2014-02-03.html compare/xa/2015-01-01.html
        compare/xa/2015-12-31.html compare/xa/2016-03-01.html compare/xa/2019-05-06.html compare/xa/2020-02-01.html coverage.html data.html
        index.html jurisdictions/xa-n.html jurisdictions/xa.html lines/vocabulary/categories.yaml.html lines/vocabulary/cautions.yaml.html
        lines/vocabulary/conditions.yaml.html lines/vocabulary/facts.yaml.html lines/vocabulary/measures.yaml.html
        lines/vocabulary/pathways.yaml.html lines/vocabulary/topics.yaml.html lines/xa-n/certification.yaml.html
        lines/xa-n/jurisdiction.yaml.html lines/xa-n/ride-height.yaml.html lines/xa-n/sources.yaml.html lines/xa/jurisdiction.yaml.html
        lines/xa/ride-height.yaml.html lines/xa/sources.yaml.html open.html questions.html reference.html reread.html sources/xa-n/act.html
        sources/xa/code.html sources/xa/letter.html topics/certification.html topics/mass-ratings.html topics/ride-height.html
        topics/ride-height/beyond.html topics/ride-height/body-lift.html topics/ride-height/open.html topics/ride-height/suspension-lift.html
        topics/ride-height/track-increase.html topics/road-use.html topics/towing.html topics/tyres-and-wheels.html words.html
        """;

    private const string Data =
        "data/datapackage.json data/limits.csv data/limits.json data/limits.schema.json data/xa-n.csv data/xa-n.json "
        + "data/xa.csv data/xa.json";

    private static readonly SiteFile Evaluator = new("_framework/dotnet.js", "start"u8.ToArray());

    private static SiteInput Input => InventedBook.Site.Input;

    [Fact]
    public void A_site_has_its_pages_its_data_and_the_book_as_written()
    {
        var files = SiteBuild.Render(Input);
        files.Select(file => file.Path).ShouldBe(files.Select(file => file.Path).Order(StringComparer.Ordinal));
        var raw = Input.Files.Select(file => $"data/yaml/{file.Path}");
        files
            .Select(file => file.Path)
            .ShouldBe(
                [.. Words($"{Fixed} {Pages} {Data} changes.atom changes.ics licences.txt rulebook-site.txt worker.js"), .. raw],
                ignoreOrder: true
            );
        Text(files, "worker.js").ShouldStartWith("// This edition of the site has no check page");
        Text(files, "rulebook-site.txt")
            .ShouldBe(
                $"A site rendered by the command, which replaces and takes away the files named here and no others.\n{Input.Book.Digest}\n"
            );
        var licence = File.ReadAllText(Path.Combine(TheBook.Folder, "LICENSE"));
        Text(files, "licences.txt").ShouldBe($"{licence}\n{File.ReadAllText(Path.Combine(TheBook.Folder, "THIRD-PARTY.txt"))}");
        foreach (var file in Input.Files)
            Text(files, $"data/yaml/{file.Path}").ShouldBe(file.Text);
    }

    /// <summary>
    /// The worker keeps what the check page needs from the first visit on, and the other pages when somebody asks for them. A map
    /// (sitemaps.org, 0.9) has whole addresses in <c>urlset/url/loc</c> of its namespace.
    /// </summary>
    [Fact]
    public void With_a_check_page_the_worker_names_every_page_and_at_an_address_a_map_does()
    {
        var input = Input with { Check = [Evaluator], Address = new Uri("https://limits.example/book/") };
        var files = SiteBuild.Render(input);
        files
            .Select(file => file.Path)
            .ShouldBe(
                [
                    .. Words($"{Fixed} {Pages} {Data} {OfTheCheckPage} changes.atom changes.ics licences.txt rulebook-site.txt worker.js"),
                    .. Input.Files.Select(file => $"data/yaml/{file.Path}"),
                    Evaluator.Path,
                    "check.html",
                    "data/book.json",
                    "sitemap.xml",
                ],
                ignoreOrder: true
            );

        var worker = Worker(files);
        worker.Files.ShouldBe(
            Words($"{Evaluator.Path} check.html data/book.json icon.svg site.css words.html {OfTheCheckPage}").Order(StringComparer.Ordinal)
        );
        worker.Pages.ShouldBe(Words($"{Fixed} {Pages}").Except(["icon.svg", "site.css", "words.html"]).Order(StringComparer.Ordinal));
        Worker(SiteBuild.Render(input with { ReportTo = "https://desk.example/?" })).Version.ShouldNotBe(worker.Version);

        foreach (var (path, page, _) in Parsed.Of(files))
        {
            (page.QuerySelector("header [aria-current=page]")?.TextContent ?? "").ShouldBe(Lit(path), path);
            var title = page.QuerySelector("h1")!.TextContent;
            page.Title.ShouldBe($"{title} - RuleBook");
            if (Description(path, title) is { } description)
                page.QuerySelector("meta[name=description]")!.GetAttribute("content").ShouldBe(description, path);
        }

        XNamespace schema = "http://www.sitemaps.org/schemas/sitemap/0.9";
        var map = XDocument.Parse(Text(files, "sitemap.xml")).Root!;
        map.Name.ShouldBe(schema + "urlset");
        map.Elements()
            .Select(each => (each.Name, each.Elements().Single().Name, each.Value))
            .ShouldBe(
                Words($"check.html {Pages}").Select(page => (schema + "url", schema + "loc", $"https://limits.example/book/{page}")),
                ignoreOrder: true
            );

        using var book = JsonDocument.Parse(Text(files, "data/book.json"));
        book.RootElement.GetProperty("digest").GetString().ShouldBe(Input.Book.Digest);
        book.RootElement.GetProperty("files").EnumerateObject().Select(each => each.Name).ShouldBe(Input.Files.Select(file => file.Path));
        var source = book.RootElement.GetProperty("files").GetProperty("jurisdictions/xa-n/sources.yaml").GetProperty("sources")[0];
        source
            .EnumerateObject()
            .Select(each => $"{each.Name}={each.Value.GetString()}")
            .ShouldBe([
                "source=act",
                "title=The act",
                "publisher=The north",
                "read-as=primary",
                "checked=2026-11",
                "recheck-after=2027-11-25",
            ]);
    }

    /// <summary>The entry of the navigation under which somebody looks for a page; the first page, topics and places have none.</summary>
    private static string Lit(string path) =>
        path.Split('/', '.')[0] switch
        {
            "check" => "Check a job",
            "compare" => "Compare",
            "changes" or "reread" => "Changes",
            "questions" => "Questions",
            "data" or "open" or "lines" => "Data",
            "words" or "reference" => "Words",
            _ => "",
        };

    /// <summary>What a search engine shows of a page.</summary>
    private static string? Description(string path, string title) =>
        path switch
        {
            "index.html" =>
                "How high may a vehicle be raised, on which tyres, and who certifies? The limits of each state, with sources and how each "
                    + "is known.",
            "check.html" =>
                "Is a modified vehicle allowed where it is registered, by which pathway, and what stands in the way? Answered in the page; "
                    + "nothing that is typed leaves it.",
            "compare.html" =>
                "How far a modified vehicle may go in The nation, state by state, as on 25 November 2026: free, certified, measured how, "
                    + "who certifies.",
            "compare/xa/2016-03-01.html" =>
                "How far a modified vehicle may go in The nation, state by state, as on 1 March 2016: free, certified, "
                    + "measured how, who certifies.",
            "jurisdictions/xa-n.html" =>
                "Lifts, tyres, ratings and towing of modified vehicles in The north: what is free, what needs a certificate, "
                    + "who certifies, each limit with its source.",
            // Those of other days and places are made alike; that of a topic is its definition.
            _ when path.Split('/')[0] is "compare" or "jurisdictions" or "topics" => null,
            _ => $"{title}: limits on modified vehicles, state by state, each with its source and how it is known.",
        };

    private static (string Version, string[] Files, string[] Pages) Worker(ImmutableArray<SiteFile> files)
    {
        var head = Head().Match(Text(files, "worker.js"));
        return (head.Groups[1].Value, Named(2), Named(3));

        string[] Named(int group) => JsonSerializer.Deserialize<string[]>(head.Groups[group].Value)!;
    }

    private static string Text(ImmutableArray<SiteFile> files, string path) =>
        Encoding.UTF8.GetString(files.Single(file => file.Path == path).Content.Span);

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    [GeneratedRegex(@"^const version = ""([0-9a-f]{16})"";\nconst files = (\[.*\]);\nconst pages = (\[.*\]);\n// Keeps the check page")]
    private static partial Regex Head();
}
