using RuleBook.Law;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Pages;

/// <summary>Every word of the vocabulary with its definition: the legend of all tables.</summary>
internal static class WordsPage
{
    public static Page Of(SiteBook site)
    {
        var words = site.Words;
        WordGroup[] groups =
        [
            new("Pathways", "pathway", Terms(words.Pathways.Values.OrderBy(Order), "pathway")),
            new(
                "Measures",
                "measure",
                [
                    .. words
                        .Measures.Values.OrderBy(measure => measure.Title, StringComparer.Ordinal)
                        .ThenBy(measure => measure.Name, StringComparer.Ordinal)
                        .Select(measure => new WordEntry(
                            $"measure.{Links.Slug(measure.Name)}",
                            measure.Title,
                            measure.Name,
                            measure.Definition.Trim(),
                            measure.IsDate ? "date" : measure.Unit.Symbol,
                            Links.Line(measure.Mark)
                        )),
                ]
            ),
            new(
                "Facts",
                "fact",
                [
                    .. words
                        .Facts.Values.OrderBy(fact => fact.Title, StringComparer.Ordinal)
                        .Select(fact => new WordEntry(
                            $"fact.{Links.Slug(fact.Name)}",
                            fact.Title,
                            fact.Name,
                            fact.Definition.Trim(),
                            string.Join(", ", fact.Values),
                            Links.Line(fact.Mark)
                        )),
                ]
            ),
            new("Conditions", "condition", Terms(words.Conditions.Values.OrderBy(term => term.Title, StringComparer.Ordinal), "condition")),
        ];
        return new Page(
            "words.html",
            "The words and their meaning",
            "words",
            Templates.Render("words", ("root", ""), ("groups", groups)),
            ["fold.js"]
        );
    }

    private static int Order(Term pathway) => Array.IndexOf(["no-certificate", "certificate", "approval", "prohibited"], pathway.Name);

    private static WordEntry[] Terms(IEnumerable<Term> terms, string kind) =>
        [
            .. terms.Select(term => new WordEntry(
                $"{kind}.{Links.Slug(term.Name)}",
                term.Title,
                term.Name,
                term.Definition.Trim(),
                "",
                Links.Line(term.Mark)
            )),
        ];
}

/// <summary>Words of a kind.</summary>
internal sealed record WordGroup(string Title, string Kind, WordEntry[] Words);

/// <summary>A word.</summary>
internal sealed record WordEntry(string Anchor, string Title, string Name, string Definition, string Values, string Line);
