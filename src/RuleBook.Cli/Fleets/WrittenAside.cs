using System.Text;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>A long file that is written aside and takes its name once it is whole; without that it is taken back.</summary>
internal sealed class WrittenAside : IDisposable
{
    private readonly string file;
    private readonly string aside;

    /// <exception cref="InputException">There is a folder of that name.</exception>
    public WrittenAside(string file)
    {
        if (Directory.Exists(file)) throw new InputException(Problem.Error("not-writable", new Mark(file, 1, 1), "this is a folder", "name a file in it"));
        this.file = Path.GetFullPath(file);
        aside = Path.Combine(Path.GetDirectoryName(this.file)!, $".rulebook-{Guid.NewGuid():N}.part");
        Text = new StreamWriter(new FileStream(aside, FileMode.CreateNew, FileAccess.Write, FileShare.Read, 1 << 16), new UTF8Encoding(false));
    }

    public StreamWriter Text { get; }

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
