namespace RuleBook.Architecture.Tests;

/// <summary>The formatter breaks code at the width that <c>.editorconfig</c> says, but no text and no comment.</summary>
public sealed class LineLengthTests
{
    private const int Widest = 140;

    [Fact]
    public void No_line_of_the_product_is_wider_than_its_code_may_be() => Wide("src", Numbered).ShouldBeEmpty();

    [Fact]
    public void No_line_of_a_test_is_but_those_of_a_raw_text_which_says_what_something_else_has_to_be() =>
        Wide("tests", OutsideRawTexts).ShouldBeEmpty();

    private static IEnumerable<string> Wide(string folder, Func<string, IEnumerable<(int Number, string Line)>> lines) =>
        from path in Directory.EnumerateFiles(Path.Combine(WordsOfTheData.Root, folder), "*.cs", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(WordsOfTheData.Root, path).Replace('\\', '/')
        where !file.Contains("/obj/", StringComparison.Ordinal)
        from each in lines(path)
        where each.Line.Length > Widest
        select $"{file}:{each.Number}: {each.Line.Length} columns";

    private static IEnumerable<(int Number, string Line)> Numbered(string path) =>
        File.ReadLines(path).Select((line, at) => (Number: at + 1, line));

    private static IEnumerable<(int Number, string Line)> OutsideRawTexts(string path)
    {
        var inside = false;
        foreach (var each in Numbered(path))
        {
            if (!inside)
                yield return each;
            inside ^= each.Line.Split("\"\"\"").Length % 2 == 0;
        }
    }
}
