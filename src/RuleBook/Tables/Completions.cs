using System.Collections.Immutable;

namespace RuleBook.Tables;

/// <summary>What each option of an opening would give.</summary>
/// <param name="Opening">What is not known.</param>
/// <param name="Gives">By option, in the order of the options.</param>
public sealed record Effect(Opening Opening, ImmutableArray<Outcome> Gives)
{
    /// <summary>What each option gives; neighbouring stretches of a measure that give the same are told as one.</summary>
    public IEnumerable<(string Label, Outcome Outcome)> Merged()
    {
        for (var i = 0; i < Gives.Length; i++)
        {
            var last = i;
            while (Opening.Options[i].Cell is not null && last + 1 < Gives.Length && Gives[last + 1] == Gives[i]) last++;
            yield return (last == i ? Opening.Options[i].Label : Opening.Options[i].Cell!.Through(Opening.Options[last].Cell!).Label, Gives[i]);
            i = last;
        }
    }
}

/// <summary>
/// Tries every completion of what is not known (supervaluation), so that a fact which cannot change the verdict is not asked for.
/// </summary>
internal static class Completions
{
    /// <summary>Beyond this many completions three-valued logic alone decides, which is never wrong, only wider.</summary>
    private const int Most = 50_000;

    /// <summary>The pathways possible, and the openings that can change them.</summary>
    public static (Outcome Outcome, ImmutableArray<Effect> Effects) Try(
        Situation situation, ImmutableArray<Opening> openings, Func<Situation, Outcome> judge)
    {
        while (openings.Length > 0 && openings.Aggregate(1L, (product, opening) => Math.Min(product * opening.Options.Length, long.MaxValue / 64)) > Most)
            openings = openings.RemoveAt(openings.Length - 1);

        var sizes = openings.Select(opening => opening.Options.Length).ToArray();
        var outcomes = new Outcome[sizes.Aggregate(1, (product, size) => product * size)];
        Fill(situation, openings, 0, 0, outcomes, judge);

        var all = outcomes.Aggregate((left, right) => left.Or(right));
        var effects = ImmutableArray.CreateBuilder<Effect>();
        for (var i = 0; i < openings.Length; i++)
        {
            var stride = sizes.Skip(i + 1).Aggregate(1, (product, size) => product * size);
            if (!Matters(outcomes, stride, sizes[i])) continue;
            effects.Add(new Effect(
                openings[i],
                [.. Enumerable.Range(0, sizes[i]).Select(option => Under(outcomes, stride, sizes[i], option))]));
        }

        return (all, effects.ToImmutable());
    }

    private static void Fill(
        Situation situation, ImmutableArray<Opening> openings, int depth, int offset, Outcome[] outcomes, Func<Situation, Outcome> judge)
    {
        if (depth == openings.Length)
        {
            outcomes[offset] = judge(situation);
            return;
        }

        for (var k = 0; k < openings[depth].Options.Length; k++)
            Fill(openings[depth].Options[k].Apply(situation), openings, depth + 1, offset * openings[depth].Options.Length + k, outcomes, judge);
    }

    private static Outcome Under(Outcome[] outcomes, int stride, int size, int option) => outcomes
        .Where((_, index) => index / stride % size == option)
        .Aggregate((left, right) => left.Or(right));

    private static bool Matters(Outcome[] outcomes, int stride, int size) => Enumerable
        .Range(0, outcomes.Length)
        .Any(index => index / stride % size > 0 && outcomes[index] != outcomes[index - stride]);
}
