using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Checks;
using RuleBook.Authoring.Files;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Skeletons;

/// <summary>
/// Commented files to start from, for what a book has not got yet. What they say at first is that nothing is established.
/// </summary>
internal static partial class Skeleton
{
    /// <summary>Writes the folder of a jurisdiction: what it is and where its sources will be listed.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">What is in it.</param>
    /// <param name="id">Such as <c>us-tx</c>.</param>
    /// <param name="name">For a reader.</param>
    /// <param name="authority">Whom to ask.</param>
    /// <param name="within">Id of the nation that it is part of; null for a nation.</param>
    /// <param name="today">The day on which it is written.</param>
    /// <returns>The files written.</returns>
    /// <exception cref="InputException">The id is none, or taken, or the nation is not in the book.</exception>
    public static string[] Jurisdiction(string folder, Book book, string id, string name, string authority, string? within, DateOnly today)
    {
        if (!JurisdictionId().IsMatch(id))
            throw Refused(
                "bad-id",
                "ID",
                $"'{id}' is no id of a jurisdiction",
                "write small letters: a nation as nz, a part of one as au-qld"
            );
        if (book.Jurisdiction(id) is not null)
            throw Refused("duplicate-jurisdiction", "ID", $"'{id}' is in the book already", "edit its files, or choose another id");
        if (within is not null && book.Jurisdiction(within) is null)
            throw Refused("unknown-jurisdiction", "--within", $"'{within}' is not a jurisdiction of the book", book.PlaceTip(within));
        var aside = Directory.CreateDirectory(Path.Combine(folder, $".rulebook-{Guid.NewGuid():N}.part")).FullName;
        try
        {
            foreach (var file in (string[])["jurisdiction", "sources"])
                File.WriteAllText(
                    Path.Combine(aside, $"{file}.yaml"),
                    Filled(
                        file,
                        ("id", id),
                        ("name", Quoted(name)),
                        ("authority", Quoted(authority)),
                        ("within", within is null ? "" : $"within: {within}\n"),
                        ("today", Day(today)),
                        ("later", Day(today.AddYears(1)))
                    )
                );
            Directory.Move(aside, Path.Combine(folder, "jurisdictions", id));
        }
        finally
        {
            if (Directory.Exists(aside))
                Directory.Delete(aside, recursive: true);
        }

        return [$"jurisdictions/{id}/jurisdiction.yaml", $"jurisdictions/{id}/sources.yaml"];
    }

    /// <summary>Writes a rule at the end of its topic's file, and a case where its jurisdiction has none on the topic.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">What is in it.</param>
    /// <param name="id">Such as <c>us-tx/ride-height/bumpers</c>.</param>
    /// <param name="title">For a reader.</param>
    /// <param name="source">A source of the jurisdiction that tells of the rule.</param>
    /// <param name="today">The day on which it is written.</param>
    /// <returns>The files written.</returns>
    /// <exception cref="InputException">The id is none, or taken, or its jurisdiction, topic or source is not in the book.</exception>
    public static string[] Rule(string folder, Book book, string id, string title, string source, DateOnly today)
    {
        if (id.Split('/') is not [var at, var topic, var name] || !Name().IsMatch(name))
            throw Refused(
                "bad-id",
                "ID",
                $"'{id}' is no id of a rule",
                "write PLACE/TOPIC/NAME, such as au-qld/ride-height/raise-four-wheel-drive"
            );
        var place =
            book.Jurisdiction(at)
            ?? throw Refused("unknown-jurisdiction", "ID", $"'{at}' is not a jurisdiction of the book", book.PlaceTip(at));
        if (!book.Vocabulary.Topics.ContainsKey(topic))
            throw Refused("unknown-topic", "ID", $"'{topic}' is not a topic", Spelling.Tip(topic, [.. book.Vocabulary.Topics.Keys]));
        if (book.Rule(id) is not null)
            throw Refused("duplicate-rule", "ID", $"'{id}' is in the book already", "add a version to it, or choose another name");
        if (book.Source(place.Id, source) is null)
            throw Refused(
                "unknown-source",
                "--source",
                $"no source '{source}' is listed",
                $"list it in jurisdictions/{place.Id}/sources.yaml first"
            );

        (string, string)[] values =
        [
            ("id", place.Id),
            ("topic", topic),
            ("rule", name),
            ("title", Quoted(title)),
            ("source", source),
            ("dated", Day(today)),
            ("today", Day(today)),
            ("ask", Quoted(place.Ask.Name)),
        ];
        var rules = $"jurisdictions/{place.Id}/{topic}.yaml";
        var (file, cases) = (Path.Combine(folder, rules), Path.Combine(folder, "tests", "cases", place.Id, $"{topic}.yaml"));
        var before = File.Exists(file) ? YamlText.FileText(file, rules) : Filled("rules", values);
        if (File.Exists(file) && !EndsInRules(before, rules))
            throw Refused(
                "wrong-shape",
                rules,
                "the file does not end in its list of rules",
                "let 'rules:' be its last key, written line by line"
            );
        WholeFile.Write(file, $"{before.TrimEnd()}\n{Filled("rule", values)}");
        if (File.Exists(cases) || !Directory.Exists(Path.Combine(folder, "tests", "cases")))
            return [rules];
        Directory.CreateDirectory(Path.GetDirectoryName(cases)!);
        WholeFile.Write(cases, Filled("cases", values));
        return [rules, $"tests/cases/{place.Id}/{topic}.yaml"];
    }

    /// <summary>The book in a folder; that a source is cited nowhere yet is no hindrance, since the rule to be written cites it.</summary>
    /// <exception cref="InputException">It has other errors; every one is listed.</exception>
    public static Book Open(string folder)
    {
        var report = Inspection.Run(BookFolder.Load(folder), DateOnly.MaxValue);
        Problem[] errors =
        [
            .. report.Problems.Where(problem => problem.Severity == Severity.Error && problem.Code != SourceNotCited.Info.Code),
        ];
        return errors.Length == 0 && report.Book is { } book ? book : throw new InputException(errors);
    }

    private static bool EndsInRules(string text, string path) =>
        YamlText.Read(text, path) is Mapping { Entries: [.., var (key, value)] }
        && key.Text == "rules"
        && value is Sequence { Items: [.., var last] }
        && last.Mark.Column == 5;

    private static string Filled(string file, params ReadOnlySpan<(string Name, string Value)> values)
    {
        using var stream = typeof(Skeleton).Assembly.GetManifestResourceStream($"{file}.txt")!;
        using var reader = new StreamReader(stream);
        var text = reader.ReadToEnd();
        foreach (var (name, value) in values)
            text = text.Replace($"{{{name}}}", value, StringComparison.Ordinal);
        return text;
    }

    private static string Quoted(string text) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(text)}\"";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static InputException Refused(string code, string at, string what, string tip) =>
        new(Problem.Error(code, new Mark(at, 1, 1), what, tip));

    [GeneratedRegex("^[a-z]{2}(-[a-z0-9]{1,3})?$")]
    private static partial Regex JurisdictionId();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Name();
}
