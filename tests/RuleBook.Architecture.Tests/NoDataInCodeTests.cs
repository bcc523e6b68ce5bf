namespace RuleBook.Architecture.Tests;

/// <summary>Places, currencies and words of the vocabulary are data: code that names one would hold for that one only.</summary>
public sealed class NoDataInCodeTests
{
    private const string OnePlace = "RuleBook/Law/KnownWords.cs";

    /// <summary>
    /// Where the same letters are something else: keys of a file or an answer, and names of the trade that no rule defines.
    /// </summary>
    private static readonly string[] OtherMeaning =
    [
        "RuleBook/Physics/", // subjects of load checks, states of mass
        "RuleBook/Law/Reading/",
        "RuleBook/Jobs/Reading/", // keys of the files that they read
        "RuleBook/Telling/", // keys of the answers that they write
        "RuleBook/Answers/Load", // subjects of load checks
        "RuleBook.Authoring/Checks/DuplicateWord.cs", // keys of the vocabulary's own files
        "RuleBook.Site/Forms/FormWords.cs", // states of mass
    ];

    [Fact]
    public void No_source_names_a_jurisdiction() =>
        // "at" is the key of a position in every answer, and Austria's id.
        Naming(WordsOfTheData.Jurisdictions.Except(["at"]).ToHashSet(), literal => literal.Split('/')[0]).ShouldBeEmpty();

    [Fact]
    public void No_source_names_a_currency()
    {
        var currencies = WordsOfTheData.Currencies.ToArray();

        currencies.ShouldNotBeEmpty();
        WordsOfTheData
            .Sources.Where(source => currencies.Any(currency => source.Line.Contains(currency, StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    [Theory]
    [InlineData("measures", "measure")]
    [InlineData("facts", "fact")]
    [InlineData("conditions", "condition")]
    public void Only_one_place_names_a_word_of_the_vocabulary(string file, string kind)
    {
        var words = WordsOfTheData.Vocabulary(file, kind).ToHashSet();

        words.ShouldNotBeEmpty();
        Naming(words, literal => literal)
            .Where(place => !place.StartsWith(OnePlace, StringComparison.Ordinal))
            .Where(place => !OtherMeaning.Any(folder => place.StartsWith(folder, StringComparison.Ordinal)))
            .ShouldBeEmpty();
    }

    private static IEnumerable<string> Naming(HashSet<string> words, Func<string, string> wordOf) =>
        from source in WordsOfTheData.Sources
        from literal in source.Line.Split('"').Where((_, index) => index % 2 == 1)
        where words.Contains(wordOf(literal))
        select $"{source.File}: {literal}";
}
