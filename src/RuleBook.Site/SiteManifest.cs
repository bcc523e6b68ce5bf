using System.Text;

namespace RuleBook.Site;

/// <summary>
/// The list of what a site is made of, kept in its folder: what is named there may be replaced and taken away, nothing else.
/// </summary>
internal static class SiteManifest
{
    public const string Name = "rulebook-site.txt";

    private const string Mark = "file: ";
    private const int Largest = 16 * 1024 * 1024;

    /// <summary>
    /// The files that earlier runs made; none where there is no manifest. A line that leads out of the folder counts as none.
    /// </summary>
    public static IReadOnlySet<string> Read(string folder)
    {
        var about = new FileInfo(Path.Combine(folder, Name));
        if (!about.Exists || about.LinkTarget is not null || about.Length > Largest)
            return new HashSet<string>();
        return File.ReadLines(about.FullName)
            .Where(line => line.StartsWith(Mark, StringComparison.Ordinal))
            .Select(line => line[Mark.Length..])
            .Where(path => !Path.IsPathRooted(path) && path.Split('/', '\\').All(part => part is not ("" or "." or "..")))
            .ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>Writes it aside and renames it into place.</summary>
    public static void Write(string folder, string aside, IEnumerable<string> paths, string head)
    {
        var text = new StringBuilder(head.Length > 0 ? head : "A site of the command, being written.\n");
        foreach (var path in paths.Distinct().Order(StringComparer.Ordinal))
            text.Append(Mark).Append(path).Append('\n');
        Directory.CreateDirectory(aside);
        var written = Path.Combine(aside, Name);
        File.WriteAllText(written, text.ToString());
        File.Move(written, Path.Combine(folder, Name), overwrite: true);
    }
}
