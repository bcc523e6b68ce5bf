using RuleBook.Site.Building;
using RuleBook.Site.Tests.Pages;

namespace RuleBook.Site.Tests;

public sealed class SiteTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes()
    {
        var again = SiteBuild.Render(TheBook.Make(TheBook.Texts()));
        again.Length.ShouldBe(TheBook.Site.Length);
        foreach (var (first, second) in TheBook.Site.Zip(again))
        {
            second.Path.ShouldBe(first.Path);
            second.Content.Span.SequenceEqual(first.Content.Span).ShouldBeTrue(first.Path);
        }
    }

    [Fact]
    public void A_site_is_swapped_in_whole_and_nothing_stays_aside()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        var target = Path.Combine(folder, "site");
        SiteFolder.Write([new SiteFile("old.html", "x"u8.ToArray()), new SiteFile(SiteFolder.Marker, "x"u8.ToArray())], target, TestContext.Current.CancellationToken);
        SiteFolder.Write([new SiteFile("a/new.html", "y"u8.ToArray()), new SiteFile(SiteFolder.Marker, "x"u8.ToArray())], target, TestContext.Current.CancellationToken);
        Directory.EnumerateFileSystemEntries(folder).ShouldBe([target]);
        Directory.EnumerateFiles(target, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(target, file)).ShouldBe([SiteFolder.Marker, "a/new.html"], ignoreOrder: true);
    }

    [Fact]
    public void A_site_that_cannot_be_written_leaves_the_old_one_as_it_was()
    {
        var target = Path.Combine(Directory.CreateTempSubdirectory().FullName, "site");
        SiteFolder.Write([new SiteFile(SiteFolder.Marker, "x"u8.ToArray())], target, TestContext.Current.CancellationToken);
        Should.Throw<IOException>(() => SiteFolder.Write([new SiteFile("a", "x"u8.ToArray()), new SiteFile("a/b", "x"u8.ToArray())], target));
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
        var page = Parsed.Of(TheBook.Site).Single(page => page.Path == "jurisdictions/au-qld.html").Document;
        foreach (var row in page.QuerySelectorAll(".tiers tbody tr").Where(row => row.QuerySelector(".limits") is not null))
            row.QuerySelectorAll("a[href*='lines/']").Length.ShouldBe(1);
    }
}
