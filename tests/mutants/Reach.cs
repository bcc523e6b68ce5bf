using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;

namespace RuleBook.Mutants;

/// <summary>
/// Which classes of tests reach what, those first that reach the fewest files: they know most about theirs. Recorded by running every class
/// (some ten minutes), kept for the next runs in reach.txt file by file, with those that reach most of it. A record of some files keeps
/// what stands there of the others.
/// </summary>
internal sealed class Reach
{
    private const int ClassesOfFile = 32;
    private const double SecondsOfFile = 20;
    private const double Quick = 60;

    private readonly Dictionary<int, List<TestClass>> byMutant = [];
    private readonly Dictionary<string, IReadOnlyList<TestClass>> byFile = [];
    private readonly Dictionary<string, TestClass> recorded = [];
    private IReadOnlyList<TestClass> known = [];

    /// <summary>The classes to be run for a mutant; none where no test reaches it.</summary>
    public IReadOnlyList<TestClass> Of(Mutant mutant) =>
        byMutant.Count > 0
            ? byMutant.GetValueOrDefault(mutant.Number) ?? []
            : [.. (byFile.GetValueOrDefault(mutant.File) ?? []).UnionBy(known.Where(each => each.IsOf(mutant)), each => each.Name)];

    /// <summary>
    /// What was kept, and beside it the classes of the folder that is changed, but for slow ones: some may be newer than the record.
    /// </summary>
    public static async Task<Reach> ReadAsync(Copy copy, string path)
    {
        var lists = await Task.WhenAll(Copy.Tests.Select(test => TestRun.ClassesAsync(copy, test))).ConfigureAwait(false);
        var reach = Read(path);
        reach.known =
        [
            .. lists
                .SelectMany(each => each)
                .Select(each => reach.recorded.GetValueOrDefault(each.Name, each))
                .Where(each => each.Seconds <= SecondsOfFile || !reach.recorded.ContainsKey(each.Name)),
        ];
        return reach;
    }

    private static Reach Read(string path)
    {
        var reach = new Reach();
        var classes = new Dictionary<string, TestClass>();
        foreach (var words in File.ReadLines(path).Where(line => !line.StartsWith('#')).Select(line => line.Split(' ')))
            if (words[0].Contains('/', StringComparison.Ordinal))
                reach.byFile[words[0]] = [.. words.Skip(1).Select(key => classes[key])];
            else
                reach.recorded[words[2]] = classes[words[0]] = new(
                    words[1],
                    words[2],
                    double.Parse(words[3], CultureInfo.InvariantCulture)
                );
        return reach;
    }

    /// <summary>
    /// Runs every class without a mutant, each in a program of its own, so that it makes itself what others would have left to it; and
    /// again if it is quick, for its time where all is made. One that fails even so, or takes too long, is told and left out.
    /// </summary>
    public static async Task<Reach> RecordAsync(Copy copy, IEnumerable<string> projects, IReadOnlyList<Mutant> mutants, string path)
    {
        var files = mutants.ToDictionary(mutant => mutant.Number, mutant => mutant.File);
        var lists = await Task.WhenAll(projects.Select(test => TestRun.ClassesAsync(copy, test))).ConfigureAwait(false);
        var reached = new ConcurrentDictionary<TestClass, IReadOnlyCollection<int>>();
        await Parallel
            .ForEachAsync(
                lists.SelectMany(each => each),
                new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
                async (each, _) =>
                {
                    using var program = new StandingProgram(copy, each.Project);
                    var watch = Stopwatch.StartNew();
                    var (failed, numbers) = await program.RunAsync(each, mutant: 0).ConfigureAwait(false);
                    if (failed is null && watch.Elapsed.TotalSeconds < Quick)
                    {
                        watch.Restart();
                        failed = (await program.RunAsync(each, mutant: 0).ConfigureAwait(false)).Failed;
                    }

                    if (failed is not null)
                        Console.WriteLine($"left out, {each.Name} without a mutant: {failed}");
                    else
                        reached[each with { Seconds = Math.Round(watch.Elapsed.TotalSeconds, 2) }] = numbers;
                }
            )
            .ConfigureAwait(false);

        var reach = new Reach();
        foreach (var (each, numbers) in reached.OrderBy(pair => pair.Value.Select(number => files[number]).Distinct().Count()))
        foreach (var number in numbers)
            (reach.byMutant.TryGetValue(number, out var some) ? some : reach.byMutant[number] = []).Add(each);
        await File.WriteAllLinesAsync(path, reach.Kept(mutants, Read(path).byFile)).ConfigureAwait(false);
        return reach;
    }

    private IEnumerable<string> Kept(IReadOnlyList<Mutant> mutants, IReadOnlyDictionary<string, IReadOnlyList<TestClass>> before)
    {
        var now = mutants
            .GroupBy(mutant => mutant.File)
            .ToDictionary(
                file => file.Key,
                file =>
                    (IReadOnlyList<TestClass>)
                        Few([.. file.SelectMany(Of).GroupBy(each => each).OrderByDescending(each => each.Count()).Select(each => each.Key)])
            );
        var timed = now.Values.SelectMany(classes => classes).DistinctBy(each => each.Name).ToDictionary(each => each.Name);
        var files = before
            .Where(file => !now.ContainsKey(file.Key))
            .Concat(now)
            .Select(file => (file.Key, Classes: file.Value.Select(each => timed.GetValueOrDefault(each.Name, each)).ToArray()))
            .OrderBy(file => file.Key, StringComparer.Ordinal)
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

    /// <summary>As many as there is time for; the quickest where there is time for none.</summary>
    private static List<TestClass> Few(IReadOnlyCollection<TestClass> classes)
    {
        var (few, seconds) = (new List<TestClass>(), 0.0);
        foreach (var each in classes)
            if (few.Count < ClassesOfFile && seconds + each.Seconds <= SecondsOfFile)
            {
                few.Add(each);
                seconds += each.Seconds;
            }

        return few.Count > 0 ? few : [.. classes.OrderBy(each => each.Seconds).Take(1)];
    }
}
