using System.Globalization;
using RuleBook.Authoring.Cases;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>What failed, and a line for each jurisdiction and topic.</summary>
internal static class CasesText
{
    public static string? Write(IAnsiConsole console, IReadOnlyList<CaseResult> results)
    {
        var page = new Page(console);
        foreach (var failed in results.Where(result => !result.Passed))
        {
            page.Heading($"{failed.Case.Mark}: {failed.Case.Id}");
            page.Line(failed.Case.Says);
            foreach (var failure in failed.Failures)
                page.Item(failure);
            page.Aside(failed.Case.Because.ToString());
        }

        foreach (var file in results.GroupBy(result => $"{result.Case.Jurisdiction}/{result.Case.Topic}"))
            page.Item(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{file.Key}: {file.Count(result => result.Passed)} of {file.Count()} as expected"
                )
            );
        var wrong = results.Count(result => !result.Passed);
        page.Title(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{results.Count} cases, {(wrong == 0 ? "all as expected" : $"{wrong} not as expected")}"
            ),
            wrong == 0 ? Color.Green : Color.Red
        );
        page.Line(Written(results));
        return null;
    }

    private static string Written(IReadOnlyList<CaseResult> results)
    {
        var edges = results.Count(result => result.Case.IsEdge);
        var open = results.Count(result => result.Case.LeavesOpen);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{results.Count - edges} with a reason of their own, {edges} edges derived from the figure beside them; "
                + $"in {open} the sources leave the pathway open."
        );
    }
}
