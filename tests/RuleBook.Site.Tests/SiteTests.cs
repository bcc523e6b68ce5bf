using System.IO.Compression;
using System.Text.RegularExpressions;
using RuleBook.Site.Building;
using RuleBook.Site.Templating;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests;

public sealed class SiteTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes()
    {
        var again = SiteBuild.Render(TheBook.Make(TheBook.Texts()) with { Shown = TheBook.Input.Shown });
        again.Length.ShouldBe(TheBook.Site.Length);
        foreach (var (first, second) in TheBook.Site.Zip(again))
        {
            second.Path.ShouldBe(first.Path);
            second.Content.Span.SequenceEqual(first.Content.Span).ShouldBeTrue(first.Path);
        }
    }

    [Fact]
    public void What_the_scripts_of_a_page_import_is_named_in_its_head_so_that_all_is_asked_for_at_once()
    {
        string[] Direct(string script) =>
            [
                .. Regex
                    .Matches(File.ReadAllText(Path.Combine(TheBook.Folder, "site-templates", script)), "from \"\\./([^\"/]+)\"")
                    .Select(import => import.Groups[1].Value),
            ];
        IEnumerable<string> Whole(string script) => Direct(script).SelectMany(import => Whole(import).Append(import));
        string[] All(params IEnumerable<string> scripts) =>
            [.. scripts.SelectMany(Whole).Except(scripts).Distinct().Order(StringComparer.Ordinal)];
        All("check.js").Length.ShouldBeGreaterThan(5);
        Imports.Of(["check.js", "notes.js"]).ShouldBe(All("check.js", "notes.js"));
        foreach (var (path, document, _) in Parsed.Of(TheBook.Site))
        {
            string[] Named(string selector, string attribute) =>
                [.. document.All(selector).Select(each => each.GetAttribute(attribute)!.Split('/')[^1])];
            Named("link[rel=modulepreload]", "href").ShouldBe(All(Named("script[type=module]", "src")), path);
        }
    }

    [Theory]
    [InlineData(Effort.Fast)]
    [InlineData(Effort.Smallest)]
    public void Beside_a_file_lies_what_a_server_sends_compressed_and_it_is_the_same_file_in_the_same_bytes_each_time(Effort effort)
    {
        SiteFile[] files =
        [
            new("a.html", System.Text.Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("<p>50 mm</p>", 100)))),
            new("small.css", "a{}"u8.ToArray()),
            new("b.png", new byte[999]),
        ];
        var all = CompressedFiles.Beside(files, effort);
        all.Select(file => file.Path).ShouldBe(["a.html", "a.html.br", "a.html.gz", "b.png", "small.css"]);
        Read(new BrotliStream(Stream(all[1]), CompressionMode.Decompress)).ShouldBe(files[0].Content.ToArray());
        Read(new GZipStream(Stream(all[2]), CompressionMode.Decompress)).ShouldBe(files[0].Content.ToArray());
        CompressedFiles
            .Beside(files, effort)
            .Select(file => Convert.ToBase64String(file.Content.Span))
            .ShouldBe(all.Select(file => Convert.ToBase64String(file.Content.Span)));

        // A copy that somebody has made is taken where it holds the file, and not where it holds another.
        CompressedFiles
            .Beside(files, effort, path => path == "a.html.br" ? all[1].Content.ToArray() : "none"u8.ToArray())
            .Select(file => Convert.ToBase64String(file.Content.Span))
            .ShouldBe(all.Select(file => Convert.ToBase64String(file.Content.Span)));

        static MemoryStream Stream(SiteFile file) => new(file.Content.ToArray());
        static byte[] Read(Stream packed)
        {
            using var read = new MemoryStream();
            using (packed)
                packed.CopyTo(read);
            return read.ToArray();
        }
    }

    [Fact]
    public void What_an_earlier_run_made_is_taken_away_and_what_others_put_there_stays()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        var target = Path.Combine(folder, "site");
        SiteFolder.Write([new SiteFile("old.html", "x"u8.ToArray())], target, TestContext.Current.CancellationToken);
        File.WriteAllText(Path.Combine(target, "CNAME"), "rules.example");
        SiteFolder.Write([new SiteFile("a/new.html", "y"u8.ToArray())], target, TestContext.Current.CancellationToken);
        Directory.EnumerateFileSystemEntries(folder).ShouldBe([target]);
        var left = Directory
            .EnumerateFiles(target, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(target, file))
            .ToArray();
        left.ShouldContain("CNAME");
        left.ShouldContain("a/new.html");
        left.ShouldNotContain("old.html");
    }

    [Fact]
    public void A_site_that_cannot_be_written_leaves_the_old_one_as_it_was()
    {
        var target = Path.Combine(Directory.CreateTempSubdirectory().FullName, "site");
        SiteFolder.Write([new SiteFile(SiteFolder.Marker, "x"u8.ToArray())], target, TestContext.Current.CancellationToken);
        Should.Throw<IOException>(() =>
            SiteFolder.Write(
                [new SiteFile("a", "x"u8.ToArray()), new SiteFile("a/b", "x"u8.ToArray())],
                target,
                TestContext.Current.CancellationToken
            )
        );
        Directory.EnumerateFiles(target).Select(Path.GetFileName).ShouldBe([SiteFolder.Marker]);
    }

    [Fact]
    public void A_folder_that_is_not_a_site_is_never_replaced()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        File.WriteAllText(Path.Combine(folder, "letter.txt"), "x");
        Should.Throw<IOException>(() => SiteFolder.Write(TheBook.Site, folder));
        File.Exists(Path.Combine(folder, "letter.txt")).ShouldBeTrue();
    }

    [Fact]
    public void Every_figure_of_a_state_page_leads_to_its_data_line()
    {
        var page = Parsed.Of(TheBook.Site.Where(file => file.Path == "jurisdictions/au-qld.html")).Single().Document;
        foreach (var row in page.QuerySelectorAll(".tiers tbody tr").Where(row => row.QuerySelector(".limits") is not null))
            row.QuerySelectorAll("a[href*='lines/']").Length.ShouldBe(1);
    }
}
