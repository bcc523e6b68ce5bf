using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.Walk;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Changes;

/// <summary>Points of one class of vehicles at which some rules of two books give the same two different things.</summary>
/// <param name="Words">One word of each class.</param>
/// <param name="Vehicles">All words of each class.</param>
/// <param name="Witnesses">The smallest first, then some from all over.</param>
internal sealed record CandidateGroup(
    ImmutableDictionary<string, string> Words, ImmutableSortedDictionary<string, ImmutableArray<string>> Vehicles, ImmutableArray<Witness> Witnesses);

/// <summary>Finds where some rules of two books differ, cell by cell.</summary>
internal static class Candidates
{
    private const int Smallest = 12;
    private const int Scattered = 12;

    public static ImmutableArray<CandidateGroup> Of(Vocabulary vocabulary, Topic topic, Slice before, Slice after)
    {
        ResolvedVersion[] versions = [.. before.Versions, .. after.Versions];
        var space = new Space(vocabulary, after.Jurisdiction, after.Day, [.. versions, .. Spoken(versions, before, after, topic, vocabulary)]);
        ImmutableArray<string?> conditions = [null, .. Alike(space.Conditions, versions)];
        var groups = ImmutableArray.CreateBuilder<CandidateGroup>();
        foreach (var words in space.Words)
        {
            var found = new Dictionary<(Answer Before, Answer After), List<Witness>>();
            foreach (var condition in conditions)
                foreach (var point in space.Points)
                {
                    var facts = space.Facts(words, point);
                    if (condition is not null) facts = Space.NotShown(facts, condition);
                    var pair = (Try(before, facts, topic, vocabulary), Try(after, facts, topic, vocabulary));
                    if (pair.Item1 == pair.Item2) continue;
                    if (!found.TryGetValue(pair, out var list)) found[pair] = list = [];
                    list.Add(space.Witness(words, point, condition is null ? [] : [condition]));
                }

            foreach (var list in found.Values) groups.Add(new CandidateGroup(words, Classes(words, versions, vocabulary), Picked(list)));
        }

        return groups.ToImmutable();
    }

    /// <summary>What some rules give, and which changed measures that ask for a rule of their own they leave without one.</summary>
    private static Answer Try(Slice slice, FactSet facts, Topic topic, Vocabulary vocabulary)
    {
        var unmet = Covering.Changed(topic, vocabulary, facts)
            .Where(measure => !slice.Rules.Any(candidates => candidates.Any(version => Covering.Speaks(version, measure.Name)) && candidates.Any(version => Judge.Binds(version, facts) == Truth.Yes)))
            .Select(measure => measure.Name);
        return new Answer(slice.Try(facts), string.Join(' ', unmet));
    }

    /// <summary>
    /// Points away from zero on measures that mean something else in the two vocabularies; whether an answer differs there is for the evaluator to say.
    /// </summary>
    public static ImmutableArray<CandidateGroup> OfMeasures(Vocabulary vocabulary, Slice slice, ImmutableArray<string> measures)
    {
        ResolvedVersion[] scopes = [.. slice.Rules.Select(candidates => candidates[0] with { Content = new NotRegulated("") })];
        if (scopes.Length == 0) return [];
        var known = measures.Where(vocabulary.Measures.ContainsKey).ToArray();
        var space = new Space(vocabulary, slice.Jurisdiction, slice.Day, [.. scopes, .. known.Select(name => AtZero(scopes[0], name))]);
        var points = space.Points.Where(point => point.Where((value, axis) => !value.IsZero && known.Contains(space.Axes.Measures[axis].Name)).Any()).ToArray();
        return points.Length == 0 ? [] : [.. space.Words.Select(words => new CandidateGroup(words, Classes(words, scopes, vocabulary), Picked([.. points.Select(point => space.Witness(words, point))])))];
    }

    /// <summary>An edge at zero for each measure of which only one of the books speaks, so that a point away from zero is tried.</summary>
    private static IEnumerable<ResolvedVersion> Spoken(ResolvedVersion[] versions, Slice before, Slice after, Topic topic, Vocabulary vocabulary) => topic.TouchedBy
        .Where(name => vocabulary.Measures.TryGetValue(name, out var measure) && measure.NeedsOwnRule
            && before.Versions.Any(version => Covering.Speaks(version, name)) != after.Versions.Any(version => Covering.Speaks(version, name)))
        .Select(name => AtZero(versions[0], name));

    private static ResolvedVersion AtZero(ResolvedVersion version, string measure)
    {
        var limit = new Limit(measure, LimitKind.Bounded, new Bounds(null, new Bound(Fraction.Zero, true)), default);
        return version with { Content = new Stated([new Tier("", Pathway.NoCertificate, Predicate.Always, [limit], [], [], [], null, default)], null) };
    }

    /// <summary>One of all conditions that are attached to the same tiers.</summary>
    private static IEnumerable<string> Alike(ImmutableArray<string> conditions, ResolvedVersion[] versions)
    {
        var tiers = versions.SelectMany(version => version.Content is Stated stated ? stated.Tiers : []).ToArray();
        return conditions.DistinctBy(condition => string.Concat(tiers.Select(tier => tier.Provided.Contains(condition) ? 'y' : 'n')));
    }

    private static ImmutableArray<Witness> Picked(List<Witness> all)
    {
        Witness[] sorted = [.. all.OrderBy(witness => witness.Weight)];
        var step = Math.Max(1, (sorted.Length - Smallest) / Scattered);
        return [.. sorted.Where((_, i) => i < Smallest || (i - Smallest) % step == step - 1)];
    }

    private static ImmutableSortedDictionary<string, ImmutableArray<string>> Classes(
        ImmutableDictionary<string, string> words, ResolvedVersion[] versions, Vocabulary vocabulary)
    {
        var tests = WordClasses.Tests(versions).ToLookup(test => test.Fact);
        return words.ToImmutableSortedDictionary(
            pair => pair.Key,
            pair => WordClasses.Classes(vocabulary.Facts[pair.Key], [.. tests[pair.Key]]).First(each => each[0] == pair.Value).ToImmutableArray(),
            StringComparer.Ordinal);
    }

    private readonly record struct Answer(Outcome? Outcome, string Unmet);
}
