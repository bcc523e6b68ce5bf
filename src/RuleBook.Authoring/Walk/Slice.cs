using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>Rules of one jurisdiction on one topic, with the versions that are or may be in force on a day.</summary>
/// <param name="Jurisdiction">Id.</param>
/// <param name="Topic">Topic.</param>
/// <param name="Day">The day.</param>
/// <param name="Rules">The versions of each rule.</param>
internal sealed record Slice(string Jurisdiction, string Topic, DateOnly Day, ImmutableArray<ImmutableArray<ResolvedVersion>> Rules)
{
    public IEnumerable<ResolvedVersion> Versions => Rules.SelectMany(candidates => candidates);

    public static Slice Of(Book book, Jurisdiction place, string topic, DateOnly day, Func<Rule, bool>? chosen = null) => new(
        place.Id, topic, day, [.. place.Rules.Where(rule => rule.Topic == topic && chosen?.Invoke(rule) != false).Select(rule => Resolver.Resolve(book, rule, day))]);

    /// <summary>
    /// The pathways possible: the most onerous over the rules that bind. Null when none binds, or when that is open.
    /// </summary>
    public Outcome? Try(FactSet facts)
    {
        Outcome? verdict = null;
        foreach (var candidates in Rules)
        {
            var binds = candidates.Max(version => Judge.Binds(version, facts));
            if (binds == Truth.No) continue;
            var outcome = candidates.Select(version => Judge.Try(version, facts)).Aggregate((left, right) => left.Or(right));
            if (binds == Truth.Unknown) outcome = outcome.Or(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
            verdict = verdict?.And(outcome) ?? outcome;
        }

        return verdict;
    }
}
