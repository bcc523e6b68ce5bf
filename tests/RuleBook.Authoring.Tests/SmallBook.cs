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
    public static Book Of(params (string Place, string RideHeight)[] files)
    {
        var problems = new List<Problem>();
        var vocabulary = Directory
            .GetFiles(Path.Combine(TestBook.Folder, "schema", "vocabulary"), "*.yaml")
            .Select(file => new BookFile($"schema/vocabulary/{Path.GetFileName(file)}", YamlText.ReadFile(file)));
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
        yield return File(
            place,
            "jurisdiction",
            $"{{jurisdiction: {place}, name: Somewhere, registers: yes, ask: {{authority: Somebody}}, coverage: []}}"
        );
        yield return File(
            place,
            "sources",
            $"{{jurisdiction: {place}, sources: [{{source: law, title: Law, publisher: Somebody, read-as: primary, checked: "
                + $"2026-11-25, recheck-after: 2027-11-25}}]}}"
        );
        yield return File(place, "ride-height", rideHeight);
    }

    private static BookFile File(string place, string name, string text)
    {
        var path = $"jurisdictions/{place}/{name}.yaml";
        return new BookFile(path, YamlText.Read(text, path));
    }

    private static string Indented(string text, int spaces) =>
        string.Join('\n', text.Split('\n').Select(line => new string(' ', spaces) + line));
}
