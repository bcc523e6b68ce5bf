using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Inspecting;

/// <summary>
/// What a maintainer mistypes in the sound book of <c>tests/bad-books</c>, one mistake a line of <c>mistakes.txt</c>: the first problem
/// told is at the place of the caret, has the code, and its text names what would be right.
/// </summary>
public sealed class MistakeTests
{
    private static readonly BookBytes[] Sound =
    [
        .. BookFolder
            .Load(Path.Combine(BadBook.Root, "sound"))
            .Files.Select(one => new BookBytes(one.Path, Encoding.UTF8.GetBytes(one.Text))),
    ];

    public static TheoryData<string> Mistakes() => Lines("mistakes.txt");

    public static TheoryData<string> NearMisses() => Lines("near-misses.txt");

    [Fact]
    public void There_are_a_hundred_and_fifty() => Mistakes().Count.ShouldBeGreaterThanOrEqualTo(150);

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_at_its_place_with_what_would_be_right(string line)
    {
        var (file, marked, code, says) = Edit(line);
        var at = marked.IndexOf('^', StringComparison.Ordinal);
        var wrong = at < 0 ? marked : marked.Remove(at, 1);

        var report = Inspected(file, wrong);
        var told = string.Join('\n', report.Problems);
        var first = report
            .Problems.Where(problem => problem.Mark == report.Problems.FirstOrDefault(any => any.Mark.File == file)?.Mark)
            .ToArray();
        first.ShouldContain(problem => problem.Code == code && problem.ToString().Contains(says, StringComparison.OrdinalIgnoreCase), told);
        if (at >= 0)
            first[0]
                .Mark.ShouldBe(new Mark(file, marked[..at].Count(letter => letter == '\n') + 1, at - marked[..at].LastIndexOf('\n')), told);
        report.Problems.Length.ShouldBeLessThanOrEqualTo(5, told);
    }

    /// <summary>
    /// What lies just on the right side of a check. Beside each bad book, for what a check compares; what a book simply lacks has no near
    /// side.
    /// </summary>
    [Theory]
    [MemberData(nameof(NearMisses))]
    public void What_is_only_near_to_a_mistake_is_none(string line)
    {
        var (file, text, code, _) = Edit(line);
        BadBook.Codes.ShouldContain(code);
        Inspected(file, text)
            .Problems.ShouldNotContain(
                problem => problem.Code == code || problem.Severity == Severity.Error,
                string.Join('\n', Inspected(file, text).Problems)
            );
    }

    private static TheoryData<string> Lines(string name) =>
        [.. File.ReadAllLines(Path.Combine(BadBook.Root, name)).Where(line => line.Length > 0 && !line.StartsWith('#'))];

    /// <summary>The file, its text after the edit, the code and what is said.</summary>
    private static (string File, string Text, string Code, string Says) Edit(string line)
    {
        string[] parts =
        [
            .. line.Replace("\\n", "\n", StringComparison.Ordinal)
                .Replace("\\t", "\t", StringComparison.Ordinal)
                .Split(" |")
                .Select(part => part.StartsWith(' ') ? part[1..] : part),
        ];
        var file = parts[0].StartsWith("schema/", StringComparison.Ordinal) ? parts[0] : $"jurisdictions/{parts[0]}";
        var text = Encoding.UTF8.GetString(Sound.Single(one => one.Path == file).Content.Span);
        text.ShouldContain(parts[1]);
        var at = text.IndexOf(parts[1], StringComparison.Ordinal);
        return (file, text.Remove(at, parts[1].Length).Insert(at, parts[2]), parts[3], parts.ElementAtOrDefault(4) ?? "");
    }

    private static InspectionReport Inspected(string file, string text) =>
        Inspection.Run(
            BookFolder.Of([.. Sound.Where(one => one.Path != file), new BookBytes(file, Encoding.UTF8.GetBytes(text))]),
            new DateOnly(2026, 11, 27)
        );
}
