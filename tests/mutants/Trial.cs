using System.Collections.Concurrent;

namespace RuleBook.Mutants;

/// <summary>How a mutant fared.</summary>
internal enum Fate
{
    Noticed,
    Lived,
    NotReached,
}

/// <summary>Runs the tests that reach a mutant until one notices it.</summary>
internal sealed class Trial(Copy copy, Reach reach)
{
    private const int ClassesOfProcess = 8;
    private readonly ConcurrentDictionary<TestClass, Lazy<Task<bool>>> sound = new();

    /// <summary>Tries one.</summary>
    public async Task<Fate> OfAsync(Mutant mutant)
    {
        var classes = reach.Of(mutant);
        foreach (var several in classes.GroupBy(each => each.Project).SelectMany(project => project.Chunk(ClassesOfProcess)))
        {
            var run = await TestRun.OfAsync(copy, several, mutant.Number).ConfigureAwait(false);
            if (run.Failed && (run.By.Count == 0 || await IsSoundAsync(run.By[0]).ConfigureAwait(false)))
                return Fate.Noticed;
        }

        return classes.Count == 0 ? Fate.NotReached : Fate.Lived;
    }

    /// <summary>A class notices nothing that fails without a mutant too.</summary>
    private Task<bool> IsSoundAsync(TestClass each) =>
        sound.GetOrAdd(each, _ => new(async () => !(await TestRun.OfAsync(copy, [each], mutant: 0).ConfigureAwait(false)).Failed)).Value;
}
