using System.Globalization;
using System.Text;
using RuleBook.Telling;
using static RuleBook.Authoring.Changes.Markdown;

namespace RuleBook.Authoring.Changes;

/// <summary>A comparison as a comment on a pull request.</summary>
public static class ChangesMarkdown
{
    /// <summary>Where a comment is cut off, so that it stays below what a forge takes.</summary>
    private const int Longest = 50_000;

    /// <summary>The text, with a line end at the end; nothing from a book or a file is taken as Markdown or HTML.</summary>
    public static string Write(ComparedBooks compared)
    {
        var text = new StringBuilder("## Answers that change\n\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"From {Code(compared.Old.Name)} to {Code(compared.New.Name)}: {ChangeWords.Sum(compared)}\n"
        );
        foreach (var place in compared.Report.Answers.GroupBy(change => change.Jurisdiction))
            Write(text, [.. place]);
        Write(text, compared.Report);
        if (compared.Jobs is { } jobs)
            Write(text, jobs);
        return text.ToString();
    }

    private static void Write(StringBuilder text, AnswerChange[] changes)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n### {Escaped(changes[0].Place)} ({Escaped(changes[0].Jurisdiction)})\n\n");
        text.Append("| topic | vehicles | days | before | after | for example | rule |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        var shown = 0;
        foreach (var change in changes.TakeWhile(_ => text.Length < Longest))
        {
            shown++;
            string[] cells =
            [
                Escaped(change.TopicTitle),
                Escaped(ChangeWords.Vehicles(change)),
                ChangeWords.Days(change),
                Phrases.Outcome(change.Before),
                Phrases.Outcome(change.After),
                Escaped(change.Witness.Says) + (change.Furthest is { } furthest ? $"; {Escaped(furthest.Says)}" : ""),
                $"{Escaped(change.Rule)}{(change.Removed ? " (removed)" : "")}<br>{Code(ChangeWords.Place(change))}",
            ];
            text.Append(CultureInfo.InvariantCulture, $"| {string.Join(" | ", cells)} |\n");
        }

        if (shown < changes.Length)
            text.Append(CultureInfo.InvariantCulture, $"\n{changes.Length - shown} more are left out here.\n");
        if (shown > 0)
            Jobs(text, changes[..shown]);
    }

    private static void Jobs(StringBuilder text, AnswerChange[] changes)
    {
        text.Append("\n<details><summary>Jobs that show it</summary>\n\n");
        foreach (var change in changes.TakeWhile(_ => text.Length < Longest))
            text.Append(
                CultureInfo.InvariantCulture,
                $"{Phrases.Outcome(change.Before)}, then {Phrases.Outcome(change.After)}:\n\n{Block("yaml", change.Witness.Yaml)}\n"
            );
        text.Append("</details>\n");
    }

    private static void Write(StringBuilder text, ChangeReport report)
    {
        var remarks = report.Remarks.ToLookup(remark => remark.Kind == RemarkKind.Evidence);
        if (remarks[false].Any())
            Write(text.Append("\n### Beside the pathways\n\n"), [.. remarks[false]]);
        if (!remarks[true].Any())
            return;
        text.Append(
            CultureInfo.InvariantCulture,
            $"\n<details><summary>What {remarks[true].Count()} rules, schemes and sources rest on</summary>\n\n"
        );
        Write(text, [.. remarks[true]]);
        text.Append("\n</details>\n");
    }

    private static void Write(StringBuilder text, Remark[] remarks)
    {
        var shown = 0;
        foreach (var remark in remarks.TakeWhile(_ => text.Length < Longest))
        {
            shown++;
            var since = remark.From is { } day ? $" (from {Phrases.Day(day)})" : "";
            text.Append(
                CultureInfo.InvariantCulture,
                $"- {Escaped(remark.Place)}, {Escaped(remark.About)}: {Escaped(remark.Text)}{since}\n"
            );
        }

        if (shown < remarks.Length)
            text.Append(CultureInfo.InvariantCulture, $"\n{remarks.Length - shown} more are left out here.\n");
    }

    private static void Write(StringBuilder text, JobReport jobs)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n### Saved jobs\n\n{jobs.Answered} answered, {jobs.Changed.Length} changed.\n");
        if (!jobs.Changed.IsEmpty)
            text.Append("\n| job | before | after |\n| --- | --- | --- |\n");
        foreach (var job in jobs.Changed)
        {
            var named = $"{Code(job.File)}{(job.Job is { } name ? $" {Escaped(name)}" : "")}";
            text.Append(
                CultureInfo.InvariantCulture,
                $"| {named} | {ChangeWords.Answer(job.Before)} | {ChangeWords.Answer(job.After)} |\n"
            );
        }
        if (!jobs.Unreadable.IsEmpty)
            text.Append("\nCould not be read:\n\n");
        foreach (var problem in jobs.Unreadable)
            text.Append(CultureInfo.InvariantCulture, $"- {Escaped(problem.ToString())}\n");
    }
}
