using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Site.Charts;

/// <summary>One figure of a jurisdiction over time: the highest that a kind of vehicle may have on a pathway.</summary>
internal sealed record FigureSteps(Jurisdiction Place, Pathway Pathway, ImmutableArray<(DateOnly From, Fraction? Value)> Steps)
{
    public bool IsKnown => Steps.Any(step => step.Value is not null);

    /// <summary>
    /// Steps that say the same as the one before are left out; where the version in force is not known, neither is the figure.
    /// </summary>
    public static FigureSteps Of(SiteBook site, Jurisdiction place, Topic topic, string measure, FactSet vehicle, Pathway pathway)
    {
        var steps = ImmutableArray.CreateBuilder<(DateOnly, Fraction?)>();
        foreach (var day in site.ChangeDays.Where(day => day <= site.Day))
        {
            var value = At(site.Book, place, topic.Name, measure, vehicle, pathway, day);
            if (steps.Count == 0 || steps[^1].Item2 != value)
                steps.Add((day, value));
        }

        return new FigureSteps(place, pathway, steps.ToImmutable());
    }

    private static Fraction? At(Book book, Jurisdiction place, string topic, string measure, FactSet vehicle, Pathway pathway, DateOnly day)
    {
        if (topic == KnownWords.RideHeight)
            return LiftParts.Of(book, place, vehicle, day).First(parts => parts.Pathway == pathway).Highest;
        var figures = place
            .Rules.Where(rule => rule.Topic == topic && !rule.GovernedByTravel)
            .Select(rule => Resolver.Resolve(book, rule, day))
            .SelectMany(candidates =>
                candidates.Select(version =>
                    (
                        Binds: TableBook.Of(book).Binds(version, vehicle) is var binds && candidates.Length > 1 && binds == Truth.Yes
                            ? Truth.Unknown
                            : binds,
                        Figure: Highest(version.Content, measure, vehicle, pathway)
                    )
                )
            )
            .ToLookup(version => version.Binds, version => version.Figure);
        var certain = figures[Truth.Yes].Min();
        return figures[Truth.Unknown].Min() < certain ? null : certain;
    }

    /// <summary>Null where a way has no figure for the measure, since it may reach further than those that have one.</summary>
    private static Fraction? Highest(Content content, string measure, FactSet vehicle, Pathway pathway)
    {
        Fraction?[] ways = content is Stated stated
            ?
            [
                .. stated
                    .Tiers.Where(tier => tier.Pathway == pathway && LiftParts.Applies(tier.When, vehicle))
                    .Select(tier => LiftParts.Upper(tier, measure)),
            ]
            : [];
        return ways.Contains(null) ? null : ways.Max();
    }
}
