using System.Text;

namespace RuleBook.Cli.Answers;

/// <summary>Writes a file whole or not at all: aside first, then renamed.</summary>
internal static class WholeFile
{
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));

    public static void Write(string path, byte[] bytes)
    {
        var aside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            File.WriteAllBytes(aside, bytes);
            File.Move(aside, path, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }
}
