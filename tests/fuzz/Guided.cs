using System.Text;
using SharpFuzz;

namespace RuleBook.Fuzz;

/// <summary>
/// One kind of input from a fuzzer outside, which sees by the instrumented assemblies what each input reaches: see
/// <c>tests/fuzz/guided</c>.
/// </summary>
internal static class Guided
{
    /// <summary>Reads inputs until the fuzzer ends; what is neither an answer nor an explained refusal is a crash to it.</summary>
    /// <param name="repository">The folder of the repository. Nothing of it is opened before the fuzzer listens.</param>
    /// <param name="kind">The kind of input.</param>
    public static void Run(string repository, string kind)
    {
        Target? target = null;
        Fuzzer.OutOfProcess.Run(input =>
        {
            target ??= Targets.Of(new Corpus(repository)).Single(each => each.Kind == kind);
            using var bytes = new MemoryStream();
            input.CopyTo(bytes);
            target.Outcome(Encoding.UTF8.GetString(bytes.ToArray()));
        });
    }

    /// <summary>Writes the seeds of a kind as files, each once.</summary>
    public static void Seeds(string repository, string kind, string folder)
    {
        var seeds = Targets.Of(new Corpus(repository)).Single(each => each.Kind == kind).Seeds;
        foreach (var (at, seed) in seeds.Distinct().Index())
            File.WriteAllText(Path.Combine(folder, $"{at}"), seed);
    }
}
