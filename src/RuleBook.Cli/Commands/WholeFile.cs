namespace RuleBook.Cli.Commands;

/// <summary>Writes a file whole or not at all: aside first, then renamed.</summary>
internal static class WholeFile
{
    public static void Write(string path, string text)
    {
        var aside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            File.WriteAllText(aside, text);
            File.Move(aside, path, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }
}
