using Fractions;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Site.Charts;
using RuleBook.Yaml;

namespace RuleBook.Site.Tests.Charts;

/// <summary>What is drawn where two rules of a topic bind a vehicle, or may bind it: never more than both give (an invented place).</summary>
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

    private static SiteBook Site(string topic, string measure, string binds)
    {
        (string File, string Text)[] own =
        [
            (
                "jurisdiction",
                """
                jurisdiction: xa
                name: The place
                registers: yes
                ask: { authority: The office }
                """
            ),
            (
                "sources",
                "jurisdiction: xa\nsources: [{ source: code, title: The code, publisher: The place, read-as: primary, checked: 2026-11, recheck-after: 2027-11 }]"
            ),
            (
                topic,
                $$"""
                jurisdiction: xa
                topic: {{topic}}
                rules:
                  - { rule: wide, title: Wide, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited,
                      tiers: [{ pathway: certificate, within: { {{measure}}: 100 mm } }] }
                  - { rule: strict, title: Strict, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited, for: {{binds}},
                      tiers: [{ pathway: certificate, within: { {{measure}}: 40 mm } }, { pathway: certificate, within: { {{measure}}: 30 mm } }] }
                """
            ),
        ];
        return new SiteBook(
            TheBook.Make([
                .. TheBook.Texts().Where(file => file.Path.StartsWith("schema/vocabulary/", StringComparison.Ordinal)),
                .. own.Select(file => ($"jurisdictions/xa/{file.File}.yaml", file.Text))
                    .Select(file => new SiteSource(file.Item1, file.Text, YamlText.Read(file.Text, file.Item1))),
            ])
        );
    }
}
