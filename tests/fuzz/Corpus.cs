using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;

namespace RuleBook.Fuzz;

/// <summary>What the runs start from: the repository's own books, jobs and cases, and the inputs that were findings once.</summary>
internal sealed class Corpus(string repository)
{
    /// <summary>The book of the repository.</summary>
    public Book Book { get; } = BookReading.Open(repository);

    /// <summary>The folder of a small sound book.</summary>
    public string SmallFolder { get; } = Path.Combine(repository, "tests", "bad-books", "sound");

    /// <summary>Its files.</summary>
    public BookFolder Small { get; } = BookFolder.Load(Path.Combine(repository, "tests", "bad-books", "sound"));

    public string[] Jobs { get; } = Texts(Path.Combine(repository, "examples"), "*.yaml");

    public string[] BookFiles { get; } = Texts(Path.Combine(repository, "jurisdictions"), "*.yaml");

    public string[] CaseFiles { get; } = Texts(Path.Combine(repository, "tests", "cases"), "*.yaml");

    public string[] Bad { get; } = Texts(Path.Combine(repository, "tests", "bad-books"), "*.yaml");

    /// <summary>The inputs of a kind that were findings once.</summary>
    public string[] Kept(string kind) => Texts(Path.Combine(repository, "tests", "fuzz", "seeds", kind), "*");

    /// <summary>Keeps a finding, and returns its file.</summary>
    public string Keep(string kind, string input)
    {
        var folder = Directory.CreateDirectory(Path.Combine(repository, "tests", "fuzz", "found")).FullName;
        var file = Path.Combine(folder, $"{kind}-{Guid.NewGuid():N}");
        // Half of a character cannot be written as it is; what stands for it still shows the finding's shape.
        File.WriteAllBytes(file, System.Text.Encoding.UTF8.GetBytes(input));
        return file;
    }

    private static string[] Texts(string folder, string pattern) =>
        Directory.Exists(folder)
            ? [.. Directory.GetFiles(folder, pattern, SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)]
            : [];
}
