using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>
/// What a random job makes known: mostly all, sometimes much less; measures at the bounds of the rules, a tenth beside them, or anywhere.
/// </summary>
internal sealed class RandomFacts
{
    private readonly Random random;

    public RandomFacts(Vocabulary vocabulary, ImmutableArray<ImmutableArray<ResolvedVersion>> rules, Random random)
    {
        this.random = random;
        var unknown = random.Next(3) == 0 ? random.Next(40) : random.Next(4);
        var versions = rules.SelectMany(candidates => candidates).ToArray();
        var wholes = vocabulary.Measures.Values.Select(measure => measure.Share?.Whole).ToHashSet();
        var words = ImmutableDictionary.CreateBuilder<string, string>();
        foreach (var fact in vocabulary.Facts.Values.OrderBy(fact => fact.Name, StringComparer.Ordinal))
            if (random.Next(100) >= unknown)
                words[fact.Name] = fact.Values[random.Next(fact.Values.Length)];
        var measures = new Dictionary<string, Derived>(StringComparer.Ordinal);
        foreach (
            var measure in vocabulary
                .Measures.Values.Where(measure => !IsSum(measure.Name) && measure.Share is null)
                .OrderBy(measure => measure.Name, StringComparer.Ordinal)
        )
            if (random.Next(100) >= unknown && Value(measure, versions) is { } value)
                measures[measure.Name] = new Derived(wholes.Contains(measure.Name) ? Positive(value) : value, "");
        foreach (
            var share in versions.SelectMany(Interpreter.Tiers).SelectMany(tier => tier.Limits).Where(limit => limit.Share is not null)
        )
            if (measures.TryGetValue(share.Share!.Whole, out var whole) && whole.Value.Exact is { } exact && random.Next(4) > 0)
                measures[share.Share.Part] = new Derived(
                    Interval.Of(At(share.Bounds!) * exact / 100 + new Fraction(random.Next(-1, 2), 10)),
                    ""
                );
        var conditions = versions.SelectMany(Interpreter.Tiers).SelectMany(tier => tier.Provided).Distinct().Order(StringComparer.Ordinal);
        measures.AddShares(vocabulary);
        Facts = new FactSet(
            words.ToImmutable(),
            measures,
            conditions.Where(_ => random.Next(4) == 0).ToImmutableDictionary(name => name, _ => random.Next(3) > 0)
        );
    }

    public FactSet Facts { get; }

    private Fraction At(Bounds bounds) =>
        (bounds.Lower is not { } lower || (bounds.Upper is not null && random.Next(2) == 0) ? bounds.Upper! : lower).Value;

    private static Interval Positive(Interval value) =>
        value.Low is { IsPositive: true } ? value : Interval.Of((value.Low ?? Fraction.Zero).Abs() + 1);

    private static bool IsSum(string name) => name is FactSet.TotalLift or FactSet.TyreLift;

    private Interval? Value(Measure measure, ResolvedVersion[] versions)
    {
        if (measure.IfAbsent is { } absent && random.Next(3) == 0)
            return Interval.Of(absent);
        if (measure.IfAbsent is null && !measure.IsDate && random.Next(3) == 0)
            return null;
        Fraction[] bounds = [.. versions.SelectMany(version => Bounds(version, measure.Name))];
        var near =
            bounds.Length > 0 && random.Next(4) > 0 ? bounds[random.Next(bounds.Length)]
            : measure.IsDate ? new DateOnly(2015, 1, 1).DayNumber + random.Next(4_000)
            : random.Next(-60, 200);
        var value = near + (measure.IsDate ? random.Next(-1, 2) : new Fraction(random.Next(-1, 2), random.Next(2) == 0 ? 10 : 7));
        return !measure.IsDerived && random.Next(30) == 0 ? new Interval(value, value + random.Next(1, 60)) : Interval.Of(value);
    }

    private static IEnumerable<Fraction> Bounds(ResolvedVersion version, string measure) =>
        Interpreter
            .Tests(version)
            .Select(test => (test.Fact, test.Bounds))
            .Concat(Interpreter.Tiers(version).SelectMany(tier => tier.Limits).Select(limit => (limit.Measure, limit.Bounds)))
            .Where(pair => Interpreter.Parts(pair.Item1, version).Contains(measure))
            .SelectMany(pair => new[] { pair.Bounds?.Lower, pair.Bounds?.Upper }.OfType<Bound>().Select(bound => bound.Value));
}
