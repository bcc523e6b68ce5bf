using System.Globalization;
using RuleBook.Authoring.Pinning;
using RuleBook.Law;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>What no case pins, by file and line, each with a job that would.</summary>
internal static class PinText
{
    public static string? Write(IAnsiConsole console, Book book, PinReport report)
    {
        var page = new Page(console);
        foreach (var place in report.Unnoticed.GroupBy(unpinned => (unpinned.Mark, unpinned.Subject, unpinned.What)))
        {
            page.Heading($"{place.Key.Mark}: {place.Key.Subject}");
            foreach (var unpinned in place)
            {
                page.Line($"{unpinned.What}: {unpinned.To} would go unnoticed");
                page.Aside($"{unpinned.Before} -> {unpinned.After}");
                page.Lines(unpinned.Witness.Yaml(book.Vocabulary), depth: 2);
            }
        }

        page.Title(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{report.Pinned} of {report.Points} pinned ({report.Percent} %); {report.Changes} changes tried, "
                    + $"{report.WithoutEffect} of them change nothing that a rule gives"
            ),
            report.Unnoticed.IsEmpty ? Color.Green : Color.Red
        );
        return null;
    }
}
