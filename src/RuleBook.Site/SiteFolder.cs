namespace RuleBook.Site;

/// <summary>Writes a site to a folder: aside first, then swapped in whole.</summary>
public static class SiteFolder
{
    /// <summary>The name of the file that says that a folder is a site of ours and may be replaced.</summary>
    public const string Marker = "rulebook-site.txt";

    /// <summary>Replaces <paramref name="folder"/> by the files given.</summary>
    /// <exception cref="IOException">The folder holds something else than a site, or cannot be written.</exception>
    public static void Write(IEnumerable<SiteFile> files, string folder)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var isOurs = File.Exists(Path.Combine(target, Marker));
        if (!isOurs && Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any())
            throw new IOException($"{target} is neither empty nor a site of this command; name another folder");

        var aside = $"{target}.{Environment.ProcessId}.part";
        var old = $"{target}.{Environment.ProcessId}.old";
        try
        {
            foreach (var file in files)
            {
                var path = Path.Combine(aside, file.Path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                using var stream = File.Create(path);
                stream.Write(file.Content.Span);
            }

            if (Directory.Exists(target)) Directory.Move(target, old);
            Directory.Move(aside, target);
        }
        finally
        {
            if (!Directory.Exists(target) && Directory.Exists(old)) Directory.Move(old, target);
            if (Directory.Exists(aside)) Directory.Delete(aside, recursive: true);
            if (Directory.Exists(old)) Directory.Delete(old, recursive: true);
        }
    }
}
