using System.Collections.Immutable;

namespace RuleBook.Tables;

/// <summary>One thing that is not known and could change the verdict: a fact, a measure or which version is in force.</summary>
/// <param name="Name">The job's path of the fact, or the rule's id.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Options">What it can be.</param>
public sealed record Opening(string Name, OpeningKind Kind, ImmutableArray<Option> Options);

/// <summary>What kind of thing is not known.</summary>
public enum OpeningKind
{
    /// <summary>A word about the vehicle or job.</summary>
    Word,

    /// <summary>A measure.</summary>
    Measure,

    /// <summary>Which version of a rule is in force.</summary>
    Version,
}

/// <summary>One thing that an opening can be.</summary>
/// <param name="Word">The word or the version, for a reader; empty for a measure.</param>
/// <param name="Cell">The stretch of a measure for which the option stands; null for a word or a version.</param>
public sealed record Option(string Word, Cell? Cell)
{
    /// <summary>For a reader.</summary>
    public string Label => Cell is null ? Word : LabelOf(Cell);

    /// <summary>A stretch of a share says of what, since what is asked for is one of its two measures.</summary>
    internal static string LabelOf(Cell cell) => cell.Measure.Share is null ? cell.Label : $"{cell.Measure.Title} {cell.Label}";
}

/// <summary>What each option of an opening would give.</summary>
/// <param name="Opening">What is not known.</param>
/// <param name="Gives">By option, in the order of the options.</param>
public sealed record Effect(Opening Opening, ImmutableArray<Outcome> Gives)
{
    /// <summary>Whether one of the options gives something else than another; if none does, it decides only together with others.</summary>
    public bool DecidesAlone => Gives.Any(outcome => outcome != Gives[0]);

    /// <summary>What each option gives; neighbouring stretches of a measure that give the same are told as one.</summary>
    public IEnumerable<(string Label, Outcome Outcome)> Merged()
    {
        for (var i = 0; i < Gives.Length; i++)
        {
            var last = i;
            while (Opening.Options[i].Cell is not null && last + 1 < Gives.Length && Gives[last + 1] == Gives[i])
                last++;
            yield return (
                last == i ? Opening.Options[i].Label : Option.LabelOf(Opening.Options[i].Cell!.Through(Opening.Options[last].Cell!)),
                Gives[i]
            );
            i = last;
        }
    }
}
