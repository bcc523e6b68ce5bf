using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Changes;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// An invented book with one thing edited, and all that is told of it, against lines held by hand:
/// <c>tests/invented-book/held/edits.txt</c>. A block begins with the file, what stands there and what takes its place.
/// </summary>
public sealed class EditedRulesTests
{
    private static readonly Dictionary<string, string[]> Blocks = InventedBook
        .Held("edits.txt")
        .Split("\n\n", StringSplitOptions.RemoveEmptyEntries)
        .Select(block => block.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        .ToDictionary(lines => lines[0], lines => lines[1..]);

    public static TheoryData<string> Edits() => [.. Blocks.Keys];

    [Theory]
    [MemberData(nameof(Edits))]
    public void What_an_edit_changes_is_told_with_the_smallest_job_and_the_place(string edit)
    {
        var (file, rest) = (edit.Split(": ", 2)[0], edit.Split(": ", 2)[1]);
        var (old, now) = (rest.Split(" => ")[0], rest.Split(" => ")[1]);
        var edited = InventedBook.Of(texts =>
        {
            InventedBook.AddSouth(texts);
            var path = $"jurisdictions/{file}";
            texts[path].Split(old).Length.ShouldBe(2, "the edit is made in one place");
            texts[path] = texts[path].Replace(old, now, StringComparison.Ordinal);
        });

        var report = BookChanges.Between(InventedBook.WithSouth, edited);

        report.Answers.Select(Told).Concat(report.Remarks.Select(Told)).ShouldBe(Blocks[edit]);
        report.ShouldBeConfirmed(InventedBook.WithSouth, edited);
    }

    private static string Told(AnswerChange change) =>
        $"{change.Jurisdiction} {change.TopicTitle} {ChangeWords.Days(change)}, {ChangeWords.Vehicles(change)}: "
        + $"{Wording.Of(change.Before)} -> {Wording.Of(change.After)}; {change.Rule} at {ChangeWords.Place(change)[14..]}; "
        + Told(change.Witness)
        + (change.Furthest is { } furthest ? $", up to {Told(furthest)}" : "");

    private static string Told(ShownJob job) => $"{job.Says} on {job.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";

    private static string Told(Remark remark) =>
        $"{remark.Kind}, {remark.Place}, {remark.About}: {remark.Text}"
        + (remark.From is { } day ? $" ({day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)})" : "")
        + $" at {remark.Mark.File[14..]}:{remark.Mark.Line}";
}
