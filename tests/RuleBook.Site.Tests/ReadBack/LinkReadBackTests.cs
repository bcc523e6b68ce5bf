using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// Every link of the pages of the invented book is followed: where it leads stands what it says, and a data line is that of the book's
/// file.
/// </summary>
public sealed partial class LinkReadBackTests
{
    private static readonly Dictionary<string, string> Doors = new()
    {
        ["Compare the states"] = "compare.html",
        ["What changes"] = "changes.html",
        ["What would settle it"] = "open.html",
        ["What the book has"] = "coverage.html",
        ["Start afresh"] = "compare.html",
        ["The log"] = "changes.html",
        ["a page of its own"] = "reread.html",
        ["on its own page"] = "open.html",
        ["The file itself"] = "",
    };

    private static readonly Dictionary<string, string[]> Files = Directory
        .EnumerateFiles(Path.Combine(TheBook.Folder, "tests", "invented-book", "jurisdictions"), "*.yaml", SearchOption.AllDirectories)
        .ToDictionary(file => $"lines/{Path.GetFileName(Path.GetDirectoryName(file))}/{Path.GetFileName(file)}.html", File.ReadAllLines);

    [Fact]
    public void Where_a_link_leads_stands_what_it_says()
    {
        var followed = 0;
        foreach (var (page, link, path, fragment) in Inner().Where(link => !IsData(link.Path)))
        {
            var told = $"{page}: '{Text(link)}' -> {path}#{fragment}";
            InventedPages.Paths.ShouldContain(path, told);
            var target = InventedPages.Of(path);
            var there = fragment.Length > 0 ? target.GetElementById(fragment) : target.QuerySelector("h1");
            there.ShouldNotBeNull(told);
            var (text, name) = (Text(link), Text(there.QuerySelector("h3, h4, b, p") ?? there));
            // A part of a page is named by the page.
            var whole = there.LocalName == "h2" ? $"{Text(target.QuerySelector("h1")!)}: {Text(there)}" : Text(there);
            followed++;
            if (Doors.FirstOrDefault(door => text.StartsWith(door.Key, StringComparison.Ordinal)) is { Value: { } door })
                path.ShouldBe(door, told);
            else if (text == "Report a mistake")
                whole.ShouldStartWith("Correction: ", Case.Sensitive, told);
            else if (link.ParentElement is { LocalName: "td", ParentElement: { } row }) // how a cell of a comparison is known
                path.ShouldBe(
                    new Uri(new Uri($"http://site.example/{page}"), row.QuerySelector("th a")!.GetAttribute("href")).AbsolutePath[1..],
                    told
                );
            else if (link.ClassList.Contains("p")) // a pathway in the legend
                fragment.ShouldBe($"pathway.{link.ClassList.Single(name => name != "p")}", told);
            else if (text == "#")
                link.Closest("article")!.Id.ShouldBe(fragment, told);
            else if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                Text(target.QuerySelector("[data-day-shown]")!).ShouldBe(day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture), told);
            else
                (Has(whole, text) || Has(text, name.TrimEnd('#', ' ')) || IsPart(link, text, whole)).ShouldBeTrue(
                    $"{told}, where stands: {whole}"
                );
        }

        followed.ShouldBeGreaterThan(300);
    }

    [Fact]
    public void A_data_line_is_the_line_of_the_rule_and_of_the_figure_beside_which_it_stands()
    {
        var read = 0;
        foreach (var (page, link, path, fragment) in Inner().Where(link => IsData(link.Path) && link.Fragment.Length > 0))
        {
            if (!Files.TryGetValue(path, out var file))
                continue; // the words, which are this repository's
            var at = int.Parse(fragment.TrimStart('L'), CultureInfo.InvariantCulture);
            var told = $"{page}: '{Text(link)}' -> {path}:{at}";
            at.ShouldBeInRange(1, file.Length, told);
            file[at - 1].Trim().ShouldNotBeEmpty(told);
            var rule = link.Closest("article.rule")?.QuerySelector(".for code")?.TextContent;
            if (rule is not null && path.StartsWith($"lines/{rule.Split('/')[0]}/", StringComparison.Ordinal))
                RuleAt(file, at).ShouldBe(rule.Split('/')[2], told);
            if (Measure().Match(page) is { Success: true } measure)
                file[at - 1].ShouldContain(measure.Groups[1].Value, Case.Sensitive, told);
            if (link.Closest("tr")?.QuerySelector("th a[href*='topics']") is { } topic)
                file[at - 1].ShouldContain(topic.TextContent, Case.Insensitive, told);
            read++;
        }

        read.ShouldBeGreaterThan(60);
    }

    /// <summary>What leans on a source: a version by its rule and its days; a scheme or a caution by its place.</summary>
    private static bool IsPart(IElement link, string text, string whole) =>
        link.Closest(".sources.full") is not null
        && (
            Has(whole, text.Split(", ")[0]) && Day().Matches(text).All(day => Has(whole, day.Value))
            || Text(link.ParentElement!).StartsWith(whole.Split(": ")[0] + ": ", StringComparison.Ordinal)
        );

    private static IEnumerable<(string Page, IElement Link, string Path, string Fragment)> Inner() =>
        from page in InventedPages.Paths
        from link in InventedPages.Of(page).QuerySelectorAll("main a[href]")
        let led = new Uri(new Uri($"http://site.example/{page}"), link.GetAttribute("href"))
        where
            led.Host == "site.example"
            && led.AbsolutePath != "/reference.html"
            && led.AbsolutePath.EndsWith(".html", StringComparison.Ordinal)
        select (page, link, led.AbsolutePath[1..], led.Fragment.TrimStart('#'));

    private static bool IsData(string path) => path.StartsWith("lines/", StringComparison.Ordinal);

    private static string RuleAt(string[] file, int line) =>
        file[..line].Last(each => each.Contains("- rule: ", StringComparison.Ordinal)).Split("rule: ")[1];

    private static bool Has(string text, string part) => text.Contains(part, StringComparison.OrdinalIgnoreCase);

    private static string Text(INode node) =>
        string.Join(' ', node.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex("[0-9]{4}-[0-9]{2}-[0-9]{2}")]
    private static partial Regex Day();

    [GeneratedRegex("^topics/ride-height/(?!open|beyond)(.+)\\.html$")]
    private static partial Regex Measure();
}
