using System.Net;

namespace RuleBook.Cli.Tests;

/// <summary>
/// <c>rulebook site --since</c> on Queensland's amendment of 26 October 2018. The day, and 150 mm with a certificate: the transport
/// department's notice (jurisdictions/au-qld/sources.yaml: standards-notifications-2018). 75 mm without one with stability control too: the
/// minister's release (ministers-release-2018-09-20).
/// </summary>
public sealed class SiteCommandTests(GitBook git) : IClassFixture<GitBook>, IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-site-").FullName;

    private string Target => Path.Combine(folder, "site");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_page_of_changes_tells_what_queenslands_amendment_of_2018_changed()
    {
        var answer = await Invocation.Of(["site", Target, "--since", git.Old, "--book", git.Folder, "--compress", "no"]);
        answer.Code.ShouldBe(0, answer.Error);
        var files = Directory.GetFiles(Target, "*", SearchOption.AllDirectories).Length;
        answer.Out.ShouldMatch($"^{Target}: {files} files, [0-9]+ KiB\n$");
        var page = WebUtility.HtmlDecode(
            await File.ReadAllTextAsync(Path.Combine(Target, "changes.html"), TestContext.Current.CancellationToken)
        );

        page.ShouldContain("What this edition of the book changes, by consequence");
        var told = page[
            page.IndexOf("id=\"edition\"", StringComparison.Ordinal)..page.IndexOf("id=\"editions\"", StringComparison.Ordinal)
        ];
        told.ShouldContain("""<h3><a href="jurisdictions/au-qld.html">Queensland</a></h3>""");
        told.ShouldContain(
            "<b>From 26 October 2018</b>, four-wheel drive yes, electronic stability control yes. "
                + """Earlier edition: <span class="p certificate">allowed with a certificate</span>; this edition: <span class="p"""
                + """ no-certificate">allowed without a certificate</span>"""
        );
        told.ShouldContain("""; this edition: <span class="p certificate">allowed with a certificate</span>""");
        told.ShouldContain("registered-in: au-qld\non: 2018-10-26\n");
        told.ShouldContain("""href="jurisdictions/au-qld.html#ride-height.raise-four-wheel-drive""");
        told.ShouldContain("""href="lines/au-qld/ride-height.yaml.html#L""");
        told.Split("<h3>").Length.ShouldBe(2, "another state changed");
        told.ShouldNotContain(Path.GetDirectoryName(git.Old)!, Case.Sensitive, "where the folder lies on the machine is told");
    }

    [Theory]
    [InlineData("no-such-branch")]
    [InlineData("broken")] // a revision whose book has a mistake
    public async Task An_earlier_edition_that_cannot_be_read_is_refused_and_no_site_is_written(string name)
    {
        var answer = await Invocation.Of(["site", Target, "--since", name, "--book", git.Folder]);

        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldStartWith($"{name}:");
        Directory.EnumerateFileSystemEntries(folder).ShouldBeEmpty();
    }
}
