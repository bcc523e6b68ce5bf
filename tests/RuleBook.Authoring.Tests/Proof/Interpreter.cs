using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>
/// The rules as DEVELOPERS.md and the vocabulary's definitions say them, without tables and cells: slow, obvious, for comparison only. It
/// judges one world at a time, in which every fact that a rule reads is known and one version of each rule is in force.
/// </summary>
internal sealed class Interpreter(Vocabulary vocabulary, ImmutableArray<ImmutableArray<ResolvedVersion>> rules)
{
    /// <summary>
    /// The topics that a job touches: of the rules that read a measure that it moves, and those that the vocabulary names for it.
    /// </summary>
    public ImmutableHashSet<string> Touched(FactSet facts) =>
        [
            .. vocabulary
                .Measures.Values.Where(measure => CanMove(measure) && Moves(measure, facts))
                .SelectMany(measure =>
                    rules
                        .Where(candidates => candidates.Any(version => Reads(version, measure.Name)))
                        .Select(candidates => candidates[0].Rule.Topic)
                        .Concat(measure.Topics.Where(topic => !vocabulary.Topics[topic].OfUse))
                ),
        ];

    /// <summary>The most onerous of what the rules of the topics give.</summary>
    public Outcome Verdict(World world, ImmutableHashSet<string> topics) =>
        topics.Aggregate(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate), (verdict, topic) => verdict.And(OnTopic(world, topic)));

    private Outcome OnTopic(World world, string topic)
    {
        ResolvedVersion[] binding =
        [
            .. rules
                .Select((candidates, i) => candidates[world.Versions[i]])
                .Where(version =>
                    version.Rule.Topic == topic
                    && version.Rule.For.AnyOf.Any(description =>
                        description.Tests.All(test => Passes(test, version, world))
                        && vocabulary.Facts.Values.All(fact => MayBind(description, fact, world))
                    )
                ),
        ];
        var unmet = vocabulary.Measures.Values.Any(measure =>
            measure.NeedsOwnRule
            && measure.Topics.Contains(topic)
            && world.Measure(measure.Name, []) is { } value
            && value != (measure.IfAbsent ?? Fraction.Zero)
            && !binding.Any(version => Speaks(version, measure.Name))
        );
        return binding.Length == 0 || unmet
            ? binding.Aggregate(Outcome.Open, (all, version) => all.And(Gives(version, world)))
            : binding.Select(version => Gives(version, world)).Aggregate((all, each) => all.And(each));
    }

    /// <summary>
    /// A rule binds what has to be named only where it names it; a vehicle of which the word is not stated is none of those.
    /// </summary>
    private static bool MayBind(Predicate scope, FactWord fact, World world) =>
        !world.Words.TryGetValue(fact.Name, out var word)
        || !fact.WhereNamed.Contains(word)
        || scope.Tests.Any(test => test.Fact == fact.Name && test.OneOf.Contains(word));

    private static Outcome Gives(ResolvedVersion version, World world)
    {
        if (version.Content is NotRegulated)
            return new Outcome(Pathway.NoCertificate, Pathway.NoCertificate);
        if (version.Content is not Stated stated)
            return Outcome.Open;
        var possible = new List<Pathway>();
        var exceeded = Pathway.NoCertificate;
        foreach (var tier in stated.Tiers.Where(tier => tier.When.Tests.All(test => Passes(test, version, world))))
        {
            var kept =
                tier.Provided.All(condition => !world.Unmet.Contains(condition))
                && tier.Limits.Where(limit => limit.Kind == LimitKind.Bounded).All(limit => Kept(limit, version, world));
            if (kept)
                possible.Add(tier.Pathway);
            if (kept && tier.Limits.All(limit => limit.Kind != LimitKind.NotEstablished))
                return new Outcome(possible.Min(), possible.Max());
            if (!kept && tier.Pathway != Pathway.Prohibited)
                exceeded = (Pathway)Math.Min((int)tier.Pathway + 1, (int)Pathway.Approval);
        }

        possible.Add(stated.Beyond ?? exceeded);
        possible.Add(stated.Beyond ?? Pathway.Prohibited);
        return new Outcome(possible.Min(), possible.Max());
    }

    /// <summary>A share is compared without dividing: a hundred parts with so many of the whole.</summary>
    private static bool Kept(Limit limit, ResolvedVersion version, World world)
    {
        if (limit.Share is not { } share)
            return Within(world.Measure(limit.Measure, version.Parts)!.Value, limit.Bounds!);
        var (part, whole) = (world.Measure(share.Part, version.Parts)!.Value, world.Measure(share.Whole, version.Parts)!.Value);
        return Within(100 * part, new Bounds(Times(limit.Bounds!.Lower), Times(limit.Bounds.Upper)));

        Bound? Times(Bound? percent) => percent is null ? null : new Bound(percent.Value * whole, percent.Closed);
    }

    private static bool Passes(FactTest test, ResolvedVersion version, World world) =>
        test.Bounds is { } bounds
            ? Within(world.Measure(test.Fact, version.Parts)!.Value, bounds)
            : test.OneOf.Contains(world.Words[test.Fact]);

    private static bool Within(Fraction value, Bounds bounds) =>
        (bounds.Lower is not { } lower || value > lower.Value || (lower.Closed && value == lower.Value))
        && (bounds.Upper is not { } upper || value < upper.Value || (upper.Closed && value == upper.Value));

    /// <summary>The facts and measures that a version reads, sums taken apart into what they are added up from.</summary>
    public static IEnumerable<string> Reads(ResolvedVersion version) =>
        Tests(version)
            .Select(test => test.Fact)
            .Concat(Tiers(version).SelectMany(tier => tier.Limits).SelectMany(Names))
            .SelectMany(name => Parts(name, version))
            .Distinct();

    /// <summary>The measure that a limit bounds, or the two of which it bounds a share.</summary>
    public static IEnumerable<string> Names(Limit limit) => limit.Share is { } share ? [share.Part, share.Whole] : [limit.Measure];

    /// <summary>The measure and, where it is a sum or a share of others, those.</summary>
    public static IEnumerable<string> Parts(string name, ResolvedVersion version) =>
        name switch
        {
            FactSet.TotalLift => version.Parts.SelectMany(part => Parts(part, version)).Append(name),
            FactSet.TyreLift => [name, FactSet.TyreGrowth],
            _ => [name],
        };

    /// <summary>Every test of a version: on the vehicles that it binds, and on what opens its tiers.</summary>
    public static IEnumerable<FactTest> Tests(ResolvedVersion version) =>
        version.Rule.For.Tests.Concat(Tiers(version).SelectMany(tier => tier.When.Tests));

    /// <summary>The tiers of a version that states any.</summary>
    public static IEnumerable<Tier> Tiers(ResolvedVersion version) => version.Content is Stated stated ? stated.Tiers : [];

    private static bool Reads(ResolvedVersion version, string measure) => Reads(version).Contains(measure);

    /// <summary>
    /// A rule speaks of what it tests or limits; one that says its whole subject is not established or not regulated speaks of all of it.
    /// </summary>
    private static bool Speaks(ResolvedVersion version, string measure) =>
        version.Rule.For.Tests.Any(test => test.Fact == measure)
        || (
            version.Content is Stated
                ? Tests(version).Any(test => test.Fact == measure)
                    || Tiers(version).Any(tier => tier.Limits.Any(limit => Names(limit).Contains(measure)))
                : version.Rule.For.Tests.All(test => test.Bounds is null)
        );

    private bool CanMove(Measure measure) =>
        !measure.IsDate
        && (
            measure.IfAbsent is not null
            || (
                !measure.IsDerived
                && (
                    measure.Job.StartsWith("modification.", StringComparison.Ordinal)
                    || measure.Job.StartsWith("measured.", StringComparison.Ordinal)
                )
                && !vocabulary.Measures.Values.Any(other => other.Job == measure.Job && other.IfAbsent is not null)
            )
        );

    /// <summary>What is not known moves, unless no job has to state it.</summary>
    private static bool Moves(Measure measure, FactSet facts)
    {
        var known = facts.Measures.TryGetValue(measure.Name, out var derived) ? derived.Value : Interval.Anything;
        return known == Interval.Anything ? measure.IfAbsent is not null : known.Exact != (measure.IfAbsent ?? Fraction.Zero);
    }
}
