using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;

namespace RuleBook.Authoring.Tests.Inspecting;

/// <summary>
/// A book damaged at random gives problems that are explained and placed, and never an exception (a property; no source needed).
/// </summary>
public sealed class DamagedBookTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly string[] Words =
    [
        "[]",
        "{}",
        "''",
        "~",
        "x",
        "-1 mm",
        "9999",
        "9999~",
        "0000",
        "1900~",
        "\"[9998..9999]\"",
        "unknown",
        "none",
        "not-established",
        "amended",
        "yes",
        "xa/ride-height/raise",
        "xa-n/ride-height/raise",
        "a/b/c/d",
        "////",
        "{ a: { b: [c] } }",
        "[[[]]]",
        "99999999999999999999999999999999 mm",
        "50 mm",
        "{ at-least: 1 mm, under: 1 mm }",
        "no-certificate",
        "0001-01-01",
        "9999-12-31",
        "2011-01-01",
        "%",
        "AUD",
        "1 AUD",
        "null",
        "é",
        "😀",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_damaged_book_gives_each_problem_once_in_order_and_never_an_exception(int seed)
    {
        using var sound = BadBook.Open("sound");
        var book = BookFolder.Load(sound.Folder);
        var explained = CheckList.All.Select(info => info.Code).ToHashSet();
        var random = new Random(seed);
        for (var round = 0; round < 120; round++)
        {
            var files = book.Files.ToBuilder();
            for (var damage = random.Next(1, 4); damage > 0; damage--)
            {
                var at = random.Next(files.Count);
                files[at] = files[at] with { Text = Damage(files[at].Text, random) };
            }

            var problems = Inspection.Run(book with { Files = files.ToImmutable() }, Today).Problems;
            problems.ShouldBeUnique();
            problems.Select(problem => problem.Mark).ShouldBeInOrder();
            foreach (var problem in problems)
            {
                explained.ShouldContain(problem.Code);
                problem.Mark.Line.ShouldBeGreaterThan(0);
                problem.Mark.Column.ShouldBeGreaterThan(0);
            }
        }
    }

    private static string Damage(string text, Random random)
    {
        var lines = text.Split('\n').ToList();
        var at = random.Next(lines.Count);
        var word = Words[random.Next(Words.Length)];
        switch (random.Next(5))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, lines[random.Next(lines.Count)]);
                break;
            case 2:
                (lines[at], lines[random.Next(lines.Count)]) = (lines[random.Next(lines.Count)], lines[at]);
                break;
            case 3:
                lines[at] = Replaced(lines[at], ": ", $": {word} #");
                break;
            default:
                lines[at] = ReplacedWord(lines[at], word, random);
                break;
        }

        return string.Join('\n', lines);
    }

    private static string Replaced(string line, string from, string to) =>
        line.IndexOf(from, StringComparison.Ordinal) is var at and >= 0 ? line[..at] + to + line[(at + from.Length)..] : line + to;

    private static string ReplacedWord(string line, string word, Random random)
    {
        var words = line.Split(' ');
        words[random.Next(words.Length)] = word;
        return string.Join(' ', words);
    }
}
