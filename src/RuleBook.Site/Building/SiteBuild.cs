using System.Collections.Immutable;
using System.Text;
using RuleBook.Site.Changes;
using RuleBook.Site.Data;
using RuleBook.Site.Feeds;
using RuleBook.Site.Pages;
using RuleBook.Site.Questions;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Building;

/// <summary>Renders the comparison site of a book: pages, feeds, data. No file is touched, no clock is read.</summary>
public static class SiteBuild
{
    private static readonly string[] Fixed =
    [
        "site.css",
        "compare.js",
        "beside.js",
        "changes.js",
        "report.js",
        "fold.js",
        "icon.svg",
        "preview.png",
    ];

    /// <summary>Every file of the site, in ordinal order of the paths.</summary>
    public static ImmutableArray<SiteFile> Render(SiteInput input)
    {
        var site = new SiteBook(input);
        IEnumerable<Func<Page>> pages =
        [
            () => HomePage.Of(site),
            .. ComparePages.Of(site),
            .. JurisdictionPages.Of(site),
            .. SourcePages.Of(site),
            .. TopicPages.Of(site),
            .. ChangesPage.Of(site).Select<Page, Func<Page>>(page => () => page),
            () => RereadPage.Of(site),
            () => QuestionsPage.Of(site),
            () => CoveragePage.Of(site),
            () => OpenPage.Of(site),
            () => DataPage.Of(site),
            () => WordsPage.Of(site),
            () => ReferencePage.Of(site),
            .. LinesPages.Of(site),
        ];
        if (!input.Check.IsEmpty)
            pages = pages.Prepend(() => CheckPage.Of(site));
        SiteFile[] written = [.. pages.AsParallel().AsOrdered().Select(page => page().Write(site))];
        SiteFile[] parts = [.. Fixed.Select(name => new SiteFile(name, Templates.File(name)))];
        return
        [
            .. written
                .Concat(parts)
                .Concat(CheckFiles.Of(input, written, parts))
                .Concat(SiteMap.Of(input, written))
                .Append(
                    new SiteFile("licences.txt", (byte[])[.. Templates.File("LICENSE"), .. "\n"u8, .. Templates.File("THIRD-PARTY.txt")])
                )
                .Concat(LimitTables.Of(site))
                .Concat(DataPackage.Of(site))
                .Concat(RawFiles.Of(site))
                .Append(AtomFeed.Write(site))
                .Append(Calendar.Write(site))
                .Append(
                    new SiteFile(
                        SiteFolder.Marker,
                        Encoding.UTF8.GetBytes(
                            "A site rendered by the command, which replaces and takes away the files named here and no "
                                + $"others.\n{input.Book.Digest}\n"
                        )
                    )
                )
                .OrderBy(file => file.Path, StringComparer.Ordinal),
        ];
    }
}
