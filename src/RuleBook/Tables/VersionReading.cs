using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>What a version tests and bounds.</summary>
internal static class VersionReading
{
    /// <summary>The tiers that a version states; none where it states none.</summary>
    public static ImmutableArray<Tier> Tiers(this ResolvedVersion version) => version.Content is Stated stated ? stated.Tiers : [];

    /// <summary>
    /// Every range that it sets on a measure: tier by tier its limits and what opens it, then the vehicles that it binds.
    /// </summary>
    public static IEnumerable<(string Measure, Bounds Bounds)> Bounded(this ResolvedVersion version) =>
        version
            .Tiers()
            .SelectMany(tier =>
                tier.Limits.Select(limit => (limit.Measure, limit.Bounds)).Concat(tier.When.Tests.Select(test => (test.Fact, test.Bounds)))
            )
            .Concat(version.Rule.For.Tests.Select(test => (test.Fact, test.Bounds)))
            .Where(pair => pair.Bounds is not null)
            .Select(pair => (pair.Item1, pair.Bounds!));

    /// <summary>Every test by words: the vehicles that it binds, then what opens its tiers.</summary>
    public static IEnumerable<FactTest> WordTests(this ResolvedVersion version) =>
        version.Rule.For.Tests.Concat(version.Tiers().SelectMany(tier => tier.When.Tests)).Where(test => test.Bounds is null);

    /// <summary>The facts and measures that it tests or limits, with the parts of sums.</summary>
    public static IEnumerable<string> Reads(this ResolvedVersion version) =>
        version
            .Tiers()
            .SelectMany(tier => tier.Limits.SelectMany(limit => limit.Names).Concat(tier.When.Tests.Select(test => test.Fact)))
            .Concat(version.Rule.For.Tests.Select(test => test.Fact))
            .Distinct()
            .SelectMany(version.WithParts);

    /// <summary>
    /// Whether it speaks of a measure that asks for a rule of its own: tests or limits it, or says of its whole subject that nothing is
    /// established or regulated.
    /// </summary>
    public static bool Speaks(this ResolvedVersion version, string measure)
    {
        var bind = version.Rule.For.Tests;
        if (bind.Any(test => test.Fact == measure))
            return true;
        return version.Content is Stated stated
            ? stated.Tiers.Any(tier =>
                tier.Limits.Any(limit => limit.Names.Contains(measure)) || tier.When.Tests.Any(test => test.Fact == measure)
            )
            : bind.All(test => test.Bounds is null);
    }

    /// <summary>
    /// Whether it judges a change of a measure: reads it, or says that nothing is established or regulated. That is said of the measures of
    /// its own topic only; of one that asks for a rule of its own only where it is said of the whole subject.
    /// </summary>
    /// <param name="version">The version.</param>
    /// <param name="measure">The measure.</param>
    /// <param name="onTopic">Whether the measure touches the topic of the version's rule.</param>
    public static bool Judges(this ResolvedVersion version, Measure measure, bool onTopic) =>
        version.Reads().Contains(measure.Name)
        || (onTopic && version.Content is not Stated && (!measure.NeedsOwnRule || version.Speaks(measure.Name)));

    private static IEnumerable<string> WithParts(this ResolvedVersion version, string name) =>
        name switch
        {
            FactSet.TyreLift => [name, FactSet.TyreGrowth],
            FactSet.TotalLift => version.Parts.SelectMany(version.WithParts).Prepend(name),
            _ => [name],
        };
}
