using System.Diagnostics;
using System.Globalization;

namespace RuleBook.Mutants;

/// <summary>
/// Which classes of tests reach what, those first that reach the fewest files: they know most about theirs. Recorded by running every class by
/// itself (some ten minutes), kept for the next runs in reach.txt file by file, with a few quick classes each.
/// </summary>
internal sealed class Reach
{
    private const int ClassesOfFile = 16;
    private const double SecondsOfFile = 12;

    private readonly Dictionary<int, List<TestClass>> byMutant = [];
    private readonly Dictionary<string, IReadOnlyList<TestClass>> byFile = [];

    /// <summary>The classes to be run for a mutant; none where no test reaches it.</summary>
    public IReadOnlyList<TestClass> Of(Mutant mutant) =>
        byMutant.Count > 0 ? byMutant.GetValueOrDefault(mutant.Number) ?? [] : byFile.GetValueOrDefault(mutant.File) ?? [];

    /// <summary>What was kept.</summary>
    public static Reach Read(string path)
    {
        var reach = new Reach();
        var classes = new Dictionary<string, TestClass>();
        foreach (var words in File.ReadLines(path).Where(line => !line.StartsWith('#')).Select(line => line.Split(' ')))
            if (words[0].Contains('/', StringComparison.Ordinal))
                reach.byFile[words[0]] = [.. words.Skip(1).Select(key => classes[key])];
            else
                classes[words[0]] = new(words[1], words[2], double.Parse(words[3], CultureInfo.InvariantCulture));
        return reach;
    }

    /// <summary>Runs every class without a mutant; one that fails even so, or takes too long, is told and left out.</summary>
    public static async Task<Reach> RecordAsync(Copy copy, IReadOnlyList<Mutant> mutants, string path)
    {
        var files = mutants.ToDictionary(mutant => mutant.Number, mutant => mutant.File);
        var lists = await Task.WhenAll(Copy.Tests.Select(test => TestRun.ClassesAsync(copy, test))).ConfigureAwait(false);
        var reached = new Dictionary<TestClass, int[]>();
        await Parallel
            .ForEachAsync(
                lists.SelectMany(each => each),
                new ParallelOptions { MaxDegreeOfParallelism = 2 * Environment.ProcessorCount },
                async (each, _) =>
                {
                    var written = Path.GetTempFileName();
                    var watch = Stopwatch.StartNew();
                    var run = await TestRun.OfAsync(copy, [each], mutant: 0, written).ConfigureAwait(false);
                    int[] numbers = [.. File.ReadLines(written).Select(line => int.Parse(line, CultureInfo.InvariantCulture))];
                    File.Delete(written);
                    if (run.Failed)
                        Console.WriteLine($"left out, fails or takes too long without a mutant: {each.Name}");
                    else
                        lock (reached)
                            reached.Add(each with { Seconds = Math.Round(watch.Elapsed.TotalSeconds, 1) }, numbers);
                }
            )
            .ConfigureAwait(false);

        var reach = new Reach();
        foreach (var (each, numbers) in reached.OrderBy(pair => pair.Value.Select(number => files[number]).Distinct().Count()))
        foreach (var number in numbers)
            (reach.byMutant.TryGetValue(number, out var some) ? some : reach.byMutant[number] = []).Add(each);
        await File.WriteAllLinesAsync(path, reach.Kept(mutants)).ConfigureAwait(false);
        return reach;
    }

    private IEnumerable<string> Kept(IReadOnlyList<Mutant> mutants)
    {
        var files = mutants
            .GroupBy(mutant => mutant.File)
            .OrderBy(file => file.Key, StringComparer.Ordinal)
            .Select(file =>
                (
                    file.Key,
                    Classes: Few(file.SelectMany(Of).GroupBy(each => each).OrderByDescending(each => each.Count()).Select(each => each.Key))
                        .ToArray()
                )
            )
            .ToArray();
        var keys = files
            .SelectMany(file => file.Classes)
            .Distinct()
            .OrderBy(each => each.Name, StringComparer.Ordinal)
            .Select((each, at) => (each, at + 1))
            .ToDictionary();
        return
        [
            "# Which classes of tests reach which file, written by 'dotnet run --project tests/mutants -- --record'.",
            .. keys.Select(pair =>
                string.Create(CultureInfo.InvariantCulture, $"{pair.Value} {pair.Key.Project} {pair.Key.Name} {pair.Key.Seconds}")
            ),
            .. files.Select(file => string.Join(' ', [file.Key, .. file.Classes.Select(each => $"{keys[each]}")])),
        ];
    }

    /// <summary>As many as there is time for, one at least.</summary>
    private static IEnumerable<TestClass> Few(IEnumerable<TestClass> classes)
    {
        var (count, seconds) = (0, 0.0);
        foreach (var each in classes)
            if (count == 0 || count < ClassesOfFile && seconds + each.Seconds <= SecondsOfFile)
            {
                (count, seconds) = (count + 1, seconds + each.Seconds);
                yield return each;
            }
    }
}
