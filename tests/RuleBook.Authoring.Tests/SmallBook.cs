using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests;

/// <summary>A book of one made-up jurisdiction, with the words of this repository's vocabulary.</summary>
internal static class SmallBook
{
    /// <summary>A book whose ride-height file has these versions of one rule for every vehicle.</summary>
    public static Book WithVersions(string versions, string place = "au-qld", string more = "") => Of((place, Raise(versions, more)));

    /// <summary>A ride-height file with these versions of one rule for every vehicle.</summary>
    public static string Raise(string versions, string more = "") =>
        $"""
            topic: ride-height
            rules:
              - rule: raise
                title: Raising a vehicle
                versions:
            {Indented(versions, 6)}{(more.Length > 0 ? "\n" + Indented(more, 2) : "")}
            """;

    /// <summary>A book with these ride-height files, by jurisdiction.</summary>
    public static Book Of(params (string Place, string RideHeight)[] files) => WithFact("", files);

    /// <summary>The same with a fact more in the vocabulary, as an entry of its list.</summary>
    public static Book WithFact(string fact, params (string Place, string RideHeight)[] files)
    {
        var problems = new List<Problem>();
        var vocabulary = Directory
            .GetFiles(Path.Combine(TestBook.Folder, "schema", "vocabulary"), "*.yaml")
            .Select(file =>
                Path.GetFileName(file) == "facts.yaml" ? YamlText.Read(File.ReadAllText(file) + fact, file) : YamlText.ReadFile(file)
            )
            .Select(root => new BookFile($"schema/vocabulary/{Path.GetFileName(root.Mark.File)}", root));
        var book = BookReader.Read(
            [.. vocabulary, .. files.SelectMany(file => Files(file.Place, file.RideHeight))],
            "sha256:small",
            problems
        );
        problems.ShouldBeEmpty();
        return book;
    }

    private static IEnumerable<BookFile> Files(string place, string rideHeight)
    {
        yield return Written(
            place,
            "jurisdiction",
            $"{{jurisdiction: {place}, name: Somewhere, registers: yes, ask: {{authority: Somebody}}, coverage: []}}"
        );
        yield return Written(
            place,
            "sources",
            $"{{jurisdiction: {place}, sources: [{{source: law, title: Law, publisher: Somebody, read-as: primary, checked: "
                + $"2026-11-25, recheck-after: 2027-11-25}}]}}"
        );
        yield return Written(place, "ride-height", rideHeight);
    }

    private static BookFile Written(string place, string name, string text)
    {
        var path = $"jurisdictions/{place}/{name}.yaml";
        return new BookFile(path, YamlText.Read(text, path));
    }

    private static string Indented(string text, int spaces) =>
        string.Join('\n', text.Split('\n').Select(line => new string(' ', spaces) + line));
}
