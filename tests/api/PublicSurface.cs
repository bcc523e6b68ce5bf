using System.Reflection;
using System.Text;
using PublicApiGenerator;

namespace RuleBook.Api.Tests;

/// <summary>
/// What a library offers to others, as committed in this folder: a change of it shows in the diff and is made on purpose.
/// </summary>
internal static class PublicSurface
{
    private const string Accept = "ACCEPT_PUBLIC_API";

    private static readonly ApiGeneratorOptions Options = new() { IncludeAssemblyAttributes = false };

    /// <summary>Fails where the assembly offers something else than the committed text; writes the text where told to accept it.</summary>
    public static void ShouldBeAsCommitted(Assembly assembly)
    {
        var name = assembly.GetName().Name;
        var file = Path.Combine(Folder(), $"{name}.txt");
        var offered = Text(assembly);
        if (Environment.GetEnvironmentVariable(Accept) == "yes")
            File.WriteAllText(file, offered, new UTF8Encoding(false));
        var committed = File.Exists(file) ? File.ReadAllText(file) : "";

        offered.ShouldBe(
            committed,
            $"""
            {name} offers something else than tests/api/{name}.txt says. If that is meant, run
                {Accept}=yes dotnet test --solution RuleBook.sln
            look at the difference and commit it.
            """
        );
    }

    private static string Text(Assembly assembly) => assembly.GeneratePublicApi(Options).ReplaceLineEndings("\n").TrimEnd() + "\n";

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RuleBook.sln")))
            folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? throw new InvalidOperationException("no repository above the tests"), "tests", "api");
    }
}
