using System.Collections.Immutable;
using RuleBook.Authoring.AllCores;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Cases;

/// <summary>The case files of a folder: <c>&lt;jurisdiction&gt;/&lt;topic&gt;.yaml</c>.</summary>
public static class CaseFolder
{
    /// <summary>Where a book keeps its cases, from the book's folder.</summary>
    public static string Within(string book) => Path.Combine(book, "tests", "cases");

    /// <summary>All cases, in ordinal order of their files and as written in them.</summary>
    /// <param name="folder">The folder that has a folder for each jurisdiction.</param>
    /// <param name="book">The book whose words and sources the cases use.</param>
    /// <exception cref="InputException">
    /// A file cannot be read, an id is used twice, or there is no case at all; every problem is listed.
    /// </exception>
    public static ImmutableArray<Case> Load(string folder, Book book)
    {
        var files = Directory.Exists(folder) ? Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories) : [];
        var read = InOrder.Each(
            [.. files.Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Order(StringComparer.Ordinal)],
            path => Read(folder, path, book)
        );
        var cases = read.SelectMany(file => file.Cases).ToImmutableArray();
        var problems = read.SelectMany(file => file.Problems).ToList();
        foreach (var twice in cases.GroupBy(one => one.Id).Where(group => group.Skip(1).Any()))
            problems.Add(
                Problem.Error(
                    "duplicate-id",
                    twice.ElementAt(1).Mark,
                    $"the id '{twice.Key}' is already used at {twice.First().Mark}",
                    "an id names one case for ever"
                )
            );
        if (cases.Length == 0 && problems.Count == 0)
            problems.Add(
                Problem.Error(
                    "no-case",
                    new Mark(folder, 1, 1),
                    "there is no case in the folder",
                    "a run without a case proves nothing: name the folder that has them"
                )
            );
        return problems.Count == 0 ? cases : throw new InputException([.. problems.Distinct().OrderBy(problem => problem.Mark)]);
    }

    private static (ImmutableArray<Case> Cases, IReadOnlyCollection<Problem> Problems) Read(string folder, string path, Book book)
    {
        var shown = $"tests/cases/{path}";
        if (
            path.Split('/') is not [var place, var file]
            || book.Jurisdiction(place)?.Id != place
            || !book.Vocabulary.Topics.ContainsKey(file[..^5])
        )
            return (
                [],
                [
                    Problem.Error(
                        "wrong-folder",
                        new Mark(shown, 1, 1),
                        $"'{path}' does not name a jurisdiction and a topic of the book",
                        "name it <jurisdiction>/<topic>.yaml"
                    ),
                ]
            );
        var problems = new List<Problem>();
        try
        {
            return (new CaseReader(book, place, file[..^5], problems).Read(YamlText.ReadFile(Path.Combine(folder, path), shown)), problems);
        }
        catch (InputException refused)
        {
            return ([], [.. problems, .. refused.Problems]);
        }
    }
}
