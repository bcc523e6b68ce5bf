namespace RuleBook.Mutants;

/// <summary>How a mutant fared.</summary>
internal enum Fate
{
    Noticed,
    Lived,
    NotReached,
}

/// <summary>Runs the tests that reach a mutant until one notices it: fails with it and, right after, not without it.</summary>
internal sealed class Trial(Copy copy, StandingPrograms standing, Reach reach)
{
    /// <summary>
    /// Class by class in programs that stand. What they pass only once, when a book is read or a table made, is tried in a process of its own.
    /// </summary>
    public async Task<Fate> OfAsync(Mutant mutant)
    {
        var classes = reach.Of(mutant);
        var passed = false;
        var programs = standing.Taken();
        try
        {
            foreach (var each in classes.OrderBy(each => each.Seconds))
            {
                var program = programs[each.Project];
                var (failed, reached) = await program.RunAsync(each, mutant.Number).ConfigureAwait(false);
                if (failed is not null && await HoldsWithoutAsync(program, each, mutant.Number).ConfigureAwait(false))
                    return Fate.Noticed;
                passed |= reached.Contains(mutant.Number);
            }
        }
        finally
        {
            standing.Return(programs);
        }

        foreach (var project in passed ? [] : classes.GroupBy(each => each.Project))
        {
            var (failed, by) = await TestRun.OfAsync(copy, [.. project], mutant.Number).ConfigureAwait(false);
            IReadOnlyList<TestClass> blamed = by.Count > 0 ? by : [.. project];
            if (failed && !(await TestRun.OfAsync(copy, blamed, mutant: 0).ConfigureAwait(false)).Failed)
                return Fate.Noticed;
        }

        return passed ? Fate.Lived : Fate.NotReached;
    }

    /// <summary>Where a class fails without the mutant too, the program keeps what another one left in it: it starts anew.</summary>
    private static async Task<bool> HoldsWithoutAsync(StandingProgram program, TestClass each, int mutant)
    {
        if (!await FailsAsync(0).ConfigureAwait(false))
            return true;
        program.Dispose();
        return await FailsAsync(mutant).ConfigureAwait(false) && !await FailsAsync(0).ConfigureAwait(false);

        async Task<bool> FailsAsync(int acting) => (await program.RunAsync(each, acting).ConfigureAwait(false)).Failed is not null;
    }
}
