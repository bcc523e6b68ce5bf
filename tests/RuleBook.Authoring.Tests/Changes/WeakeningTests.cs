using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Tests.Inspecting;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// Edits of the book of this repository that make it say something else, one a line of <c>weakenings.txt</c>: a case that names its source
/// fails, or <c>changes</c> tells it. None passes in silence. What each case expects, and from which source, stands in the case files.
/// </summary>
public sealed class WeakeningTests
{
    public static TheoryData<string> Weakenings() =>
        [.. File.ReadAllLines(Path.Combine(BadBook.Root, "weakenings.txt")).Where(line => line.Length > 0 && !line.StartsWith('#'))];

    [Fact]
    public void There_are_forty() => Weakenings().Count.ShouldBeGreaterThanOrEqualTo(40);

    [Theory]
    [MemberData(nameof(Weakenings))]
    public void An_edit_that_weakens_the_book_is_named(string line)
    {
        string[] parts =
        [
            .. line.Replace("\\n", "\n", StringComparison.Ordinal).Split(" |").Select(part => part.StartsWith(' ') ? part[1..] : part),
        ];
        var (path, names) = (parts[0], parts[3].Split(' ', 3));
        var weakened = WeakenedBook.With(path, parts[1], parts[2]);
        var named = names switch
        {
            ["cases", var id] => WeakenedBook
                .Failing(weakened, path)
                .Any(result => result.Case.Id.StartsWith(id, StringComparison.Ordinal) && result.Case.Because.Source != null),
            ["changes", "answers"] => !WeakenedBook.Changes(weakened, path).Answers.IsEmpty,
            [_, var kind, var text] => WeakenedBook
                .Changes(weakened, path)
                .Remarks.Any(remark =>
                    Kind(remark.Kind) == kind && $"{remark.About}: {remark.Text}".Contains(text, StringComparison.Ordinal)
                ),
            _ => false,
        };
        if (!named)
            Assert.Fail(Told(weakened, path));
    }

    private static string Kind(RemarkKind kind) => kind == RemarkKind.DecidedBy ? "decided-by" : $"{kind}".ToLowerInvariant();

    private static string Told(RuleBook.Law.Book weakened, string path)
    {
        var report = WeakenedBook.Changes(weakened, path);
        return string.Join(
            '\n',
            report
                .Answers.Select(answer => $"answer: {answer.Rule}: {answer.Witness.Says}")
                .Take(3)
                .Concat(report.Remarks.Select(remark => $"{Kind(remark.Kind)}: {remark.About}: {remark.Text}"))
                .Concat(WeakenedBook.Failing(weakened, path).Select(result => $"case {result.Case.Id}: {result.Failures[0]}").Take(3))
        );
    }
}
