using RuleBook.Authoring.Files;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// A long file that is written aside and takes its name once it is whole, with the mode of what it replaces; without that it is taken back.
/// What a run that died has left aside is written over, or gone on with; two runs never write the same file. What is no file (a device, a
/// pipe) is written to as it is.
/// </summary>
internal sealed class WrittenAside : IDisposable
{
    private readonly Destination to;
    private readonly string? aside; // null of what is no file
    private readonly FileStream stream;

    /// <param name="to">Where it goes.</param>
    /// <param name="kept">How many bytes of what is aside are kept.</param>
    /// <exception cref="InputException">There is a link where it is written aside, or less aside than is to be kept.</exception>
    /// <exception cref="IOException">Another run writes it.</exception>
    public WrittenAside(Destination to, long kept = 0)
    {
        this.to = to;
        if (to.IsFile)
        {
            to.AskToReplace();
            aside = Beside(to, "part");
            if (new FileInfo(aside).LinkTarget is not null)
                throw new InputException(
                    Problem.Error("not-writable", new Mark(aside, 1, 1), "a link lies where the file is written aside", "take it away")
                );
            stream = new FileStream(aside, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1 << 16);
            GoOnAfter(kept);
        }
        else
        {
            stream = to.OpenAsItIs();
        }
    }

    /// <summary>How many bytes are written, after all of them are; of a file.</summary>
    public long Length
    {
        get
        {
            stream.Flush();
            return stream.Length;
        }
    }

    /// <summary>A hidden file beside another that belongs to it.</summary>
    public static string Beside(Destination to, string what) =>
        Path.Combine(Path.GetDirectoryName(to.Path)!, $".{Path.GetFileName(to.Path)}.rulebook-{what}");

    public void Write(ReadOnlyMemory<byte> bytes) => stream.Write(bytes.Span);

    /// <summary>Gives it its name.</summary>
    public void Keep()
    {
        stream.Dispose();
        if (aside is null)
            return;
        to.Status?.ApplyTo(aside);
        File.Move(aside, to.Path, overwrite: true);
    }

    public void Dispose()
    {
        try
        {
            stream.Dispose();
        }
        finally
        {
            if (aside is not null)
                File.Delete(aside);
        }
    }

    private void GoOnAfter(long kept)
    {
        if (stream.Length < kept)
        {
            stream.Dispose();
            throw new InputException(
                Problem.Error(
                    "not-resumable",
                    new Mark(to.Path, 1, 1),
                    "less was written than the run that died had noted",
                    "run it again without --resume"
                )
            );
        }

        stream.SetLength(kept);
        stream.Seek(0, SeekOrigin.End);
    }
}
