using RuleBook.Answers;
using RuleBook.Authoring.Inspecting;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>The book of this repository, read once, and jobs written as YAML.</summary>
internal static class RealBook
{
    public static string Root { get; } = FindRoot();

    private static readonly Lazy<Book> Real = new(() => BookReading.Open(Root));

    public static Book Book => Real.Value;

    public static Assessment Assess(string job) => Assessor.Assess(Book, JobReader.Read(YamlText.Read(job, "job"), Book));

    /// <summary>A vehicle in a state on a day, as it stands, with a lift of one inch so that there is something to judge.</summary>
    public static Assessment Assess(
        string place,
        string vehicle,
        string measured,
        string on = "2026-11-25",
        string modification = "suspension-lift: 1 in"
    ) =>
        Assess(
            $$"""
            registered-in: {{place}}
            on: {{on}}
            vehicle: { {{vehicle}} }
            modification: { {{modification}} }
            measured: { {{measured}} }
            """
        );

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !Directory.Exists(Path.Combine(folder.FullName, "jurisdictions")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("no book above the tests");
    }
}
