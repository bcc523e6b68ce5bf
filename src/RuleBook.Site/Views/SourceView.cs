using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>A citation as a page shows it.</summary>
internal sealed record CitationView(string Title, string Clause, string Note, string ReadAs, string Basis, string Checked, string Url)
{
    public static CitationView Of(CitedSource cited) =>
        new(
            cited.Source.Title,
            cited.Citation.Clause ?? "",
            cited.Citation.Note ?? "",
            Wording.Of(cited.Source.ReadAs),
            Phrases.ReadAs(cited.Source),
            cited.Source.Checked.Text,
            Links.Source(cited.Source)
        );

    /// <summary>Those of a place's citations whose source is found.</summary>
    public static CitationView[] Of(SiteBook site, string place, ImmutableArray<Citation> citations) =>
        [.. Resolver.Cited(site.Book, place, citations).Select(Of)];
}

/// <summary>A source as the list of a jurisdiction's sources shows it.</summary>
internal sealed record SourceView(
    string Anchor,
    string Title,
    string Publisher,
    string Edition,
    string Dated,
    string? Web,
    string ReadAs,
    string Basis,
    string Checked,
    string Recheck,
    string Note,
    string Parts,
    string Url,
    string Line
)
{
    public static SourceView Of(Source source) =>
        new(
            $"source.{Links.Slug(source.Id)}",
            source.Title,
            source.Publisher,
            source.Edition ?? "",
            source.Dated?.Words ?? "",
            Links.Web(source.Url),
            Wording.Of(source.ReadAs),
            Phrases.ReadAs(source),
            source.Checked.Words,
            source.RecheckAfter.Words,
            SourceWords.About(source),
            SourceWords.PartsRead(source),
            Links.Source(source),
            Links.Line(source.Mark)
        );
}
