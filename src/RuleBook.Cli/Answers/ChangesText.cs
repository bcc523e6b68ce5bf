using System.Globalization;
using RuleBook.Authoring.Changes;
using RuleBook.Telling;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>Which answers change, a heading for each jurisdiction and topic, each with a job that shows it.</summary>
internal static class ChangesText
{
    public static string? Write(IAnsiConsole console, ComparedBooks compared)
    {
        var page = new Page(console);
        page.Title(ChangeWords.Sum(compared), compared.Changes ? Color.Yellow : Color.Green);
        foreach (var group in compared.Report.Answers.GroupBy(change => (change.Place, change.Jurisdiction, change.TopicTitle)))
        {
            page.Heading($"{group.Key.Place} ({group.Key.Jurisdiction}), {group.Key.TopicTitle}");
            foreach (var change in group)
                Write(page, change);
        }

        if (!compared.Report.Remarks.IsEmpty)
            page.Heading("Beside the pathways");
        foreach (var remark in compared.Report.Remarks)
            page.Item($"{remark.About}: {remark.Text} ({remark.Mark})");
        if (compared.Jobs is { } jobs)
            Write(page, jobs);
        return null;
    }

    private static void Write(Page page, AnswerChange change)
    {
        page.Item(
            $"{ChangeWords.Vehicles(change)}, {ChangeWords.Days(change)}: {Phrases.Outcome(change.Before)} -> "
                + $"{Phrases.Outcome(change.After)}"
        );
        page.Aside($"{change.Rule}{(change.Removed ? " (removed)" : "")}, {ChangeWords.Place(change)}");
        if (change.Furthest is { } furthest)
            page.Aside($"as well as {furthest.Says}");
        page.Aside($"for example {change.Witness.Says}:");
        page.Lines(change.Witness.Yaml, depth: 3);
    }

    private static void Write(Page page, JobReport jobs)
    {
        page.Heading(string.Create(CultureInfo.InvariantCulture, $"Saved jobs: {jobs.Answered} answered, {jobs.Changed.Length} changed"));
        foreach (var job in jobs.Changed)
            page.Item(
                $"{job.File}{(job.Job is { } name ? $" ({name})" : "")}: {ChangeWords.Answer(job.Before)} -> "
                    + $"{ChangeWords.Answer(job.After)}"
            );
        foreach (var problem in jobs.Unreadable)
            page.Item(problem.ToString(), "!");
    }
}
