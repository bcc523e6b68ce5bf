using System.Collections.Immutable;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Checks;
using RuleBook.Authoring.Schemas;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Runs everything over a book and returns all that is wrong in one run.</summary>
public static class Inspection
{
    /// <summary>
    /// Inspects the book in <paramref name="folder"/>, and what its cases lean on. Cases that cannot be read are told where they are run.
    /// </summary>
    /// <param name="folder">The folder that has <c>jurisdictions</c> in it.</param>
    /// <param name="today">The day against which sources are overdue.</param>
    /// <returns>The report; never throws for what is wrong in the book.</returns>
    public static InspectionReport Run(string folder, DateOnly today)
    {
        try
        {
            var report = Run(BookFolder.Load(folder), today);
            return report is { IsSound: true, Book: { } book }
                ? report with
                {
                    Problems = Ordered(report.Problems.Concat(OfCases(book, folder)).Concat(VehicleNotCovered.Find(book))),
                }
                : report;
        }
        catch (InputException refusal)
        {
            return new InspectionReport([.. refusal.Problems], 0, "", null);
        }
    }

    /// <summary>Inspects a book that is already read from disk.</summary>
    /// <inheritdoc cref="Run(string, DateOnly)"/>
    public static InspectionReport Run(BookFolder folder, DateOnly today)
    {
        var problems = new List<Problem>(folder.Problems);
        var files = BookNodes.Read(folder, problems);
        return Run(files, problems, folder.Files.Length, folder.Digest, today);
    }

    /// <summary>Inspects the nodes of a book's files.</summary>
    /// <inheritdoc cref="Run(string, DateOnly)"/>
    public static InspectionReport Run(IReadOnlyList<BookFile> files, string digest, DateOnly today) =>
        Run(files, [], files.Count, digest, today);

    private static InspectionReport Run(IReadOnlyList<BookFile> files, List<Problem> problems, int count, string digest, DateOnly today)
    {
        var unread = problems
            .Where(problem => problem.Code != "stray-file")
            .Select(problem => problem.Mark.File)
            .ToHashSet(StringComparer.Ordinal);
        if (unread.Any(IsVocabulary))
            return Report([.. problems, .. Shapes(files)]);

        var bound = new List<Problem>();
        var book = BookReader.Read(files, digest, bound);
        var shapeless = bound.Where(problem => problem.Code == "wrong-shape").Select(problem => problem.Mark).ToHashSet();
        bound.RemoveAll(problem =>
            unread.Contains(problem.Mark.File) || (problem.Code == "missing-key" && shapeless.Contains(problem.Mark))
        );
        problems.AddRange(bound.Distinct());
        problems.AddRange(Without(Meanings.Find(new Inspected(book, files, today), unread, bound), problems, SamePlace));
        problems.AddRange(Without(Shapes(files), problems, SamePlace));
        return Report(problems) with { Book = book };

        InspectionReport Report(IEnumerable<Problem> all) => new(Ordered(Consequences.Without([.. all])), count, digest, null);
    }

    private static IEnumerable<Problem> OfCases(Book book, string folder)
    {
        if (!Directory.Exists(CaseFolder.Within(folder)))
            return [];
        try
        {
            return CaseCitesUnread.Find(book, CaseFolder.Load(CaseFolder.Within(folder), book)).Distinct();
        }
        catch (InputException)
        {
            return [];
        }
    }

    private static IEnumerable<Problem> Shapes(IEnumerable<BookFile> files) =>
        files
            .Select(file => (file, schema: SchemaCheck.NameFor(file.Path)))
            .Where(pair => pair.schema is not null)
            .SelectMany(pair => SchemaCheck.Find(pair.schema!, pair.file.Root));

    /// <summary>What is found later at a place where something is already reported is a consequence, or the same in other words.</summary>
    private static Problem[] Without(IEnumerable<Problem> found, IEnumerable<Problem> reported, Func<Problem, Problem, bool> same)
    {
        var byPlace = reported.ToLookup(problem => problem.Mark);
        return [.. found.Distinct().Where(problem => !byPlace[problem.Mark].Any(known => same(known, problem)))];
    }

    /// <summary>One mapping may lack several keys; that nothing cites a source says nothing of how its id is written.</summary>
    private static bool SamePlace(Problem known, Problem found) =>
        (found.Code != "missing-key" || known.Text == found.Text || known.Code is "wrong-shape" or "one-content")
        && known.Code != SourceNotCited.Info.Code;

    private static bool IsVocabulary(string path) => path.StartsWith("schema/vocabulary/", StringComparison.Ordinal);

    private static ImmutableArray<Problem> Ordered(IEnumerable<Problem> problems) =>
        [
            .. problems
                .OrderBy(problem => problem.Mark)
                .ThenBy(problem => problem.Code, StringComparer.Ordinal)
                .ThenBy(problem => problem.Text, StringComparer.Ordinal),
        ];
}
