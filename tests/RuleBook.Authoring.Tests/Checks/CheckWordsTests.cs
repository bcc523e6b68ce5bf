using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Tests.Inspecting;

namespace RuleBook.Authoring.Tests.Checks;

/// <summary>What a maintainer reads where a check fires, by the bad book: <c>words.txt</c>, written by hand.</summary>
[Trait("Basis", "derived")]
public sealed class CheckWordsTests
{
    private static readonly ILookup<string, string> Words = File.ReadLines(Path.Combine(BadBook.Root, "words.txt"))
        .Where(line => !line.StartsWith('#'))
        .Select(line => line.Split(" | "))
        .ToLookup(parts => parts[0], parts => parts[1]);

    public static TheoryData<string> Worded => [.. Words.Select(book => book.Key)];

    /// <summary>A tip of its own stands in brackets behind the problem, as a person reads it.</summary>
    [Theory]
    [MemberData(nameof(Worded))]
    public void What_a_check_says_names_what_is_wrong_there(string code)
    {
        using var book = BadBook.Open(code);
        var tip = CheckList.All.Single(info => info.Code == code).Tip;
        Inspection
            .Run(book.Folder, new DateOnly(2026, 11, 25))
            .Problems.Where(problem => problem.Code == code)
            .Select(problem => problem.Tip == tip ? problem.Text : $"{problem.Text} ({problem.Tip})")
            .ShouldBe(Words[code]);
    }
}
