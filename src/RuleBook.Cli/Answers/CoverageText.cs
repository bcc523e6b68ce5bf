using System.Globalization;
using System.Text;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Cli.Answers;

/// <summary>What the book holds, as a Markdown table: the README carries the same.</summary>
internal static class CoverageText
{
    public static string Write(Book book)
    {
        var text = new StringBuilder()
            .Append("| jurisdiction | topic | coverage | rules | primary | secondary | common practice | memory | no source | not established |\n")
            .Append("| --- | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |\n");
        foreach (var holding in Holdings.Of(book))
            text.Append(CultureInfo.InvariantCulture, $"| {holding.Place.Id} | {holding.Topic.Name} | {holding.State} | {holding.Rules} | ")
                .Append(string.Join(" | ", Enum.GetValues<ReadAs>().Select(basis => holding.Values.GetValueOrDefault(basis))))
                .Append(CultureInfo.InvariantCulture, $" | {holding.WithoutSource} | {holding.NotEstablished} |\n");
        return text.ToString();
    }
}
