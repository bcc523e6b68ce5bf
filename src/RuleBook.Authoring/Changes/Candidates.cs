using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.AllCores;
using RuleBook.Authoring.Walk;
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
    Witness? Furthest
);

/// <summary>Finds where some rules of two books differ, cell by cell.</summary>
internal static class Candidates
{
    private const int Smallest = 12;
    private const int Scattered = 12;

    public static ImmutableArray<CandidateGroup> Of(Vocabulary vocabulary, Topic topic, Slice before, Slice after)
    {
        ResolvedVersion[] versions = [.. before.Versions, .. after.Versions];
        var space = new Space(
            vocabulary,
            after.Jurisdiction,
            after.Day,
            [.. versions, .. Spoken(versions, before, after, topic, vocabulary), .. Unmeasured(versions, topic, vocabulary)]
        );
        ImmutableArray<string?> conditions = [null, .. Alike(space.Conditions, versions)];
        var own = vocabulary
            .Naming(topic.Name)
            .Where(measure => measure.NeedsOwnRule && space.Axes.Measures.Contains(measure))
            .ToImmutableArray();
        var moving = Moving.Of(vocabulary, topic.OfUse).Where(each => own.Contains(each.Measure)).ToImmutableArray();
        var table = TableBuilder.Build(vocabulary, [.. before.Rules.Concat(after.Rules).Select(rule => RuleInForce.Of(rule))], moving);
        var cells = DifferingCells.Between(table, table.Rules[..before.Rules.Length], table.Rules[before.Rules.Length..]);
        var alike = space.Alike();
        var found = InOrder.Each(space.Words, Of).SelectMany(each => each).ToArray();
        var (weights, ranks) = Weighed(space, found.SelectMany(each => each.At));
        return [.. found.Select(Group)];

        CandidateGroup Group((ImmutableDictionary<string, string> Words, List<Differing> At) differing) =>
            new(
                differing.Words,
                Classes(differing.Words, versions, vocabulary),
                [.. Picked(differing.At, at => ranks[at.Place(space)]).Select(at => Witness(differing.Words, at))],
                Furthest(differing.At) is { } furthest ? Witness(differing.Words, furthest) : null
            );

        Differing? Furthest(List<Differing> all) =>
            all.Where(at => at.NotShown is null && weights[at.Point].Uneven == 0 && !space.Points[at.Point].Any(value => value.IsNegative))
                .Select(at => (Differing?)at)
                .MaxBy(at => weights[at!.Value.Point].Size);

        (ImmutableDictionary<string, string> Words, List<Differing> At)[] Of(ImmutableDictionary<string, string> words)
        {
            var found = new Dictionary<(Given Before, Given After), List<Differing>>();
            var at = new PointRow(table, space.Axes);
            at.Put(words);
            if (!Enumerable.Range(0, table.Rules.Length).Any(rule => table.Judge(rule, at.Row).Binds != Truth.No))
                return [];
            for (var axis = 0; axis < alike.Length; axis++)
                at.Put(axis, space.Axes.Range(axis));
            foreach (var condition in conditions)
            {
                if (condition is not null)
                    at.NotShown(condition, true);
                Visit(0, space.Points.Length, 0, condition);
                if (condition is not null)
                    at.NotShown(condition, false);
            }

            return [.. found.Values.Select(list => (words, list))];

            // The points from one to before another, which are alike on the axes before one: all at once where nothing hangs on the rest.
            void Visit(int first, int end, int axis, string? condition)
            {
                var row = at.Row.Cells;
                if (cells?.Any(row) == false)
                    return;
                var watch = default(AnyWatch);
                var pair = (Answer(before, at, 0, ref watch), Answer(after, at, before.Rules.Length, ref watch));
                if (axis < alike.Length && (watch.Found || MayMove(row)))
                {
                    for (var next = first; first < end; first = next)
                    {
                        next = alike[axis][first];
                        at.Put(axis, space.Points[first][axis]);
                        Visit(first, next, axis + 1, condition);
                    }

                    at.Put(axis, space.Axes.Range(axis));
                }
                else if (pair.Item1 != pair.Item2)
                {
                    if (!found.TryGetValue(pair, out var list))
                        found[pair] = list = [];
                    list.AddRange(Enumerable.Range(first, end - first).Select(point => new Differing(point, condition)));
                }
            }
        }

        bool MayMove(ReadOnlySpan<ulong> row)
        {
            foreach (ref readonly var movement in table.Movements)
                if (movement.MayBeUnchanged(row))
                    return true;
            return false;
        }

        Witness Witness(ImmutableDictionary<string, string> words, Differing at) =>
            space.Witness(words, space.Points[at.Point], at.NotShown is null ? [] : [at.NotShown]);
    }

    /// <summary>
    /// The weights of those that differ, by point, and behind them those with a condition that is not met; and their order, the same for
    /// the same weight.
    /// </summary>
    private static (Weight[] Weights, int[] Ranks) Weighed(Space space, IEnumerable<Differing> differing)
    {
        var (weights, ranks) = (new Weight[2 * space.Points.Length], new int[2 * space.Points.Length]);
        int[] own = [.. differing.Select(at => at.Place(space)).Distinct()];
        foreach (var i in own)
        {
            var weight = space.Witness(ImmutableDictionary<string, string>.Empty, space.Points[i % space.Points.Length]).Weight;
            weights[i] = i < space.Points.Length ? weight : weight with { Changes = weight.Changes + 1 };
        }

        Array.Sort(own, (left, right) => weights[left].CompareTo(weights[right]));
        for (var i = 1; i < own.Length; i++)
            ranks[own[i]] = weights[own[i]].CompareTo(weights[own[i - 1]]) == 0 ? ranks[own[i - 1]] : i;
        return (weights, ranks);
    }

