using System.Text;
using RuleBook.Text;

namespace RuleBook.Authoring.Files;

/// <summary>
/// Writes a file whole or not at all: aside first, under a name that nobody can foresee, then renamed. A link is followed to what it names,
/// the mode and owner of a file that is replaced are kept, and what is no file (a device, a pipe) is written to as it is.
/// </summary>
internal static class WholeFile
{
    /// <exception cref="IOException">It cannot be written; what was there is still there.</exception>
    /// <exception cref="OperationCanceledException">The process is asked to end; what was there is still there.</exception>
    public static void Write(string path, string text, CancellationToken stop = default) => Write(path, Encoding.UTF8.GetBytes(text), stop);

    /// <inheritdoc cref="Write(string, string, CancellationToken)"/>
    public static void Write(string path, ReadOnlySpan<byte> bytes, CancellationToken stop = default)
    {
        var target = Followed(Path.GetFullPath(path));
        if (Directory.Exists(target)) throw Refused(path, "this is a folder", "name a file in it");
        if (!Directory.Exists(Path.GetDirectoryName(target))) throw Refused(path, $"there is no folder '{Path.GetDirectoryName(path)}'", "make it first, or check its name");
        var kept = FileStatus.Of(target);
        if (kept is { IsRegular: false })
        {
            using var device = new FileStream(target, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
            device.Write(bytes);
            return;
        }

        // To replace a file, one must be allowed to write to it.
        if (kept is not null) using (File.OpenHandle(target, FileMode.Open, FileAccess.Write, FileShare.ReadWrite)) { }
        var aside = Path.Combine(Path.GetDirectoryName(target)!, $".rulebook-{Guid.NewGuid():N}.part");
        var made = false;
        try
        {
            using (var stream = new FileStream(aside, FileMode.CreateNew, FileAccess.Write))
            {
                made = true;
                stream.Write(bytes);
                stream.Flush(flushToDisk: true);
            }

            kept?.ApplyTo(aside);
            stop.ThrowIfCancellationRequested();
            File.Move(aside, target, overwrite: true);
            made = false;
        }
        finally
        {
            if (made) File.Delete(aside);
        }
    }

    private static InputException Refused(string path, string what, string tip) => new(Problem.Error("not-writable", new Mark(path, 1, 1), what, tip));

    private static string Followed(string path) =>
        new FileInfo(path).LinkTarget is null ? path : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;
}
