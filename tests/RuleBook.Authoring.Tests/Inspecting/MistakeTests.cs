using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Inspecting;

/// <summary>
/// What a maintainer mistypes in the sound book of <c>tests/bad-books</c>, one mistake a line of <c>mistakes.txt</c>: the first problem told is at
/// the place of the caret, has the code, and its text names what would be right.
/// </summary>
public sealed class MistakeTests
{
    private static readonly BookBytes[] Sound = [.. BookFolder.Load(Path.Combine(BadBook.Root, "sound")).Files.Select(one => new BookBytes(one.Path, Encoding.UTF8.GetBytes(one.Text)))];

    public static TheoryData<string> Mistakes() =>
        [.. File.ReadAllLines(Path.Combine(BadBook.Root, "mistakes.txt")).Where(line => line.Length > 0 && !line.StartsWith('#'))];

    [Fact]
    public void There_are_a_hundred_and_fifty() => Mistakes().Count.ShouldBeGreaterThanOrEqualTo(150);

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_at_its_place_with_what_would_be_right(string line)
    {
        var parts = line.Replace("\\n", "\n", StringComparison.Ordinal).Replace("\\t", "\t", StringComparison.Ordinal).Split(" |").Select(part => part.StartsWith(' ') ? part[1..] : part).ToArray();
        var (file, was, becomes, code, says) = ($"jurisdictions/{parts[0]}", parts[1], parts[2], parts[3], parts[4]);
        var text = Encoding.UTF8.GetString(Sound.Single(one => one.Path == file).Content.Span);
        text.ShouldContain(was);
        var marked = text.Remove(text.IndexOf(was, StringComparison.Ordinal), was.Length).Insert(text.IndexOf(was, StringComparison.Ordinal), becomes);
        var at = marked.IndexOf('^', StringComparison.Ordinal);
        var wrong = at < 0 ? marked : marked.Remove(at, 1);

        var report = Inspection.Run(
            BookFolder.Of([.. Sound.Where(one => one.Path != file), new BookBytes(file, Encoding.UTF8.GetBytes(wrong))]), new DateOnly(2026, 11, 27));

        var told = string.Join('\n', report.Problems);
        var first = report.Problems.Where(problem => problem.Mark == report.Problems.FirstOrDefault(any => any.Mark.File == file)?.Mark).ToArray();
        first.ShouldContain(problem => problem.Code == code && problem.ToString().Contains(says, StringComparison.OrdinalIgnoreCase), told);
        if (at >= 0) first[0].Mark.ShouldBe(new Mark(file, marked[..at].Count(letter => letter == '\n') + 1, at - marked[..at].LastIndexOf('\n')), told);
        report.Problems.Length.ShouldBeLessThanOrEqualTo(5, told);
    }
}
