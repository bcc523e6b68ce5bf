namespace RuleBook.Authoring.Tests;

/// <summary>A folder of its own for one test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rulebook-").FullName;

    public void Write(string path, string text)
    {
        var full = System.IO.Path.Combine(Path, path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
