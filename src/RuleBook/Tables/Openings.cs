using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

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
/// <param name="Label">For a reader.</param>
/// <param name="Apply">Makes it known.</param>
/// <param name="Cell">The stretch of a measure for which the option stands; null for a word or a version.</param>
public sealed record Option(string Label, Func<Situation, Situation> Apply, Cell? Cell = null);

/// <summary>What is known of a job, and the version of each rule that may be in force.</summary>
/// <param name="Facts">What is known.</param>
/// <param name="Versions">By rule id in ordinal order, the versions that may be in force; an order of its own in every run would make answers differ.</param>
public sealed record Situation(FactSet Facts, ImmutableSortedDictionary<string, ImmutableArray<ResolvedVersion>> Versions)
{
    /// <summary>With one version taken to be in force.</summary>
    public Situation Taking(ResolvedVersion version) => this with { Versions = Versions.SetItem(version.Rule.Id, [version]) };
}

/// <summary>Finds what is not known in a situation, with the options that cover every case.</summary>
internal static class Openings
{
    public static ImmutableArray<Opening> Of(Situation situation, Vocabulary vocabulary)
    {
        var versions = situation.Versions.Values.SelectMany(candidates => candidates).ToArray();
        var tests = versions.SelectMany(version => Tests(version).Select(test => (version, test))).ToArray();
        return
        [
            .. situation.Versions.Values.Where(candidates => candidates.Length > 1).Select(OfVersions),
            .. tests
                .Where(pair => pair.test.Bounds is null && !situation.Facts.Words.ContainsKey(pair.test.Fact))
                .Select(pair => vocabulary.Facts[pair.test.Fact])
                .DistinctBy(fact => fact.Name)
                .Select(OfWord),
            .. Measures(situation, versions, vocabulary),
        ];
    }

    private static IEnumerable<FactTest> Tests(ResolvedVersion version) =>
        version.Rule.For.Tests.Concat(version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.When.Tests) : []);

    private static Opening OfVersions(ImmutableArray<ResolvedVersion> candidates) => new(
        candidates[0].Rule.Id,
        OpeningKind.Version,
        [.. candidates.Select(version => new Option(Span(version), situation => situation.Taking(version)))]);

    private static string Span(ResolvedVersion version) => (version.From, version.Until) switch
    {
        (null, null) => "in force since an unknown day",
        (null, { } until) => $"in force before {until.Words}",
        ({ } from, null) => $"in force from {from.Words}",
        ({ } from, { } until) => $"in force from {from.Words} until {until.Words}",
    };

    private static Opening OfWord(FactWord fact) => new(
        fact.Job,
        OpeningKind.Word,
        [.. fact.Values.Select(value => new Option(value, situation => situation with { Facts = situation.Facts.With(fact.Name, value) }))]);

    /// <summary>
    /// The measures that are not known and on which some limit or test bears: one option for every cell into which their edges cut the
    /// measure, each with a witness, so that together they stand for every value.
    /// </summary>
    private static IEnumerable<Opening> Measures(Situation situation, ResolvedVersion[] versions, Vocabulary vocabulary)
    {
        var edges = versions.SelectMany(version => Edges(version, situation.Facts)).ToLookup(edge => edge.Measure, edge => edge.Value);
        foreach (var group in edges)
        {
            var measure = vocabulary.Measures[group.Key];
            var known = situation.Facts.Measure(group.Key, []);
            if (known.Exact is not null || measure.IsDate || (measure.IsDerived && situation.Facts.Measures.ContainsKey(measure.Name))) continue;
            var cells = Cells.Of(measure, [.. group.Concat(new[] { known.Low, known.High }.OfType<Fraction>()).Distinct().Order()]);
            yield return new Opening(measure.Job, OpeningKind.Measure, [.. cells.Where(option => Possible(option.Cell!, known))]);
        }
    }

    /// <summary>Whether a cell lies within what is known; its ends are edges too.</summary>
    private static bool Possible(Cell cell, Interval known) =>
        (known.Low is not { } low || cell.Lower?.Value >= low) && (known.High is not { } high || cell.Upper?.Value <= high);

    /// <summary>Edges on base measures; an edge on a total falls on each unknown part, what is known of the others taken off.</summary>
    internal static IEnumerable<(string Measure, Fraction Value)> Edges(ResolvedVersion version, FactSet facts)
    {
        var bounds = (version.Content is Stated stated
                ? stated.Tiers.SelectMany(tier => tier.Limits.Select(limit => (limit.Measure, limit.Bounds)).Concat(OfTests(tier.When)))
                : []).Concat(OfTests(version.Rule.For));
        foreach (var (measure, range) in bounds)
            foreach (var bound in new[] { range?.Lower, range?.Upper }.OfType<Bound>())
                foreach (var edge in Spread(measure, bound.Value, version, facts))
                    yield return edge;
    }

    private static IEnumerable<(string Measure, Bounds? Bounds)> OfTests(Predicate predicate) =>
        predicate.Tests.Where(test => test.Bounds is not null).Select(test => (test.Fact, test.Bounds));

    private static IEnumerable<(string Measure, Fraction Value)> Spread(string measure, Fraction edge, ResolvedVersion version, FactSet facts)
    {
        if (facts.Measures.TryGetValue(measure, out var stated) && stated.Value.Exact is not null) return [];
        if (measure == FactSet.TyreLift) return [(FactSet.TyreGrowth, edge * 2)];
        if (measure != FactSet.TotalLift) return [(measure, edge)];
        var known = version.Parts.Select(part => facts.Measure(part, version.Parts).Exact).OfType<Fraction>().Aggregate(Fraction.Zero, (sum, part) => sum + part);
        return version.Parts
            .Where(part => facts.Measure(part, version.Parts).Exact is null)
            .SelectMany(part => Spread(part, edge - known, version, facts));
    }
}
