using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Text.Json;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Diagnostics;

namespace RuleBook.Mutants;

/// <summary>One project with all its mutants in one assembly; which of them acts is said by the environment of the process.</summary>
internal sealed class MutatedProject
{
    /// <summary>The variable with the number of the mutant that acts.</summary>
    public const string Acting = "RULEBOOK_MUTANT";

    /// <summary>The class, in every mutated assembly, that knows which mutant acts.</summary>
    public const string Switch = "MutantSwitch";

    private const string SwitchCode = $$"""
        internal static class {{Switch}}
        {
            private static int Acting = int.TryParse(System.Environment.GetEnvironmentVariable("{{Acting}}"), out var number) ? number : 0;
            private static readonly bool[] Reached = new bool[1 << 16];

            public static bool On(int number)
            {
                Reached[number] = true;
                return number == Acting;
            }
        }
        """;

    private readonly CSharpCommandLineArguments told;
    private readonly CSharpCompilation whole;
    private readonly string root;
    private readonly string under;
    private readonly int first;

    /// <param name="root">The root of the tree.</param>
    /// <param name="project">The folder of the project, from the root.</param>
    /// <param name="under">Only files whose path from the root begins so are changed.</param>
    /// <param name="first">The number of the first mutant.</param>
    public MutatedProject(string root, string project, string under, int first)
    {
        (this.root, this.under, this.first, Name) = (root, under, first, Path.GetFileName(project));
        var folder = Path.Combine(root, project);
        told = CSharpCommandLineParser.Default.Parse(CompilerArguments(folder), folder, sdkDirectory: null);
        whole = CSharpCompilation.Create(
            told.CompilationName,
            [
                .. told.SourceFiles.Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file.Path), told.ParseOptions, file.Path)),
                CSharpSyntaxTree.ParseText(SwitchCode, told.ParseOptions),
            ],
            told.MetadataReferences.Select(each => MetadataReference.CreateFromFile(each.Reference, each.Properties)),
            told.CompilationOptions.WithGeneralDiagnosticOption(ReportDiagnostic.Suppress).WithSpecificDiagnosticOptions(null)
        );
        Possible = Rewritten(_ => true).Mutants;
    }

    /// <summary>The name of the project and of its assembly.</summary>
    public string Name { get; }

    /// <summary>All mutants that could be tried at the compiler.</summary>
    public IReadOnlyList<Mutant> Possible { get; }

    /// <summary>
    /// Writes the assembly with the mutants wanted, over again until the compiler has nothing against what is left of them.
    /// </summary>
    /// <returns>The mutants in it.</returns>
    public IReadOnlyList<Mutant> Write(string assembly, Predicate<int> wanted)
    {
        var refused = new HashSet<int>();
        while (true)
        {
            var (compilation, mutants) = Rewritten(number => wanted(number) && !refused.Contains(number));
            CSharpGeneratorDriver
                .Create(Generators(), parseOptions: told.ParseOptions)
                .RunGeneratorsAndUpdateCompilation(compilation, out var generated, out _);
            using var written = new MemoryStream();
            var result = generated.Emit(written, manifestResources: told.ManifestResources);
            if (result.Success)
            {
                // Its other copies are links to it, as the build left them.
                File.Delete(assembly);
                File.WriteAllBytes(assembly, written.ToArray());
                return mutants;
            }

            Diagnostic[] errors = [.. result.Diagnostics.Where(each => each.Severity == DiagnosticSeverity.Error)];
            var before = refused.Count;
            refused.UnionWith(errors.SelectMany(Blamed));
            if (refused.Count == before)
                throw new InvalidOperationException(string.Join('\n', errors.Select(each => each.ToString())));
        }
    }

    private (CSharpCompilation Compilation, IReadOnlyList<Mutant> Mutants) Rewritten(Predicate<int> wanted)
    {
        var (next, compilation, mutants) = (first, whole, new List<Mutant>());
        foreach (var tree in whole.SyntaxTrees.Where(tree => tree.FilePath.Length > 0))
        {
            var file = Path.GetRelativePath(root, tree.FilePath).Replace('\\', '/');
            if (!file.StartsWith(under, StringComparison.Ordinal) || file.Contains("/obj/", StringComparison.Ordinal))
                continue;
            var rewriting = new Rewriting(file, next, wanted);
            var changed = (CompilationUnitSyntax)rewriting.Visit(tree.GetRoot())!;
            compilation = compilation.ReplaceSyntaxTree(tree, CSharpSyntaxTree.Create(changed, told.ParseOptions, tree.FilePath));
            next = rewriting.Next;
            mutants.AddRange(rewriting.Made);
        }

        return (compilation, mutants);
    }

    /// <summary>
    /// The innermost change around an error; for a name that may have no value, and for what stands in no change, those of the member, of
    /// which only those that declare the name if there are such. A member without any is judged with what it stands in.
    /// </summary>
    private static IEnumerable<int> Blamed(Diagnostic error)
    {
        if (error.Location.SourceTree is not { } tree)
            return [];
        var at = tree.GetRoot().FindNode(error.Location.SourceSpan, getInnermostNodeForTie: true);
        if (error.Id != "CS0165" && Marked(at.AncestorsAndSelf()).Take(1).ToArray() is [var inner])
            return [Number(inner)];
        var within = at.Ancestors()
            .Where(each => each is MemberDeclarationSyntax or CompilationUnitSyntax)
            .Select(member => Marked(member.DescendantNodes()))
            .First(some => some.Any());
        var named = within.Where(node =>
            node.DescendantNodes().OfType<SingleVariableDesignationSyntax>().Any(each => each.Identifier.ValueText == $"{at}")
        );
        return (named.Any() ? named : within).Select(Number);

        static IEnumerable<SyntaxNode> Marked(IEnumerable<SyntaxNode> nodes) => nodes.Where(node => node.HasAnnotations(Rewriting.Mark));
        static int Number(SyntaxNode node) =>
            node.GetAnnotations(Rewriting.Mark).Max(mark => int.Parse(mark.Data!, CultureInfo.InvariantCulture));
    }

    private IEnumerable<ISourceGenerator> Generators()
    {
        var loader = new Loader();
        return told.AnalyzerReferences.SelectMany(each =>
            new AnalyzerFileReference(Path.GetFullPath(each.FilePath, told.BaseDirectory!), loader).GetGenerators(LanguageNames.CSharp)
        );
    }

    private static string[] CompilerArguments(string folder)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, WorkingDirectory = folder };
        foreach (
            var word in (string[])
                [
                    "msbuild",
                    "-t:PrepareResources;Compile",
                    "-p:SkipCompilerExecution=true",
                    "-p:ProvideCommandLineArgs=true",
                    "-p:BuildProjectReferences=false",
                    "-p:NonExistentFile=always",
                    "-getItem:CscCommandLineArgs",
                ]
        )
            start.ArgumentList.Add(word);
        using var process = Process.Start(start)!;
        using var answer = JsonDocument.Parse(process.StandardOutput.ReadToEnd());
        return
        [
            .. answer
                .RootElement.GetProperty("Items")
                .GetProperty("CscCommandLineArgs")
                .EnumerateArray()
                .Select(each => each.GetProperty("Identity").GetString()!),
        ];
    }

    private sealed class Loader : IAnalyzerAssemblyLoader
    {
        public void AddDependencyLocation(string fullPath) { }

        public Assembly LoadFromPath(string fullPath) => Assembly.LoadFrom(fullPath);
    }
}
