using System.Text;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Tests.Inspecting;

namespace RuleBook.Authoring.Tests.Checks;

/// <summary>
/// The sound book of <c>tests/bad-books</c> with one thing edited, and all that a maintainer reads of it: <c>edits.txt</c>, by hand. Beside
/// the bad books: what else makes a check fire, the other sentences it has, and where it falls silent.
/// </summary>
[Trait("Basis", "derived")]
public sealed class EditedSoundBookTests
{
    private static readonly BookText[] Sound = [.. BookFolder.Load(Path.Combine(BadBook.Root, "sound")).Files];

    public static TheoryData<string> Edits() =>
        [.. File.ReadAllLines(Path.Combine(BadBook.Root, "edits.txt")).Where(line => !line.StartsWith('#'))];

    [Theory]
    [MemberData(nameof(Edits))]
    public void All_that_an_edit_brings_is_told_and_nothing_else(string line)
    {
        var parts = line.Replace("\\n", "\n", StringComparison.Ordinal).Split(" |").Select(part => part.TrimStart(' ')).ToArray();
        var path = $"jurisdictions/{parts[0]}";
        var text = Sound.Single(file => file.Path == path).Text;
        var at = text.IndexOf(parts[1], StringComparison.Ordinal);
        at.ShouldBeGreaterThanOrEqualTo(0, "the edit finds its place");
        var edited = text.Remove(at, parts[1].Length).Insert(at, parts[2]);

        var told = Inspection
            .Run(
                BookFolder.Of(
                    Sound.Select(file => new BookBytes(file.Path, Encoding.UTF8.GetBytes(file.Path == path ? edited : file.Text)))
                ),
                new DateOnly(2026, 11, 25)
            )
            .Problems.Select(problem =>
                $"{problem.Code}: {problem.Text}"
                + (problem.Tip == CheckList.All.Single(info => info.Code == problem.Code).Tip ? "" : $" ({problem.Tip})")
            );

        string.Join(" + ", told).ShouldBe(parts[3]);
    }
}
