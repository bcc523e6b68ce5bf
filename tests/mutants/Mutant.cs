namespace RuleBook.Mutants;

/// <summary>One mutant: its number, where it stands and what it does.</summary>
internal sealed record Mutant(int Number, string File, int Line, string Told)
{
    /// <summary>The folder of its file.</summary>
    public string Folder => File[..File.LastIndexOf('/')];

    /// <summary>In one line for a reader.</summary>
    public override string ToString() => $"{File}:{Line}: {(Told.Length < 110 ? Told : Told[..107] + "...").ReplaceLineEndings(" ")}";
}
