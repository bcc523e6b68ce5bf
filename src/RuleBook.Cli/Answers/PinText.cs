using System.Globalization;
using RuleBook.Authoring.Pinning;
using RuleBook.Rules;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>What no case pins, by file and line, each with a job that would.</summary>
internal static class PinText
{
    public static string? Write(IAnsiConsole console, Book book, PinReport report)
    {
        var page = new Page(console);
        foreach (var place in report.Unnoticed.GroupBy(unpinned => (unpinned.Mark, unpinned.Rule, unpinned.What)))
        {
            page.Heading($"{place.Key.Mark}: {place.Key.Rule}");
            foreach (var unpinned in place)
            {
                page.Line($"{unpinned.What}: {unpinned.To} would go unnoticed");
                if (unpinned.Witness is not { } witness) continue;
                page.Aside($"{unpinned.Before} -> {unpinned.After}");
                page.Aside(witness.Yaml(book.Vocabulary));
            }
        }

        page.Title(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{report.Pinned} of {report.Points} pinned ({Percent(report)} %); {report.Mutations} changes tried, {report.WithoutEffect} of them change no answer"),
            report.Unnoticed.IsEmpty ? Color.Green : Color.Red);
        return null;
    }

    /// <summary>Whole per cent, rounded down, so that 100 means all.</summary>
    public static int Percent(PinReport report) => report.Points == 0 ? 0 : report.Pinned * 100 / report.Points;
}
