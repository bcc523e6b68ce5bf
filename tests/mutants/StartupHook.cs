using System.Globalization;
using System.Reflection;
using RuleBook.Mutants;

/// <summary>
/// Runs a test program over and over in one process, so that it reads its books and compiles its code once: the runtime calls this
/// before the program's own start. A line that comes in has the number of a mutant and the words of a run; <see cref="Ended"/> goes out
/// after it.
/// </summary>
internal static class StartupHook
{
    /// <summary>The variable that tells the runtime of this assembly.</summary>
    public const string Variable = "DOTNET_STARTUP_HOOKS";

    /// <summary>Begins the last line of a run; the exit code, and the numbers of the places that were reached, follow.</summary>
    public const string Ended = "the run ended with ";

    public static void Initialize()
    {
        // The programs that the tests start have a run of their own.
        Environment.SetEnvironmentVariable(Variable, null);
        var (said, program) = (Console.Out, Assembly.GetEntryAssembly()!.EntryPoint!);
        while (Console.In.ReadLine()?.Split(' ') is [var mutant, .. var words])
        {
            Environment.SetEnvironmentVariable(MutatedProject.Acting, mutant);
            foreach (var (acting, reached) in Switches())
            {
                acting.SetValue(null, int.Parse(mutant, CultureInfo.InvariantCulture));
                Array.Clear(reached);
            }

            var code = program.Invoke(null, [words]);
            var numbers = Switches().SelectMany(each => each.Reached.Index().Where(place => place.Item).Select(place => place.Index));
            Console.SetOut(said);
            Console.WriteLine($"\n{Ended}{code} {string.Join(' ', numbers)}");
        }

        Environment.Exit(0);
    }

    private static IEnumerable<(FieldInfo Acting, bool[] Reached)> Switches() =>
        AppDomain
            .CurrentDomain.GetAssemblies()
            .Select(assembly => assembly.GetType(MutatedProject.Switch))
            .OfType<Type>()
            .Select(each => (Field(each, "Acting"), (bool[])Field(each, "Reached").GetValue(null)!));

    private static FieldInfo Field(Type each, string name) => each.GetField(name, BindingFlags.Static | BindingFlags.NonPublic)!;
}
