using RuleBook.Text;

namespace RuleBook.Authoring.Exports;

/// <summary>
/// Writes an export as a folder, whole or not at all: aside first, then renamed. A folder that holds anything but an export is refused.
/// </summary>
internal static class ExportFolder
{
    /// <exception cref="InputException">The folder holds something else, or is a file; nothing is written.</exception>
    /// <exception cref="OperationCanceledException">The process is asked to end; what was there is still there.</exception>
    public static void Write(BookExport export, string folder, CancellationToken stop = default)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (File.Exists(target))
            throw Refused(folder, "this is a file", "name a folder");
        if (Stranger(target) is { } stranger)
            throw Refused(folder, $"the folder holds what is no export: {stranger}", "name a new folder, or an export to replace");
        var above = Path.GetDirectoryName(target) ?? target;
        if (!Directory.Exists(above))
            throw Refused(folder, $"there is no folder '{Path.GetDirectoryName(folder)}'", "make it first, or check its name");
        var (aside, replaced) = (
            Path.Combine(above, $".rulebook-{Guid.NewGuid():N}.part"),
            Path.Combine(above, $".rulebook-{Guid.NewGuid():N}.old")
        );
        try
        {
            Directory.CreateDirectory(aside);
            foreach (var file in export.Files)
            {
                stop.ThrowIfCancellationRequested();
                File.WriteAllBytes(Path.Combine(aside, file.Name), file.Bytes.Span);
            }

            if (Directory.Exists(target))
                Directory.Move(target, replaced);
            Directory.Move(aside, target);
        }
        finally
        {
            if (Directory.Exists(replaced) && !Directory.Exists(target))
                Directory.Move(replaced, target);
            foreach (var left in new[] { aside, replaced }.Where(Directory.Exists))
                Directory.Delete(left, recursive: true);
        }
    }

    /// <summary>What lies there and is not of an export; null where nothing is.</summary>
    private static string? Stranger(string target)
    {
        if (!Directory.Exists(target))
            return null;
        if (new DirectoryInfo(target).LinkTarget is not null)
            return "it is a link";
        string[] names = [.. Directory.EnumerateFileSystemEntries(target).Select(path => Path.GetFileName(path)!)];
        if (names.Length == 0)
            return null;
        var isExport = names.Contains("README.txt") && names.Any(name => name == "judge.sql" || Path.GetExtension(name) == ".dmn");
        return names
            .Order(StringComparer.Ordinal)
            .FirstOrDefault(name =>
                !isExport
                || Directory.Exists(Path.Combine(target, name))
                || Path.GetExtension(name) is not (".sql" or ".csv" or ".parquet" or ".dmn" or ".txt")
            );
    }

    private static InputException Refused(string folder, string what, string tip) =>
        new(Problem.Error("not-writable", new Mark(folder, 1, 1), what, tip));
}
