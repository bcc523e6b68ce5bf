using System.Text;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// A long file that is written aside and takes its name once it is whole; without that it is taken back. What a run that died has left aside is written
/// over, or gone on with; two runs never write the same file.
/// </summary>
internal sealed class WrittenAside : IDisposable
{
    private readonly string file;
    private readonly string aside;
    private readonly FileStream stream;

    /// <param name="file">The file.</param>
    /// <param name="kept">How many bytes of what is aside are kept.</param>
    /// <exception cref="InputException">There is a folder of that name, a link where it is written aside, or less aside than is to be kept.</exception>
    /// <exception cref="IOException">Another run writes it.</exception>
    public WrittenAside(string file, long kept = 0)
    {
        if (Directory.Exists(file)) throw new InputException(Problem.Error("not-writable", new Mark(file, 1, 1), "this is a folder", "name a file in it"));
        this.file = Path.GetFullPath(file);
        aside = Beside(file, "part");
        if (new FileInfo(aside).LinkTarget is not null)
            throw new InputException(Problem.Error("not-writable", new Mark(aside, 1, 1), "a link lies where the file is written aside", "take it away"));
        stream = new FileStream(aside, FileMode.OpenOrCreate, FileAccess.Write, FileShare.None, 1 << 16);
        if (stream.Length < kept)
        {
            stream.Dispose();
            throw new InputException(Problem.Error("not-resumable", new Mark(file, 1, 1), "less was written than the run that died had noted", "run it again without --resume"));
        }

        stream.SetLength(kept);
        stream.Seek(0, SeekOrigin.End);
        Text = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16);
    }

    public StreamWriter Text { get; }

    /// <summary>How many bytes are written, after all of them are.</summary>
    public long Length
    {
        get
        {
            Text.Flush();
            return stream.Length;
        }
    }

    /// <summary>A hidden file beside another that belongs to it.</summary>
    public static string Beside(string file, string what) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, $".{Path.GetFileName(file)}.rulebook-{what}");

    /// <summary>Gives it its name.</summary>
    public void Keep()
    {
        Text.Dispose();
        File.Move(aside, file, overwrite: true);
    }

    public void Dispose()
    {
        Text.Dispose();
        File.Delete(aside);
    }
}
