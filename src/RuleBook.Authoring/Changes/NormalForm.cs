using RuleBook.Answers;
using RuleBook.Authoring.Resolved;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// What a rule gives on a day, in words that are the same whenever no answer can differ: without titles, notes, sources, codes, names of
/// tiers, whatever order the keys and whatever unit the figures are written in.
/// </summary>
internal static class NormalForm
{
    /// <summary>The meaning, and nothing where the book does not have the rule.</summary>
    public static string Of(Book book, Rule? rule, DateOnly day, Vocabulary vocabulary)
    {
        if (rule is null)
            return "";
        var versions = Resolver
            .Resolve(book, rule, day)
            .Select(version => Of(version, vocabulary))
            .Distinct()
            .Order(StringComparer.Ordinal);
        var vehicles = rule.For.AnyOf.Select(each => LimitWords.Of(Plain(each), vocabulary)).Order(StringComparer.Ordinal);
        return $"{string.Join("; or else ", vehicles)}\n{string.Join("\nor\n", versions)}";
    }

    private static string Of(ResolvedVersion version, Vocabulary vocabulary) =>
        version.Content switch
        {
            Stated stated => string.Join('\n', stated.Tiers.Select(tier => Of(tier, version, vocabulary)).Append(Beyond(stated))),
            NotRegulated => "not regulated",
            _ => "not established",
        };

    private static string Of(Tier tier, ResolvedVersion version, Vocabulary vocabulary)
    {
        var limits = tier
            .Limits.Select(limit =>
                $"{LimitWords.Of(limit with { Bounds = Plain(limit.Bounds) }, vocabulary)}{Parts(limit.Measure, version)}"
            )
            .Order(StringComparer.Ordinal);
        return $"{Wording.Of(tier.Pathway)} when {LimitWords.Of(Plain(tier.When), vocabulary)} within {string.Join("; ", limits)} "
            + $"provided {string.Join(' ', tier.Provided.Distinct().Order(StringComparer.Ordinal))}";
    }

    /// <summary>Without the unit in which it is written.</summary>
    private static Predicate Plain(Predicate predicate) =>
        new([.. predicate.Tests.Select(test => test with { Bounds = Plain(test.Bounds) })]);

    private static Bounds? Plain(Bounds? bounds) => bounds is null ? null : new Bounds(Plain(bounds.Lower), Plain(bounds.Upper));

    private static Bound? Plain(Bound? bound) => bound is null ? null : bound with { Written = null };

    private static string Parts(string measure, ResolvedVersion version) =>
        measure == FactSet.TotalLift ? $" of {string.Join(' ', version.Parts.Order(StringComparer.Ordinal))}" : "";

    private static string Beyond(Stated stated) => $"beyond {(stated.Beyond is { } pathway ? Wording.Of(pathway) : "not established")}";
}
