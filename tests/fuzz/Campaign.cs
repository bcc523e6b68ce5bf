using System.Diagnostics;

namespace RuleBook.Fuzz;

/// <summary>One run over all targets.</summary>
internal sealed class Campaign(Corpus corpus, Target[] targets, int seed)
{
    private const int MostFindings = 20;

    /// <summary>Of one kind: five million characters are 10 MB.</summary>
    private const int MostCharacters = 5_000_000;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    private readonly Mutation mutation = new(new Random(seed));
    private readonly Dictionary<string, List<string>> seeds = targets.ToDictionary(
        target => target.Kind,
        target => (List<string>)[.. target.Seeds, .. corpus.Kept(target.Kind)]
    );
    private readonly Dictionary<string, long> characters = targets.ToDictionary(
        target => target.Kind,
        target => target.Seeds.Concat(corpus.Kept(target.Kind)).Sum(input => (long)input.Length)
    );
    private readonly Dictionary<string, HashSet<int>> known = targets.ToDictionary(target => target.Kind, _ => new HashSet<int>());
    private readonly Dictionary<string, Tally> tallies = targets.ToDictionary(target => target.Kind, target => new Tally(target.Kind));

    public int Findings { get; private set; }

    /// <summary>Every input that is kept, once.</summary>
    public void Kept()
    {
        foreach (var target in targets)
        foreach (var input in seeds[target.Kind].ToArray())
            Try(target, input);
    }

    public void Run(TimeSpan time)
    {
        var clock = Stopwatch.StartNew();
        var wheel = targets.SelectMany(target => Enumerable.Repeat(target, target.Share)).ToArray();
        // Each share is a tenth of a second, so that slow kinds do not starve for fast ones, nor the other way round.
        for (var turn = 0; clock.Elapsed < time && Findings < MostFindings; turn++)
        {
            var target = wheel[turn % wheel.Length];
            for (var end = clock.Elapsed + TimeSpan.FromSeconds(0.1); clock.Elapsed < end && clock.Elapsed < time; )
            {
                var from = seeds[target.Kind][mutation.Next(seeds[target.Kind].Count)];
                Try(target, target.Mutate(mutation, from));
            }
        }
    }

    /// <summary>What was tried of each kind.</summary>
    public IEnumerable<Tally> Tallies => targets.Select(target => tallies[target.Kind] with { Outcomes = known[target.Kind].Count });

    private void Try(Target target, string input)
    {
        var tally = tallies[target.Kind] = tallies[target.Kind].OneMore();
        using var watch = new Timer(_ => Hung(target, input), null, TimeSpan.FromSeconds(120), Timeout.InfiniteTimeSpan);
        try
        {
            var before = Environment.CpuUsage.TotalTime;
            var outcome = target.Outcome(input);
            var took = Environment.CpuUsage.TotalTime - before;
            tallies[target.Kind] = tally.Took(took);
            if (took > Longest)
                Found(target, input, $"took {took.TotalSeconds:0.0} s");
            if (known[target.Kind].Add(Target.Signature(outcome)) && input.Length < 100_000)
                Keep(target.Kind, input);
            else if (tally.Inputs % 8 != 0)
                return;
            if (target.Outcome(input) != outcome)
                Found(target, input, "two runs gave two outcomes");
        }
        catch (Exception fault)
        {
            Found(target, input, fault.ToString());
        }
    }

    /// <summary>Adds an input to start from; of many, some that are there make room, so that a long run stays within its memory.</summary>
    private void Keep(string kind, string input)
    {
        var kept = seeds[kind];
        kept.Add(input);
        characters[kind] += input.Length;
        while (characters[kind] > MostCharacters && kept.Count > 1)
        {
            var one = mutation.Next(kept.Count);
            characters[kind] -= kept[one].Length;
            (kept[one], kept[^1]) = (kept[^1], kept[one]);
            kept.RemoveAt(kept.Count - 1);
        }
    }

    private void Found(Target target, string input, string what)
    {
        Findings++;
        Console.WriteLine($"FOUND {target.Kind}: {corpus.Keep(target.Kind, input)}\n{what}\n");
    }

    private void Hung(Target target, string input)
    {
        Found(target, input, "did not end within two minutes");
        Console.Write(Tally.Table(Tallies, Findings));
        Environment.Exit(1);
    }
}
