using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>Puts classes of vehicles together that are told the same.</summary>
internal static class Vehicles
{
    /// <summary>Two that differ in the words of one fact become one, until none do.</summary>
    public static ImmutableArray<AnswerChange> Joined(IEnumerable<AnswerChange> changes, Vocabulary vocabulary)
    {
        var left = changes.ToList();
        for (var i = 0; i < left.Count; i++)
        for (var j = i + 1; j < left.Count; j++)
            if (SameButVehicles(left[i], left[j]) && Union(left[i].Vehicles, left[j].Vehicles, vocabulary) is { } union)
            {
                left[i] = left[i] with { Vehicles = union };
                left.RemoveAt(j);
                (i, j) = (-1, left.Count);
            }

        return [.. left.Select(change => change with { Vehicles = [.. change.Vehicles.Where(Tells)] })];

        bool Tells(VehicleWord word) => word.Words.Length < vocabulary.Facts[word.Fact].Values.Length;
    }

    private static bool SameButVehicles(AnswerChange left, AnswerChange right) =>
        left.Before == right.Before
        && left.After == right.After
        && left.From == right.From
        && left.Until == right.Until
        && left.Rule == right.Rule
        && left.Witness.Says == right.Witness.Says
        && left.Furthest?.Says == right.Furthest?.Says;

    private static ImmutableArray<VehicleWord>? Union(
        ImmutableArray<VehicleWord> left,
        ImmutableArray<VehicleWord> right,
        Vocabulary vocabulary
    )
    {
        if (!left.Select(word => word.Fact).SequenceEqual(right.Select(word => word.Fact)))
            return null;
        var apart = Enumerable.Range(0, left.Length).Where(i => !left[i].Words.SequenceEqual(right[i].Words)).ToArray();
        if (apart is not [var at])
            return null;
        var words = vocabulary.Facts[left[at].Fact].Values.Where(word => left[at].Words.Contains(word) || right[at].Words.Contains(word));
        return left.SetItem(at, left[at] with { Words = [.. words] });
    }
}
