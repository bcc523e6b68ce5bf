using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>Whether what a job changes is met by some rule; what no rule meets is open, never allowed by silence.</summary>
internal static class Covering
{
    /// <summary>Whether the version speaks of the measure: tests or limits it, or says of its whole subject that nothing is established or regulated.</summary>
    public static bool Speaks(ResolvedVersion version, string measure)
    {
        var forTests = version.Rule.For.Tests;
        if (forTests.Any(test => test.Fact == measure)) return true;
        return version.Content is Stated stated
            ? stated.Tiers.Any(tier => tier.Limits.Any(limit => limit.Measure == measure) || tier.When.Tests.Any(test => test.Fact == measure))
            : forTests.All(test => test.Bounds is null);
    }

    /// <summary>The measures that the job changes and that ask for a rule of their own.</summary>
    public static IEnumerable<Measure> Changed(Topic topic, Vocabulary vocabulary, FactSet facts) => topic.TouchedBy
        .Select(name => vocabulary.Measures.GetValueOrDefault(name))
        .OfType<Measure>()
        .Where(measure => measure.NeedsOwnRule && facts.Measure(measure.Name, FactSet.PartsOf(null)).Exact is not { IsZero: true });
}
