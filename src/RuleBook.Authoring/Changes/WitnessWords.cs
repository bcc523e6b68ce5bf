using RuleBook.Authoring.Resolved;
using RuleBook.Authoring.Walk;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>What a witness changes on the vehicle, in words.</summary>
internal static class WitnessWords
{
    public static string Of(Witness witness, Vocabulary vocabulary)
    {
        var parts = witness
            .Measures.Where(pair => pair.Key.IfAbsent != pair.Value)
            .Select(pair => $"{pair.Key.Title} {LimitWords.Of(new Bound(pair.Value, true), pair.Key)}")
            .Concat(witness.NotShown.Select(condition => $"not met: {vocabulary.Conditions[condition].Title}"))
            .ToArray();
        return parts.Length == 0 ? "nothing changed on the vehicle" : string.Join(", ", parts);
    }
}
