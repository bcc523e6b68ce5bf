// dotnet run -c Release --project tests/mutants -- [SECONDS] [--sample N] [--seed N] [--only PATH] [--record]
//
// Changes the code in small ways, each behind a switch of one build, and asks whether a test notices. A random sample (200; --sample),
// drawn in equal parts from telling, authoring, site and command, is tried for SECONDS at most; what lived is told, and how many of each
// folder were noticed. --only narrows it to files whose path begins so. --record runs every class of tests first to see what it reaches;
// without it the few that reach.txt names for a file are run, and those of its folder. Needs the tests built. It informs: the exit code is
// 0 whatever lives.
using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using RuleBook.Mutants;

(string Project, string Under)[] targets =
[
    ("src/RuleBook", "src/RuleBook/Telling/"),
    ("src/RuleBook.Authoring", "src/RuleBook.Authoring/"),
    ("src/RuleBook.Site", "src/RuleBook.Site/"),
    ("src/RuleBook.Cli", "src/RuleBook.Cli/"),
];
int Number(string word, int otherwise) =>
    Array.IndexOf(args, word) is var at and >= 0 ? int.Parse(args[at + 1], CultureInfo.InvariantCulture) : otherwise;
var seconds = args.Length > 0 && int.TryParse(args[0], NumberStyles.None, CultureInfo.InvariantCulture, out var given) ? given : 86400;
var (size, seed) = (Number("--sample", 200), Number("--seed", Environment.TickCount));
var only = Array.IndexOf(args, "--only") is var chosen and >= 0 ? args[chosen + 1] : "";
var record = args.Contains("--record");
var watch = Stopwatch.StartNew();

var root = new DirectoryInfo(AppContext.BaseDirectory);
while (!File.Exists(Path.Combine(root.FullName, "RuleBook.sln")))
    root = root.Parent!;
var table = Path.Combine(root.FullName, "tests", "mutants", "reach.txt");

var projects = new List<MutatedProject>();
foreach (
    var (project, under) in targets.Where(each =>
        each.Under.StartsWith(only, StringComparison.Ordinal) || only.StartsWith(each.Under, StringComparison.Ordinal)
    )
)
    projects.Add(new(root.FullName, project, under, projects.Sum(each => each.Possible.Count) + 1));

var random = new Random(seed);
Mutant[] Drawn(IEnumerable<Mutant> from, int count)
{
    Mutant[] all = [.. from.Where(mutant => mutant.File.StartsWith(only, StringComparison.Ordinal))];
    random.Shuffle(all);
    return [.. all.Take(count)];
}

// What a file is reached by shows on some of its places, and the compiler has long to do with all of them.
const int RecordedOneIn = 3;

// Some of those drawn the compiler refuses: a fifth more is drawn for them.
var parts = projects.Count(project => Drawn(project.Possible, 1).Length > 0);
var wanted = projects.SelectMany(project => Drawn(project.Possible, size * 6 / 5 / parts)).Select(mutant => mutant.Number).ToHashSet();
using var copy = new Copy(root.FullName);
var built = new List<Mutant>();
foreach (var project in projects)
    copy.Put(
        $"{project.Name}.dll",
        assembly => built.AddRange(project.Write(assembly, number => wanted.Contains(number) || record && number % RecordedOneIn == 0))
    );
using var standing = new StandingPrograms(copy);
var reach = record
    ? await Reach.RecordAsync(copy, copy.TestsOf(projects.Select(each => $"{each.Name}.dll")), built, table).ConfigureAwait(false)
    : await Reach.ReadAsync(copy, table).ConfigureAwait(false);
var sample = Drawn(built.Where(mutant => wanted.Contains(mutant.Number)), size);
Console.WriteLine(
    $"seed {seed}: {sample.Length} mutants of {projects.Sum(project => project.Possible.Count)} (at {watch.Elapsed.TotalSeconds:0} s)"
);

var trial = new Trial(copy, standing, reach);
var tried = new ConcurrentBag<(Mutant Mutant, Fate Fate)>();
await Parallel
    .ForEachAsync(
        sample,
        new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount },
        async (mutant, _) =>
        {
            if (watch.Elapsed.TotalSeconds >= seconds)
                return;
            var fate = await trial.OfAsync(mutant).ConfigureAwait(false);
            tried.Add((mutant, fate));
            if (fate != Fate.Noticed)
                Console.WriteLine($"{(fate == Fate.Lived ? "lived      " : "not reached")} {mutant}");
        }
    )
    .ConfigureAwait(false);

Console.WriteLine("| folder | tried | noticed |\n| --- | ---: | ---: |");
foreach (var folder in tried.GroupBy(each => each.Mutant.Folder).OrderBy(folder => folder.Key, StringComparer.Ordinal))
    Console.WriteLine(Row(folder.Key, [.. folder]));
foreach (var (_, under) in targets)
    if (tried.Where(each => each.Mutant.File.StartsWith(under, StringComparison.Ordinal)).ToArray() is { Length: > 0 } target)
        Console.WriteLine(Row($"all of {under}", target));
Console.WriteLine($"{tried.Count} of {sample.Length} tried in {watch.Elapsed.TotalSeconds:0} s");

static string Row(string name, IReadOnlyCollection<(Mutant Mutant, Fate Fate)> tried)
{
    var noticed = tried.Count(each => each.Fate == Fate.Noticed);
    return string.Create(CultureInfo.InvariantCulture, $"| {name} | {tried.Count} | {noticed} ({100.0 * noticed / tried.Count:0} %) |");
}
