using System.Text;

namespace RuleBook.Site;

/// <summary>
/// Writes a site into a folder: aside first, then file by file into place. Only what an earlier run made is replaced or taken away, as the
/// manifest of the folder names it; whatever else lies there stays.
/// </summary>
public static class SiteFolder
{
    /// <summary>The file that names what the site is made of.</summary>
    public const string Marker = SiteManifest.Name;

    private const string Aside = ".rulebook-site-";

    /// <summary>Replaces the site in <paramref name="folder"/> by the files given.</summary>
    /// <param name="files">All files of the site.</param>
    /// <param name="folder">The folder; a link to one is followed.</param>
    /// <param name="stop">Requested when the process is asked to end: before the first file is in place, everything is taken back.</param>
    /// <exception cref="IOException">
    /// The folder holds something else that would be in the way, another run writes there, or it cannot be written.
    /// </exception>
    public static void Write(IEnumerable<SiteFile> files, string folder, CancellationToken stop = default)
    {
        var target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (IsLink(target))
            target = Directory.ResolveLinkTarget(target, returnFinalTarget: true)!.FullName;
        SiteFile[] all = [.. files.Where(file => file.Path != Marker)];
        var earlier = SiteManifest.Read(target);
        Refuse(target, all, earlier);

        Directory.CreateDirectory(target);
        using var held = Hold(target);
        // The folder is ours alone now: what a run that died has left aside is of no use to anybody.
        foreach (var left in Directory.GetDirectories(target, $"{Aside}*.part"))
            Remove(left);
        var aside = Path.Combine(target, $"{Aside}{Guid.NewGuid():N}.part");
        try
        {
            foreach (var file in all)
            {
                stop.ThrowIfCancellationRequested();
                Put(Path.Combine(aside, file.Path), file.Content.Span);
            }

            // From here on the manifest names what was and what will be, so that whatever happens the next run knows what is the site's.
            SiteManifest.Write(target, aside, [.. earlier, .. all.Select(file => file.Path)], "");
            foreach (var file in all)
                Place(aside, target, file.Path);
            foreach (var gone in earlier.Except(all.Select(file => file.Path)))
                Remove(target, gone);
            var digest = files.FirstOrDefault(file => file.Path == Marker) is { } marker
                ? Encoding.UTF8.GetString(marker.Content.Span)
                : "";
            SiteManifest.Write(target, aside, [.. all.Select(file => file.Path)], digest);
        }
        finally
        {
            Remove(aside);
        }
    }

    /// <summary>Refuses to write over what no site made, and through links that lead elsewhere.</summary>
    private static void Refuse(string target, SiteFile[] files, IReadOnlySet<string> earlier)
    {
        if (File.Exists(target))
            throw new IOException($"{target} is a file; name a folder");
        if (!Directory.Exists(target))
            return;
        var isOurs = File.Exists(Path.Combine(target, Marker));
        if (
            !isOurs
            && Directory
                .EnumerateFileSystemEntries(target)
                .Select(Path.GetFileName)
                .FirstOrDefault(name => !name!.StartsWith('.') && name != "CNAME")
                is { } stranger
        )
            throw new IOException($"{target} is neither empty nor a site of this command (it has {stranger}); name another folder");
        foreach (var file in files)
        {
            var path = Path.Combine(target, file.Path);
            if (!earlier.Contains(file.Path) && (File.Exists(path) || Directory.Exists(path) || IsLink(path)))
                throw new IOException($"{path} is in the way, and the site did not make it; move it, or name another folder");
            for (var above = Path.GetDirectoryName(path)!; above.Length > target.Length; above = Path.GetDirectoryName(above)!)
                if (IsLink(above))
                    throw new IOException($"{above} is a link that leads out of the site; take it away, or name another folder");
        }
    }

    /// <summary>Holds the folder for this run; the operating system lets go when the process ends, however it ends.</summary>
    private static FileStream Hold(string target)
    {
        try
        {
            return new FileStream(
                Path.Combine(target, $"{Aside}lock"),
                FileMode.OpenOrCreate,
                FileAccess.ReadWrite,
                FileShare.None,
                bufferSize: 1,
                FileOptions.DeleteOnClose
            );
        }
        catch (IOException held) when (held is not DirectoryNotFoundException and not FileNotFoundException)
        {
            throw new IOException($"another run is writing to {target}, or it cannot be written: {held.Message}", held);
        }
    }

    private static void Put(string path, ReadOnlySpan<byte> content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        stream.Write(content);
    }

    private static void Place(string aside, string target, string path)
    {
        var there = Path.Combine(target, path);
        Directory.CreateDirectory(Path.GetDirectoryName(there)!);
        File.Move(Path.Combine(aside, path), there, overwrite: true);
    }

    /// <summary>A file, and every folder that is empty without it.</summary>
    private static void Remove(string target, string path)
    {
        var file = Path.Combine(target, path);
        for (var above = Path.GetDirectoryName(file)!; above.Length > target.Length; above = Path.GetDirectoryName(above)!)
            if (!Directory.Exists(above) || IsLink(above))
                return;
        File.Delete(file);
        for (var above = Path.GetDirectoryName(file)!; above.Length > target.Length; above = Path.GetDirectoryName(above)!)
            if (Directory.EnumerateFileSystemEntries(above).Any())
                return;
            else
                Directory.Delete(above);
    }

    private static void Remove(string folder)
    {
        if (IsLink(folder) || !Directory.Exists(folder))
            return;
        Directory.Delete(folder, recursive: true);
    }

    private static bool IsLink(string path) => new FileInfo(path).LinkTarget is not null;
}
