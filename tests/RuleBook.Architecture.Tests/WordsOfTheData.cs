using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Architecture.Tests;

/// <summary>The ids that stand in the data, and the literals that stand in the sources.</summary>
internal static class WordsOfTheData
{
    internal static readonly string Root = Above(AppContext.BaseDirectory);

    /// <summary>Ids of jurisdictions: the names of their folders.</summary>
    public static IEnumerable<string> Jurisdictions =>
        Directory.GetDirectories(Path.Combine(Root, "jurisdictions")).Select(folder => Path.GetFileName(folder)!);

    /// <summary>Currencies of the fees.</summary>
    public static IEnumerable<string> Currencies =>
        Directory
            .GetFiles(Path.Combine(Root, "jurisdictions"), "certification.yaml", SearchOption.AllDirectories)
            .SelectMany(File.ReadLines)
            .Where(line => line.Contains("amount:", StringComparison.Ordinal))
            .SelectMany(line => line.Split(' ', ',', '}', '"'))
            .Where(word => word.Length == 3 && word.All(char.IsAsciiLetterUpper))
            .Distinct();

    /// <summary>Ids of one kind of word of <c>schema/vocabulary</c>.</summary>
    public static IEnumerable<string> Vocabulary(string file, string kind) =>
        YamlText.Read(File.ReadAllText(Path.Combine(Root, "schema", "vocabulary", $"{file}.yaml")), file) is Mapping map
        && map.Find(file) is Sequence list
            ? list.Items.OfType<Mapping>().Select(word => ((Scalar)word.Find(kind)!).Text)
            : throw new InvalidOperationException($"schema/vocabulary/{file}.yaml has no list");

    /// <summary>Every line of code of <c>src</c> with its file from there; comments are left out.</summary>
    public static IEnumerable<(string File, string Line)> Sources =>
        from path in Directory.GetFiles(Path.Combine(Root, "src"), "*.cs", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(Path.Combine(Root, "src"), path).Replace('\\', '/')
        where !file.Contains("/obj/", StringComparison.Ordinal)
        from line in File.ReadLines(path)
        where !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
        select (file, line);

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "RuleBook.sln"))
            ? folder
            : Above(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("no repository above the tests"));
}
