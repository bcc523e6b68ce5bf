using System.Collections.Immutable;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests;

/// <summary>The book of this repository, opened once.</summary>
internal static class TestBook
{
    public static string Folder { get; } =
        Upward(AppContext.BaseDirectory).First(folder => File.Exists(Path.Combine(folder, "RuleBook.sln")));

    private static readonly Lazy<Book> Opened = new(() => BookReading.Open(Folder));

    public static Book Book => Opened.Value;

    private static readonly Lazy<CaseFiles> Read = new(() => new CaseFiles(CaseFolder.Load(CaseFolder.Within(Folder), Book)));

    /// <summary>Its cases, read once.</summary>
    public static ImmutableArray<Case> Cases => Read.Value.All;

    private sealed record CaseFiles(ImmutableArray<Case> All);

    private static IEnumerable<string> Upward(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            yield return folder.FullName;
    }
}