    private static Given Answer(Slice slice, PointRow at, int first, ref AnyWatch watch)
    {
        var unmet = at.Table.Touched(at.Row.Cells).Own;
        for (var rule = first; unmet != 0 && rule < first + slice.Rules.Length; rule++)
            unmet &= ~at.Table.Judge(rule, at.Row.Cells, ref watch).Speaks;
        return new Given(slice.Judge(at.Table, at.Row, first, ref watch), unmet);
    }

    /// <summary>
    /// Points away from zero on measures that mean something else in the two vocabularies; whether an answer differs there is for the
    /// evaluator to say.
    /// </summary>
    public static ImmutableArray<CandidateGroup> OfMeasures(Vocabulary vocabulary, Slice slice, ImmutableArray<string> measures)
    {
        ResolvedVersion[] scopes = [.. slice.Rules.Select(candidates => candidates[0] with { Content = new NotRegulated("") })];
        if (scopes.Length == 0)
            return [];
        var known = measures.Where(vocabulary.Measures.ContainsKey).ToArray();
        var space = new Space(vocabulary, slice.Jurisdiction, slice.Day, [.. scopes, .. known.Select(name => AtZero(scopes[0], name))]);
        var points = space.Points.Where(Away).ToArray();
        return points.Length == 0 ? [] : [.. space.Words.Select(Group)];

        bool Away(Fraction[] point) => point.Where((value, axis) => !value.IsZero && known.Contains(space.Axes.Measures[axis].Name)).Any();

        CandidateGroup Group(ImmutableDictionary<string, string> words) =>
            new(
                words,
                Classes(words, scopes, vocabulary),
                [.. Picked(points.Select(point => space.Witness(words, point)), witness => witness.Weight)],
                null
            );
    }

    /// <summary>An edge at zero for each measure of which only one of the books speaks, so that a point away from zero is tried.</summary>
    private static IEnumerable<ResolvedVersion> Spoken(
        ResolvedVersion[] versions,
        Slice before,
        Slice after,
        Topic topic,
        Vocabulary vocabulary
    ) =>
        vocabulary
            .Naming(topic.Name)
            .Where(measure => measure.NeedsOwnRule)
            .Select(measure => measure.Name)
            .Where(name => before.Versions.Any(version => version.Speaks(name)) != after.Versions.Any(version => version.Speaks(name)))
            .Select(name => AtZero(versions[0], name));

    /// <summary>
    /// The same for each measure of the topic where the versions speak of none: they hold in every case, and a job that changes nothing is
    /// no case.
    /// </summary>
    private static IEnumerable<ResolvedVersion> Unmeasured(ResolvedVersion[] versions, Topic topic, Vocabulary vocabulary)
    {
        var named = vocabulary.Naming(topic.Name).ToArray();
        return Axes.Of(versions, vocabulary).Measures.Intersect(named).Any()
            ? []
            : named.Where(measure => measure.IfAbsent is { IsZero: true }).Select(measure => AtZero(versions[0], measure.Name));
    }

    private static ResolvedVersion AtZero(ResolvedVersion version, string measure)
    {
        var limit = new Limit(measure, LimitKind.Bounded, new Bounds(null, new Bound(Fraction.Zero, true)), default);
        return version with
        {
            Content = new Stated([new Tier("", Pathway.NoCertificate, Predicate.Always, [limit], [], [], [], null, default)], null),
        };
    }

    /// <summary>One of all conditions that are attached to the same tiers.</summary>
    private static IEnumerable<string> Alike(ImmutableArray<string> conditions, ResolvedVersion[] versions)
    {
        var tiers = versions.SelectMany(version => version.Content is Stated stated ? stated.Tiers : []).ToArray();
        return conditions.DistinctBy(condition => string.Concat(tiers.Select(tier => tier.Provided.Contains(condition) ? 'y' : 'n')));
    }

    private static IEnumerable<T> Picked<T, TWeight>(IEnumerable<T> all, Func<T, TWeight> weigh)
    {
        T[] sorted = [.. all.OrderBy(weigh)];
        var step = Math.Max(1, (sorted.Length - Smallest) / Scattered);
        return sorted.Where((_, i) => i < Smallest || (i - Smallest) % step == step - 1);
    }

    private static ImmutableSortedDictionary<string, ImmutableArray<string>> Classes(
        ImmutableDictionary<string, string> words,
        ResolvedVersion[] versions,
        Vocabulary vocabulary
    )
    {
        var tests = WordClasses.Tests(versions).ToLookup(test => test.Fact);
        return words.ToImmutableSortedDictionary(
            pair => pair.Key,
            pair =>
                WordClasses
                    .Classes(vocabulary.Facts[pair.Key], [.. tests[pair.Key]])
                    .First(each => each[0] == pair.Value)
                    .ToImmutableArray(),
            StringComparer.Ordinal
        );
    }

    /// <param name="Point">Index of the point.</param>
    /// <param name="NotShown">The condition that is not met there; null where every one may be.</param>
    private readonly record struct Differing(int Point, string? NotShown)
    {
        /// <summary>Where it stands among the points, and behind them the same with a condition that is not met.</summary>
        public int Place(Space space) => NotShown is null ? Point : Point + space.Points.Length;
    }

    /// <param name="Outcome">The pathways; null where no rule binds.</param>
    /// <param name="Unmet">The changed measures that ask for a rule of their own and find none, a bit each.</param>
    private readonly record struct Given(Outcome? Outcome, ulong Unmet);
}
