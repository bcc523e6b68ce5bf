using System.Globalization;
using RuleBook.Authoring.Walk;
using RuleBook.Law;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>What was walked, and each fault with a job that shows it.</summary>
internal static class WalkText
{
    public static string? Write(IAnsiConsole console, Book book, WalkReport report)
    {
        var page = new Page(console);
        foreach (var fault in report.Faults)
        {
            page.Heading($"{fault.Mark}: {fault.Rule}");
            page.Line(fault.Text);
            if (fault.Witness is { } witness)
                page.Lines(witness.Yaml(book.Vocabulary), depth: 2);
        }

        page.Title(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{report.Rules} rules on {report.Spans} stretches of days: {report.Cells} cells tried, {report.Tiers} tiers "
                    + $"reached, {report.Partial} comparisons of partial with full knowledge; {report.Faults.Length} faults"
            ),
            report.Faults.IsEmpty ? Color.Green : Color.Red
        );
        return null;
    }
}
