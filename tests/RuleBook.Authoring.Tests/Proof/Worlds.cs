using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>
/// The worlds that what is known leaves open: every word, every version, and of a measure each bound that a rule sets on it or on a sum of
/// it, a point between each two, and one before and after all.
/// </summary>
internal sealed class Worlds
{
    private readonly FactSet facts;
    private readonly ImmutableArray<ImmutableArray<ResolvedVersion>> rules;
    private readonly List<(string Name, string[] Values)> words = [];
    private readonly List<(string Name, Fraction[] Values)> measures = [];

    public Worlds(
        Vocabulary vocabulary,
        ImmutableArray<ImmutableArray<ResolvedVersion>> rules,
        FactSet facts,
        ImmutableHashSet<string> topics
    )
    {
        (this.rules, this.facts) = (rules, facts);
        ResolvedVersion[] versions = [.. rules.SelectMany(candidates => candidates).Where(version => topics.Contains(version.Rule.Topic))];
        var read = versions
            .SelectMany(Interpreter.Reads)
            .Concat(vocabulary.Measures.Values.Where(measure => measure.NeedsOwnRule).Select(measure => measure.Name))
            .ToHashSet();
        foreach (var fact in vocabulary.Facts.Values.Where(fact => read.Contains(fact.Name) && !facts.Words.ContainsKey(fact.Name)))
            words.Add((fact.Name, [.. fact.Values.Except(fact.WhereNamed)]));
        foreach (
            var name in read.Where(name => vocabulary.Measures.ContainsKey(name) && name is not (FactSet.TotalLift or FactSet.TyreLift))
                .Order(StringComparer.Ordinal)
        )
            if (Known(name) is var known && known.Exact is null)
                measures.Add((name, Witnesses(name, known, versions, vocabulary.Measures[name])));
        var sums = measures.Count(each =>
            versions.Any(version =>
                version.Parts.SelectMany(part => Interpreter.Parts(part, version)).Contains(each.Name)
                && Interpreter.Reads(version).Contains(FactSet.TotalLift)
            )
        );
        IsComplete =
            (sums < 2 || facts.Measures.ContainsKey(FactSet.TotalLift))
            && Shares(versions).SelectMany(Interpreter.Names).All(name => facts.Measure(name, []).Exact is not null);
        Count =
            words.Aggregate(1.0, (product, each) => product * each.Values.Length)
            * measures.Aggregate(1.0, (product, each) => product * each.Values.Length)
            * rules.Aggregate(1.0, (product, candidates) => product * candidates.Length);
    }

    /// <summary>
    /// Whether <see cref="All"/> has a witness of every case; it may lack one where two parts of a sum are not known, or a measure of which
    /// a share is bounded, beside the measure itself.
    /// </summary>
    public bool IsComplete { get; }

    /// <summary>How many there are.</summary>
    public double Count { get; }

    /// <summary>Every one.</summary>
    public IEnumerable<World> All()
    {
        for (long at = 0; at < Count; at++)
        {
            var left = at;
            yield return Build(choices => Digit(ref left, choices));
        }
    }

    /// <summary>One at random.</summary>
    public World Any(Random random) => Build(random.Next);

    private static int Digit(ref long left, int choices)
    {
        var digit = (int)(left % choices);
        left /= choices;
        return digit;
    }

    private World Build(Func<int, int> pick) =>
        new(
            words.Aggregate(facts.Words, (all, each) => all.SetItem(each.Name, each.Values[pick(each.Values.Length)])),
            measures.Aggregate(
                facts
                    .Measures.Where(pair => pair.Value.Value.Exact is not null)
                    .ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Value.Exact!.Value),
                (all, each) => all.SetItem(each.Name, each.Values[pick(each.Values.Length)])
            ),
            [.. facts.Shown.Where(pair => !pair.Value).Select(pair => pair.Key)],
            [.. rules.Select(candidates => pick(candidates.Length))]
        );

    private Interval Known(string name) => facts.Measures.TryGetValue(name, out var derived) ? derived.Value : Interval.Anything;

    private Fraction[] Witnesses(string name, Interval known, ResolvedVersion[] versions, Measure measure)
    {
        Fraction[] edges =
        [
            .. versions
                .SelectMany(version => Bounds(version).SelectMany(pair => InTermsOf(name, pair.Measure, pair.Value, version)))
                .Concat(Shares(versions).SelectMany(limit => InTermsOf(name, limit)))
                .Append(measure.IfAbsent ?? Fraction.Zero)
                .Concat(new[] { known.Low, known.High }.OfType<Fraction>())
                .Distinct()
                .Order(),
        ];
        var witnesses = edges
            .Concat(edges.Zip(edges.Skip(1), (left, right) => (left + right) / 2))
            .Append(edges[0] - 1)
            .Append(edges[^1] + 1);
        if (Shares(versions).Any(limit => limit.Share!.Whole == name))
            witnesses = witnesses.Append(1).Where(value => value.IsPositive);
        if (measure.IsDate)
            witnesses = witnesses
                .Where(value => value.Denominator.IsOne)
                .Concat(edges.Select(edge => edge + 1))
                .Concat(edges.Select(edge => edge - 1));
        return
        [
            .. witnesses
                .Distinct()
                .Where(value => (known.Low is not { } low || value >= low) && (known.High is not { } high || value <= high)),
        ];
    }

    /// <summary>Where a bound on a sum falls on one of its parts, what is known of the others taken off.</summary>
    private IEnumerable<Fraction> InTermsOf(string name, string bounded, Fraction edge, ResolvedVersion version)
    {
        if (bounded == name)
            return [edge];
        if (facts.Measures.ContainsKey(bounded))
            return [];
        return bounded switch
        {
            FactSet.TyreLift => InTermsOf(name, FactSet.TyreGrowth, edge * 2, version),
            FactSet.TotalLift => version.Parts.SelectMany(part =>
                InTermsOf(
                    name,
                    part,
                    edge - version.Parts.Where(other => other != part).Aggregate(Fraction.Zero, (sum, other) => sum + Exactly(other)),
                    version
                )
            ),
            _ => [],
        };
    }

    /// <summary>Where a bound on a share falls on one of its two measures, where the other is known.</summary>
    private IEnumerable<Fraction> InTermsOf(string name, Limit limit) =>
        from bound in new[] { limit.Bounds!.Lower, limit.Bounds.Upper }.OfType<Bound>()
        where !bound.Value.IsZero
        let edge = name == limit.Share!.Part ? facts.Measure(limit.Share.Whole, []).Exact * bound.Value / 100
        : name == limit.Share.Whole ? facts.Measure(limit.Share.Part, []).Exact * 100 / bound.Value
        : null
        where edge is not null
        select edge.Value;

    private static IEnumerable<Limit> Shares(IEnumerable<ResolvedVersion> versions) =>
        versions.SelectMany(Interpreter.Tiers).SelectMany(tier => tier.Limits).Where(limit => limit.Share is not null);

    private Fraction Exactly(string part) => facts.Measure(part, []).Exact ?? Fraction.Zero;

    private static IEnumerable<(string Measure, Fraction Value)> Bounds(ResolvedVersion version) =>
        Interpreter
            .Tests(version)
            .Select(test => (test.Fact, test.Bounds))
            .Concat(Interpreter.Tiers(version).SelectMany(tier => tier.Limits).Select(limit => (limit.Measure, limit.Bounds)))
            .SelectMany(pair =>
                new[] { pair.Bounds?.Lower, pair.Bounds?.Upper }.OfType<Bound>().Select(bound => (pair.Item1, bound.Value))
            );
}
