using System.Globalization;
using System.Text;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Cli.Answers;

/// <summary>What the book holds, a line a jurisdiction, as a Markdown table: the README carries the same.</summary>
internal static class CoverageText
{
    /// <summary>Every jurisdiction, its topics taken together.</summary>
    public static string Write(Book book) =>
        Table(
            "jurisdiction",
            Holdings
                .Of(book)
                .GroupBy(holding => holding.Place.Id)
                .Select(place => ($"{place.First().Place.Name} (`{place.Key}`)", place.ToArray()))
        );

    /// <summary>The topics of one jurisdiction.</summary>
    public static string Write(Book book, Jurisdiction place) =>
        Table(
            "topic, coverage",
            Holdings
                .Of(book)
                .Where(holding => holding.Place == place)
                .Select(holding => ($"{holding.Topic.Title}, {holding.State}", (Holding[])[holding]))
        );

    private static string Table(string first, IEnumerable<(string Name, Holding[] Holdings)> rows)
    {
        var text = new StringBuilder()
            .Append(
                CultureInfo.InvariantCulture,
                $"| {first} | rules | authority's text | second hand | common practice | memory | no source | not established |\n"
            )
            .Append("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |\n");
        foreach (var (name, holdings) in rows)
            text.Append(CultureInfo.InvariantCulture, $"| {name} | {holdings.Sum(holding => holding.Rules)} | ")
                .Append(
                    string.Join(
                        " | ",
                        Enum.GetValues<ReadAs>().Select(basis => holdings.Sum(holding => holding.Values.GetValueOrDefault(basis)))
                    )
                )
                .Append(
                    CultureInfo.InvariantCulture,
                    $" | {holdings.Sum(holding => holding.WithoutSource)} | {holdings.Sum(holding => holding.NotEstablished)} |\n"
                );
        return text.ToString();
    }
}
