using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace RuleBook.Site.Tests.Pages;

/// <summary>The pages of a site as trees.</summary>
internal static class Parsed
{
    public static IEnumerable<(string Path, IHtmlDocument Document, IReadOnlyList<string> Errors)> Of(IEnumerable<SiteFile> files)
    {
        foreach (var file in files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)))
        {
            var errors = new List<string>();
            var parser = new HtmlParser(new HtmlParserOptions { IsKeepingSourceReferences = true });
            parser.Error += (_, problem) =>
                errors.Add(
                    problem is AngleSharp.Html.Dom.Events.HtmlErrorEvent html
                        ? $"{file.Path}:{html.Position.Line}: {html.Message}"
                        : file.Path
                );
            var document = parser.ParseDocument(Encoding.UTF8.GetString(file.Content.Span));
            yield return (file.Path, document, errors);
        }
    }

    public static string Text(this SiteFile file) => Encoding.UTF8.GetString(file.Content.Span);

    public static IEnumerable<IElement> All(this IHtmlDocument document, string selector) => document.QuerySelectorAll(selector);

    /// <summary>The keys of the row that a list's template holds.</summary>
    public static IEnumerable<string> InTemplates(IElement rows) =>
        rows.QuerySelectorAll("template")
            .OfType<IHtmlTemplateElement>()
            .SelectMany(template => template.Content.QuerySelectorAll("[data-key]"))
            .Select(field => field.GetAttribute("data-key")!);
}
