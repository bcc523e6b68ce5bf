using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Site.Templating;
using RuleBook.Site.Views;

namespace RuleBook.Site.Pages;

/// <summary>Tables and figures of no single jurisdiction, each with where it comes from and how it is known.</summary>
internal static class ReferencePage
{
    public const string Path = "reference.html";

    public static Page Of(SiteBook site)
    {
        var reference = site.Book.Reference;
        var tables = reference.Tables.Select(table => new ReferenceView(
            Links.Slug(table.Name),
            table.Title,
            Values(table.Name),
            Views(table.Sources),
            ""
        ));
        var files = Files(reference)
            .Select(file => new ReferenceView(
                Links.Slug(file.Name),
                file.Title,
                [],
                Views(file.Sources),
                Links.Lines($"schema/reference/{file.Name}.yaml")
            ));
        var body = Templates.Render("reference", ("root", ""), ("items", tables.Concat(files).ToArray()));
        return new Page(Path, "Tables of no single place", "words", body, []);
    }

    /// <summary>What a reference file or table cites that is on no jurisdiction's list, with where it leads.</summary>
    public static ILookup<Source, LeaningView> Leaning(SiteBook site)
    {
        var reference = site.Book.Reference;
        return reference
            .Tables.Concat(Files(reference))
            .SelectMany(table => table.Sources.Select(cited => (table.Name, table.Title, Cited: cited)))
            .Where(each => site.Book.Jurisdiction(each.Cited.Source.Jurisdiction) is null)
            .Distinct()
            .ToLookup(
                each => each.Cited.Source,
                each => new LeaningView(
                    "Tables",
                    each.Title,
                    $"{Path}#{Links.Slug(each.Name)}",
                    each.Cited.Citation.Clause ?? "",
                    CarriedWords.Of(site, null),
                    each.Cited.Citation.Note ?? ""
                )
            );
    }

    /// <summary>The files of figures but that of the tables, whose sources stand with each table.</summary>
    private static IEnumerable<ReferenceTable> Files(Reference reference) =>
        reference
            .Sources.Where(file => file.Key != "tables")
            .OrderBy(file => file.Key, StringComparer.Ordinal)
            .Select(file => new ReferenceTable(file.Key, SiteBook.Heading(file.Key.Replace('-', ' ')), file.Value));

    private static CitationView[] Views(IEnumerable<CitedSource> cited) => [.. cited.Select(CitationView.Of).Distinct()];

    private static string[] Values(string table) =>
        table switch
        {
            "load-index" =>
            [
                .. Enumerable
                    .Range(LoadIndex.First, LoadIndex.Last - LoadIndex.First + 1)
                    .Select(value => $"{value}: {new LoadIndex(value).Kilograms} kg"),
            ],
            "speed-symbol" =>
            [
                .. SpeedSymbol.All.Select(symbol => $"{symbol}: {(symbol.IsOver ? "over " : "")}{symbol.KilometresPerHour} km/h"),
            ],
            "rim-code" =>
            [
                .. Enumerable
                    .Range(RimCode.Smallest, RimCode.Largest - RimCode.Smallest + 1)
                    .Where(code => RimCode.Millimetres(code) is not null)
                    .Select(code => $"{code}: {RimCode.Millimetres(code)} mm"),
            ],
            _ => [],
        };
}

/// <summary>A table or a file of figures.</summary>
internal sealed record ReferenceView(string Anchor, string Title, string[] Values, CitationView[] Sources, string Lines);
