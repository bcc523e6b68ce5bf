using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>A rule with the versions of which each is or may be in force.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Candidates">One where that is known, more where a date is known only in part or several days may decide.</param>
/// <param name="Days">By candidate, the first of the days that bring it in.</param>
internal sealed record RuleInForce(Rule Rule, ImmutableArray<ResolvedVersion> Candidates, ImmutableArray<DateOnly> Days)
{
    /// <summary>A rule of which it is known what is in force.</summary>
    public static RuleInForce Of(params ImmutableArray<ResolvedVersion> candidates) =>
        new(candidates[0].Rule, candidates, [.. candidates.Select(_ => DateOnly.MinValue)]);

    /// <summary>The versions that some days bring in, each once.</summary>
    public static RuleInForce On(Book book, Rule rule, ImmutableArray<DateOnly> days)
    {
        var found = days.SelectMany(day => Resolver.Resolve(book, rule, day).Select(version => (version, day)))
            .DistinctBy(pair => Identity(pair.version))
            .ToArray();
        return new RuleInForce(rule, [.. found.Select(pair => pair.version)], [.. found.Select(pair => pair.day)]);
    }

    private static (PartialDate? From, PartialDate? Until, string Taken) Identity(ResolvedVersion version) =>
        (version.From, version.Until, string.Join(' ', version.Adopted.Select(Taken)));

    /// <summary>Which version an adoption takes over; one that moves takes over the same on many days.</summary>
    private static (string, DateOnly?, string?, string?) Taken(AdoptionStep step) =>
        (step.Rule, step.Moving ? null : step.AsOf, step.From?.Text, step.Until?.Text);
}
