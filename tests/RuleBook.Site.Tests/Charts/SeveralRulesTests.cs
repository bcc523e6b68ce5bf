using Fractions;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Site.Charts;

namespace RuleBook.Site.Tests.Charts;

/// <summary>
/// What is drawn where two rules of a topic bind a vehicle, or may bind it: never more than both give (an invented place).
/// </summary>
public sealed class SeveralRulesTests
{
    private static readonly FactSet Car = FactSet.Nothing.With("category", "MA");

    /// <summary>The vehicles that the stricter rule is for, and what both together give.</summary>
    public static TheoryData<string, int?> Stricter() =>
        new()
        {
            { "{ category: [MA] }", 40 },
            { "{ category: [MB] }", 100 },
            { "{ four-wheel-drive: yes }", null }, // not known of this car
        };

    [Theory]
    [MemberData(nameof(Stricter))]
    public void Of_two_rules_on_tyres_the_stricter_is_drawn_and_nothing_where_it_may_bind(string binds, int? drawn)
    {
        var site = Site("tyres-and-wheels", "track-increase", binds);
        FigureSteps
            .Of(site, site.Places.Single(), site.Words.Topics["tyres-and-wheels"], "track-increase", Car, Pathway.Certificate)
            .Steps[^1]
            .Value.ShouldBe((Fraction?)drawn);
    }

    [Theory]
    [MemberData(nameof(Stricter))]
    public void Of_two_rules_on_height_the_stricter_is_drawn_and_nothing_where_it_may_bind(string binds, int? drawn)
    {
        var site = Site("ride-height", "total-lift", binds);
        LiftParts
            .Of(site.Book, site.Places.Single(), Car, new DateOnly(2026, 11, 25))
            .Single(parts => parts.Pathway == Pathway.Certificate)
            .Highest.ShouldBe((Fraction?)drawn);
    }

    private static SiteBook Site(string topic, string measure, string binds) =>
        InventedPlace.With(
            topic,
            $$"""
              - { rule: wide, title: Wide, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited,
                  tiers: [{ pathway: certificate, within: { {{measure}}: 100 mm } }] }
              - { rule: strict, title: Strict, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited, for: {{binds}},
                  tiers: [{ pathway: certificate, within: { {{measure}}: 40 mm } }, { pathway: certificate, within: { {{measure}}: 30 mm } }] }

            """
        );
}
