using System.Collections.Immutable;
using RuleBook.Law.Reading;
using RuleBook.Site.Building;
using RuleBook.Text;

namespace RuleBook.Site.Tests.Pages;

/// <summary>Every text of the book may be hostile; none of it becomes markup, a script or an address.</summary>
public sealed class HostileTests
{
    private const string Hostile = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>{{ 7 * 142859 }}&lt;javascript:alert(3)";

    [Fact]
    public void Hostile_text_in_every_field_of_the_book_stays_text()
    {
        var files = Poison(TheBook.Texts(), out var keys);
        keys.ShouldBe(
            keys.Union([
                "title",
                "note",
                "url",
                "publisher",
                "clause",
                "definition",
                "text",
                "about",
                "says",
                "because",
                "ask",
                "lacks",
                "caution",
            ]),
            ignoreOrder: true
        );
        var site = SiteBuild.Render(
            TheBook.Make(files) with
            {
                ReportTo = "javascript:alert(4)//",
                ReportMail = "a@b.example?bcc=c@d.example",
            }
        );

        var shown = false;
        foreach (var (path, document, errors) in Parsed.Of(site))
        {
            errors.ShouldBeEmpty();
            document.All("script:not([src])").ShouldBeEmpty(path);
            document
                .All("script[src]")
                .Select(script => script.GetAttribute("src")!.Split('/')[^1])
                .ShouldBeSubsetOf(["compare.js", "check.js", "changes.js", "report.js", "fold.js"]);
            document.All("img, iframe, object, [onerror]").ShouldBeEmpty(path);
            document
                .All("[href]")
                .Select(element => element.GetAttribute("href")!)
                .Where(address => address.Split(':')[0] is not ("http" or "https") && address.Contains(':', StringComparison.Ordinal))
                .ShouldBeEmpty(path);
            var text = document.Body!.TextContent;
            text.ShouldNotContain("1000013", Case.Sensitive, path);
            shown |= text.Contains("<script>alert(1)</script>", StringComparison.Ordinal);
        }

        shown.ShouldBeTrue();
        System
            .Xml.Linq.XDocument.Parse(site.Single(file => file.Path == "changes.atom").Text())
            .Descendants()
            .ShouldNotContain(element => element.Name.LocalName == "script");
    }

    [Fact]
    public void An_address_that_is_not_http_is_no_link()
    {
        Links.Web("javascript:alert(1)").ShouldBeNull();
        Links.Web("data:text/html,x").ShouldBeNull();
        Links.Web("//host.example").ShouldBeNull();
        Links.Web("mailto:a@host.example").ShouldBeNull();
        Links.Mail("a@b.example?bcc=c@d.example", "x", "y").ShouldBeNull();
        Links.Mail("<a>@b.example", "x", "y").ShouldBeNull();
        Links.Web("https://host.example/\"><b>").ShouldBe("https://host.example/%22%3E%3Cb%3E");
    }

    [Fact]
    public void A_name_cannot_leave_its_folder()
    {
        Links.Jurisdiction("../../x").ShouldBe("jurisdictions/_2e._2f.._2fx.html");
        Links.Jurisdiction("").ShouldBe("jurisdictions/_.html");
    }

    /// <summary>Puts the hostile text behind every scalar under every key where the book still reads with it.</summary>
    private static ImmutableArray<SiteSource> Poison(ImmutableArray<SiteSource> files, out ImmutableArray<string> poisoned)
    {
        var done = ImmutableArray.CreateBuilder<string>();
        foreach (var key in files.SelectMany(file => Keys(file.Root)).Distinct().Order(StringComparer.Ordinal).ToArray())
        {
            ImmutableArray<SiteSource> tried = [.. files.Select(file => file with { Root = Poison(file.Root, key, false) })];
            if (!Reads(tried))
                continue;
            files = tried;
            done.Add(key);
        }

        poisoned = done.ToImmutable();
        return [.. files.Select(file => file with { Text = $"{file.Text}\n# {Hostile}\n" })];
    }

    private static bool Reads(ImmutableArray<SiteSource> files)
    {
        var problems = new List<Problem>();
        try
        {
            var book = BookReader.Read([.. files.Select(file => new BookFile(file.Path, file.Root))], "sha256:0", problems);
            var day = new DateOnly(2026, 11, 25);
            return problems.Count == 0
                && book.Jurisdictions.All(place => place.Rules.All(rule => RuleBook.InForce.Resolver.Resolve(book, rule, day).Length > 0))
                && book.Jurisdictions.All(place => RuleBook.Tables.TableBook.Of(book).Table(place.Id, day).RuleIds.Length >= 0);
        }
        catch (Exception refused)
            when (refused is InputException or ArgumentException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return false;
        }
    }

    private static IEnumerable<string> Keys(Node node) =>
        node switch
        {
            Mapping map => map.Entries.SelectMany(entry => Keys(entry.Value).Append(entry.Key.Text)),
            Sequence list => list.Items.SelectMany(Keys),
            _ => [],
        };

    private static Node Poison(Node node, string key, bool under) =>
        node switch
        {
            Scalar scalar when under => scalar with { Text = scalar.Text + Hostile },
            Sequence list => list with { Items = [.. list.Items.Select(item => Poison(item, key, under && item is Scalar))] },
            Mapping map => map with
            {
                Entries = [.. map.Entries.Select(entry => KeyValuePair.Create(entry.Key, Poison(entry.Value, key, entry.Key.Text == key)))],
            },
            _ => node,
        };
}
