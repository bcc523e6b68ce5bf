using RuleBook.Text;

namespace RuleBook.Authoring.Files;

/// <summary>What a path that is to be written names, behind every link.</summary>
/// <param name="Path">Where to write.</param>
/// <param name="Status">What is there; null where nothing is.</param>
internal sealed record Destination(string Path, FileStatus? Status)
{
    /// <summary>
    /// Whether a file is there or can be made there; what is none (a device, a pipe, a socket) is written to as it is, never replaced.
    /// </summary>
    public bool IsFile => Status is null or { IsRegular: true };

    /// <exception cref="InputException">It is a folder, or there is no folder for it.</exception>
    public static Destination Of(string path)
    {
        var full = System.IO.Path.GetFullPath(path);
        // A link such as /dev/stdout may lead to a pipe, which has no name: what the system finds behind it is asked before the link is
        // followed.
        if (FileStatus.Of(full) is { IsRegular: false } special)
            return new Destination(full, special);
        var target = new FileInfo(full).LinkTarget is null ? full : File.ResolveLinkTarget(full, returnFinalTarget: true)!.FullName;
        if (Directory.Exists(target))
            throw Refused(path, "this is a folder", "name a file in it");
        if (!Directory.Exists(System.IO.Path.GetDirectoryName(target)))
            throw Refused(path, $"there is no folder '{System.IO.Path.GetDirectoryName(path)}'", "make it first, or check its name");
        return new Destination(target, FileStatus.Of(target));
    }

    /// <summary>To write to what is no file.</summary>
    public FileStream OpenAsItIs() => new(Path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);

    /// <summary>To replace a file, one must be allowed to write to it.</summary>
    /// <exception cref="UnauthorizedAccessException">One is not.</exception>
    public void AskToReplace()
    {
        if (Status is not null)
            using (File.OpenHandle(Path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite)) { }
    }

    private static InputException Refused(string path, string what, string tip) =>
        new(Problem.Error("not-writable", new Mark(path, 1, 1), what, tip));
}
