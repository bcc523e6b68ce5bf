using System.Globalization;
using System.Runtime.CompilerServices;

namespace RuleBook.Authoring.Tests.Inspecting;

/// <summary>
/// A book with one fault, named after the code of the fault. Its folder has only the files that differ from <c>sound</c>, and
/// <c>expected.txt</c> with one line for each problem (<c>file:line:column code</c>, placed by hand) after <c>without: PATH</c>, <c>fill:
/// PATH BYTES</c> and <c>link: PATH TARGET</c>.
/// </summary>
internal sealed class BadBook : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private BadBook(string code)
    {
        var expected = File.ReadAllLines(Path.Combine(Root, code, "expected.txt"));
        Copy(Path.Combine(Root, "sound"));
        Copy(Path.Combine(Root, code));
        foreach (var line in expected.Where(line => line.StartsWith("without: ", StringComparison.Ordinal)))
            Remove(line.Split(' ')[1]);
        foreach (var line in expected.Where(line => line.StartsWith("fill: ", StringComparison.Ordinal)))
            Fill(line.Split(' '));
        foreach (var line in expected.Where(line => line.StartsWith("link: ", StringComparison.Ordinal)))
            File.CreateSymbolicLink(Path.Combine(Folder, line.Split(' ')[1]), line.Split(' ')[2]);
        Expected = [.. expected.Where(line => line.Length > 0 && !IsDirective(line))];
    }

    /// <summary>The folder of all bad books.</summary>
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "..", "bad-books"));

    /// <summary>The codes that have one.</summary>
    public static IEnumerable<string> Codes =>
        Directory
            .GetDirectories(Root)
            .Select(folder => Path.GetFileName(folder)!)
            .Where(code => code != "sound")
            .Order(StringComparer.Ordinal);

    public string[] Expected { get; }

    public string Folder => _folder.Path;

    public static BadBook Open(string code) => new(code);

    public void Dispose() => _folder.Dispose();

    private static bool IsDirective(string line) =>
        (string[])["without: ", "fill: ", "link: "] is var directives
        && directives.Any(each => line.StartsWith(each, StringComparison.Ordinal));

    private void Copy(string from)
    {
        foreach (
            var file in Directory
                .EnumerateFiles(from, "*", SearchOption.AllDirectories)
                .Where(file => Path.GetFileName(file) != "expected.txt")
        )
        {
            var to = Path.Combine(Folder, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to, overwrite: true);
        }
    }

    private void Remove(string path)
    {
        var full = Path.Combine(Folder, path);
        if (Directory.Exists(full))
            Directory.Delete(full, recursive: true);
        else
            File.Delete(full);
    }

    private void Fill(string[] words) =>
        File.WriteAllText(Path.Combine(Folder, words[1]), new string('x', int.Parse(words[2], CultureInfo.InvariantCulture)));

    private static string Here([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}
