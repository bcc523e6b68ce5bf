using System.Text;

namespace RuleBook.Authoring.Files;

/// <summary>
/// Writes a file whole or not at all: aside first, under a name that nobody can foresee, then renamed. A link is followed to what it names,
/// the mode and owner of a file that is replaced are kept, and what is no file (a device, a pipe) is written to as it is.
/// </summary>
internal static class WholeFile
{
    /// <exception cref="Text.InputException">It is a folder, or there is no folder for it.</exception>
    /// <exception cref="IOException">It cannot be written; what was there is still there.</exception>
    /// <exception cref="OperationCanceledException">The process is asked to end; what was there is still there.</exception>
    public static void Write(string path, string text, CancellationToken stop = default) => Write(path, Encoding.UTF8.GetBytes(text), stop);

    /// <inheritdoc cref="Write(string, string, CancellationToken)"/>
    public static void Write(string path, ReadOnlySpan<byte> bytes, CancellationToken stop = default)
    {
        var to = Destination.Of(path);
        var target = to.Path;
        if (!to.IsFile)
        {
            using var device = to.OpenAsItIs();
            device.Write(bytes);
            return;
        }

        to.AskToReplace();
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

            to.Status?.ApplyTo(aside);
            stop.ThrowIfCancellationRequested();
            File.Move(aside, target, overwrite: true);
            made = false;
        }
        finally
        {
            if (made)
                File.Delete(aside);
        }
    }
}
