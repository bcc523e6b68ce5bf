using System.Collections.Immutable;
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

    public static Slice Of(Book book, Jurisdiction place, string topic, DateOnly day, Func<Rule, bool>? chosen = null) =>
        new(
            place.Id,
            topic,
            day,
            [
                .. place
                    .Rules.Where(rule => rule.Topic == topic && chosen?.Invoke(rule) != false)
                    .Select(rule => Resolver.Resolve(book, rule, day)),
            ]
        );

    /// <summary>
    /// The pathways possible of the rules of a table from <paramref name="first"/> on: the most onerous over those that bind. Null when
    /// none does.
    /// </summary>
    /// <param name="table">Holds these rules one after another.</param>
    /// <param name="row">The row.</param>
    /// <param name="first">Index of the first.</param>
    public Outcome? Judge(DecisionTable table, Row row, int first = 0)
    {
        var watch = default(NoWatch);
        return Judge(table, row, first, ref watch);
    }

    /// <summary>The same, and what it hangs on.</summary>
    public Outcome? Judge<TWatch>(DecisionTable table, Row row, int first, ref TWatch watch)
        where TWatch : struct, IWatch
    {
        Outcome? verdict = null;
        for (var rule = first; rule < first + Rules.Length; rule++)
        {
            var given = table.Judge(rule, row.Cells, ref watch);
            if (given.Binds != Truth.No)
                verdict = verdict?.And(given.Outcome) ?? given.Outcome;
        }

        return verdict;
    }
}
