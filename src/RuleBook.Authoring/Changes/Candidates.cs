using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.Walk;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>Points of one class of vehicles at which some rules of two books give the same two different things.</summary>
/// <param name="Words">One word of each class.</param>
/// <param name="Vehicles">All words of each class.</param>
/// <param name="Witnesses">The smallest first, then some from all over.</param>
/// <param name="Furthest">The largest of those in round figures at which every condition can be met.</param>
internal sealed record CandidateGroup(
    ImmutableDictionary<string, string> Words,
    ImmutableSortedDictionary<string, ImmutableArray<string>> Vehicles,
    ImmutableArray<Witness> Witnesses,
    Witness? Furthest);

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
        FactSet[] measured = [.. space.Points.Select(point => Summed(space.Facts(ImmutableDictionary<string, string>.Empty, point), versions))];
        var alone = space.Axes.Measures.Any(measure => measure.NeedsOwnRule && topic.TouchedBy.Contains(measure.Name));
        return [.. space.Words.Where(Binding).AsParallel().AsOrdered().SelectMany(Of)];

        bool Binding(ImmutableDictionary<string, string> words) =>
            versions.Any(version => Judge.Binds(version, FactSet.Nothing with { Words = words }) != Truth.No);

        IEnumerable<CandidateGroup> Of(ImmutableDictionary<string, string> words)
        {
            var found = new Dictionary<(Answer Before, Answer After), List<Witness>>();
            foreach (var condition in conditions)
                for (var i = 0; i < measured.Length; i++)
                {
                    var facts = measured[i] with { Words = words };
                    if (condition is not null) facts = Space.NotShown(facts, condition);
                    var pair = (Try(before, facts), Try(after, facts));
                    if (pair.Item1 == pair.Item2) continue;
                    if (!found.TryGetValue(pair, out var list)) found[pair] = list = [];
                    list.Add(space.Witness(words, space.Points[i], condition is null ? [] : [condition]));
                }

            return found.Values.Select(list => new CandidateGroup(words, Classes(words, versions, vocabulary), Picked(list), Furthest(list)));
        }

        Answer Try(Slice slice, FactSet facts) => new(slice.Try(facts), alone ? Unmet(slice, facts, topic, vocabulary) : "");
    }

    /// <summary>With the sums worked out once for all vehicles and conditions, where all versions count the same parts.</summary>
    private static FactSet Summed(FactSet facts, ResolvedVersion[] versions)
    {
        if (versions.Length == 0 || versions.Any(version => !version.Parts.SequenceEqual(versions[0].Parts))) return facts;
        foreach (var name in (string[])[FactSet.TyreLift, FactSet.TotalLift])
            if (facts.Measure(name, versions[0].Parts).Exact is { } sum) facts = facts.With(name, sum, "");
        return facts;
    }

    /// <summary>The changed measures that ask for a rule of their own and that no rule which binds speaks of.</summary>
    private static string Unmet(Slice slice, FactSet facts, Topic topic, Vocabulary vocabulary) => string.Join(' ', Covering.Changed(topic, vocabulary, facts)
        .Select(measure => measure.Name)
        .Where(name => !slice.Rules.Any(candidates =>
            candidates.Any(version => Covering.Speaks(version, name)) && candidates.Any(version => Judge.Binds(version, facts) == Truth.Yes))));

    /// <summary>
    /// Points away from zero on measures that mean something else in the two vocabularies; whether an answer differs there is for the evaluator to say.
    /// </summary>
    public static ImmutableArray<CandidateGroup> OfMeasures(Vocabulary vocabulary, Slice slice, ImmutableArray<string> measures)
    {
        ResolvedVersion[] scopes = [.. slice.Rules.Select(candidates => candidates[0] with { Content = new NotRegulated("") })];
        if (scopes.Length == 0) return [];
        var known = measures.Where(vocabulary.Measures.ContainsKey).ToArray();
        var space = new Space(vocabulary, slice.Jurisdiction, slice.Day, [.. scopes, .. known.Select(name => AtZero(scopes[0], name))]);
        var points = space.Points.Where(Away).ToArray();
        return points.Length == 0 ? [] : [.. space.Words.Select(Group)];

        bool Away(Fraction[] point) => point.Where((value, axis) => !value.IsZero && known.Contains(space.Axes.Measures[axis].Name)).Any();

        CandidateGroup Group(ImmutableDictionary<string, string> words) =>
            new(words, Classes(words, scopes, vocabulary), Picked([.. points.Select(point => space.Witness(words, point))]), null);
    }

    /// <summary>An edge at zero for each measure of which only one of the books speaks, so that a point away from zero is tried.</summary>
    private static IEnumerable<ResolvedVersion> Spoken(
        ResolvedVersion[] versions, Slice before, Slice after, Topic topic, Vocabulary vocabulary) => topic.TouchedBy
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

    private static Witness? Furthest(List<Witness> all) => all
        .Where(witness => witness.NotShown.IsEmpty && witness.Weight.Uneven == 0 && witness.Measures.All(pair => !pair.Value.IsNegative))
        .MaxBy(witness => witness.Weight.Size);

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
