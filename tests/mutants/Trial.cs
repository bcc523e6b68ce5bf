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
    /// <summary>So many classes are tried in a program that starts with the mutant: those that know most about its file.</summary>
    private const int Anew = 6;

    /// <summary>
    /// Class by class in programs that stand, the quick ones first. Where none passes the mutant there, what they once made may have passed
    /// it, a page or a book, and was kept: a few are tried in a program that starts with it.
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

        if (passed)
            return Fate.Lived;
        foreach (var project in classes.Take(Anew).GroupBy(each => each.Project))
        {
            using var anew = new StandingProgram(copy, project.Key);
            foreach (var each in project)
            {
                var (failed, reached) = await anew.RunAsync(each, mutant.Number).ConfigureAwait(false);
                using var without = new StandingProgram(copy, project.Key);
                if (failed is not null && (await without.RunAsync(each, mutant: 0).ConfigureAwait(false)).Failed is null)
                    return Fate.Noticed;
                passed |= reached.Contains(mutant.Number);
            }
        }

        return passed ? Fate.Lived : Fate.NotReached;
    }

    /// <summary>
    /// Where a class fails without the mutant too, the program keeps what this or another one left in it: it starts anew.
    /// </summary>
    private static async Task<bool> HoldsWithoutAsync(StandingProgram program, TestClass each, int mutant)
    {
        if (!await FailsAsync(0).ConfigureAwait(false))
            return true;
        program.Dispose();
        if (!await FailsAsync(mutant).ConfigureAwait(false))
            return false;
        program.Dispose();
        return !await FailsAsync(0).ConfigureAwait(false);

        async Task<bool> FailsAsync(int acting) => (await program.RunAsync(each, acting).ConfigureAwait(false)).Failed is not null;
    }
}
