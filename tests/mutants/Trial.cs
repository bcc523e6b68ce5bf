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
    /// <summary>Class by class in programs that stand; then in a process of its own, for what a program does only once.</summary>
    public async Task<Fate> OfAsync(Mutant mutant)
    {
        var classes = reach.Of(mutant);
        var programs = standing.Taken();
        try
        {
            foreach (var each in classes.OrderBy(each => each.Seconds))
                if (await NoticesAsync(programs[each.Project], each, mutant.Number).ConfigureAwait(false))
                    return Fate.Noticed;
        }
        finally
        {
            standing.Return(programs);
        }

        foreach (var project in classes.GroupBy(each => each.Project))
        {
            var (failed, by) = await TestRun.OfAsync(copy, [.. project], mutant.Number).ConfigureAwait(false);
            IReadOnlyList<TestClass> blamed = by.Count > 0 ? by : [.. project];
            if (failed && !(await TestRun.OfAsync(copy, blamed, mutant: 0).ConfigureAwait(false)).Failed)
                return Fate.Noticed;
        }

        return classes.Count == 0 ? Fate.NotReached : Fate.Lived;
    }

    /// <summary>A program in which the class fails without the mutant too keeps what another mutant left in it: it starts anew.</summary>
    private static async Task<bool> NoticesAsync(StandingProgram program, TestClass each, int mutant)
    {
        if (!await FailsAsync(mutant).ConfigureAwait(false))
            return false;
        if (!await FailsAsync(0).ConfigureAwait(false))
            return true;
        program.Dispose();
        return await FailsAsync(mutant).ConfigureAwait(false) && !await FailsAsync(0).ConfigureAwait(false);

        async Task<bool> FailsAsync(int acting) => (await program.RunAsync(each, acting).ConfigureAwait(false)).Failed is not null;
    }
}
