using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>Everything that can be asked of some versions on one day: words by class, a grid of measures, conditions shown or not.</summary>
internal sealed class Space
{
    private readonly string jurisdiction;
    private readonly DateOnly day;
    private readonly ImmutableArray<string> parts;
    private readonly ImmutableArray<string> sums;

    public Space(Vocabulary vocabulary, string jurisdiction, DateOnly day, IReadOnlyList<ResolvedVersion> versions, Func<Axes, Slab?>? within = null)
    {
        this.jurisdiction = jurisdiction;
        this.day = day;
        parts = versions.Count == 0 ? [] : versions[0].Parts;
        sums = versions.All(version => version.Parts.SequenceEqual(parts)) ? [FactSet.TyreLift, FactSet.TotalLift] : [FactSet.TyreLift];
        Axes = Axes.Of(versions, vocabulary);
        var grid = new Grid(Axes);
        Words = [.. WordClasses.Of(versions, vocabulary)];
        Conditions = [.. versions.SelectMany(version => version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.Provided) : []).Distinct().Order(StringComparer.Ordinal)];
        Points = [.. grid.Points(within?.Invoke(Axes)).Where(point => TyreSense.Possible(Axes, point))];
    }

    public Axes Axes { get; }

    public ImmutableArray<ImmutableDictionary<string, string>> Words { get; }

    public ImmutableArray<string> Conditions { get; }

    public ImmutableArray<Fraction[]> Points { get; }

    /// <summary>What is known at a point, all conditions still to be shown; what adds up is added once, where the versions agree on the parts.</summary>
    public FactSet Facts(ImmutableDictionary<string, string> words, Fraction[] point)
    {
        var facts = new FactSet(words, ImmutableDictionary<string, Derived>.Empty, ImmutableDictionary<string, bool>.Empty);
        for (var i = 0; i < point.Length; i++) facts = facts.With(Axes.Measures[i].Name, point[i], "");
        return sums.Aggregate(facts, (all, sum) => facts.Measure(sum, parts).Exact is { } value ? all.With(sum, value, "") : all);
    }

    public Witness Witness(ImmutableDictionary<string, string> words, Fraction[] point, params ImmutableArray<string> notShown) => new(
        jurisdiction, day, words, [.. point.Select((value, axis) => KeyValuePair.Create(Axes.Measures[axis], value))], notShown);

    public static FactSet NotShown(FactSet facts, string condition) => facts with { Shown = facts.Shown.SetItem(condition, false) };
}
