using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// Proof by cells: the limits of a rule cut the space of measures into cells on which no answer changes. A witness of every cell and
/// boundary is tried, for every stretch of days, class of vehicles and condition.
/// </summary>
public static class BookWalk
{
    /// <summary>Walks a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="chosen">Whether to walk the rules of a jurisdiction on a topic; null for all.</param>
    /// <param name="progress">Told the id of each jurisdiction before it is walked.</param>
    public static WalkReport Walk(Book book, Func<string, string, bool>? chosen = null, Action<string>? progress = null)
    {
        var report = WalkReport.Empty;
        var named = CoverWalk.Named(book);
        foreach (var place in book.Jurisdictions)
        {
            progress?.Invoke(place.Id);
            var rules = place
                .Rules.Where(rule => chosen?.Invoke(place.Id, rule.Topic) is not false)
                .Where(rule => !rule.GovernedByTravel && rule.Versions.Any(version => version.Decides))
                .ToArray();
            report = rules
                .AsParallel()
                .AsOrdered()
                .Select(rule => Walk(book, place, rule))
                .AsEnumerable()
                .Aggregate(report, (sum, one) => sum.And(one));
            foreach (var topic in rules.Select(rule => rule.Topic).Distinct())
                report = report with { Faults = report.Faults.AddRange(CoverWalk.Faults(book, place, topic, named)) };
        }

        return report with
        {
            Faults = [.. report.Faults.OrderBy(fault => fault.Mark).ThenBy(fault => fault.Kind)],
        };
    }

    private static WalkReport Walk(Book book, Jurisdiction place, Rule rule)
    {
        var reached = new HashSet<(Mark, Predicate)>();
        var report = WalkReport.Empty;
        foreach (var day in DayEdges.Of(book, [rule]))
        {
            var slice = Slice.Of(book, place, rule.Topic, day, one => ReferenceEquals(one, rule));
            report = report.And(new RuleWalk(book.Vocabulary, slice, rule, reached).Walk());
            if (Hole(rule, slice, day) is { } hole)
                report = report with { Faults = report.Faults.Add(hole) };
        }

        Tier[] own = [.. rule.Versions.Where(version => version.Decides).SelectMany(Own)];
        Tier[] unreached = [.. own.Where(tier => !reached.Contains((tier.Mark, tier.When)))];
        return report with
        {
            Rules = 1,
            Tiers = own.Length - unreached.Length,
            Faults = [.. report.Faults.DistinctBy(fault => fault.Kind), .. unreached.Select(tier => Unreachable(rule, tier))],
        };
    }

    /// <summary>The tiers that the rule states itself; one that is adopted may well be closed to the vehicles of this rule.</summary>
    private static IEnumerable<Tier> Own(RuleVersion version) =>
        version.Content switch
        {
            Stated stated => stated.Tiers,
            Adoption adoption => adoption.Exceptions.Select(departure => departure.Added).OfType<Tier>(),
            _ => [],
        };

    private static WalkFault Unreachable(Rule rule, Tier tier) =>
        new(
            FaultKind.Unreachable,
            rule.Id,
            tier.Mark,
            $"the tier '{tier.Name}' is never reached: what it allows is given by tiers before it",
            null
        );

    private static WalkFault? Hole(Rule rule, Slice slice, DateOnly day)
    {
        var starts = rule.Versions.Where(version => version.Decides).Select(version => version.From?.Earliest ?? DateOnly.MinValue).Min();
        var ended = rule.Versions.Any(version => version.Until is { } until && until.Latest <= day);
        return
            day >= starts
            && ended
            && slice.Versions.Any(version => version is { From: null, Sources.IsEmpty: true, Content: NotEstablished })
            ? new WalkFault(
                FaultKind.Hole,
                rule.Id,
                rule.Mark,
                "nothing is recorded between two versions, or after the last",
                new Witness(slice.Jurisdiction, day, ImmutableDictionary<string, string>.Empty, [], [])
            )
            : null;
    }
}
