using RuleBook.Law;
using RuleBook.Site.Charts;
using RuleBook.Site.Pages;

namespace RuleBook.Site.Tests.Charts;

/// <summary>The drawings of a topic with the figures beside them, of an invented place.</summary>
public sealed class TopicChartTests
{
    [Fact]
    public void A_figure_over_the_years_has_a_row_for_each_day_on_which_it_changes()
    {
        var site = InventedPlace.With(
            "tyres-and-wheels",
            """
              - rule: tyres
                title: Tyres
                versions:
                  - { from: 2010-05-01, sources: [{ cite: code }], beyond: prohibited,
                      tiers: [ { pathway: certificate, within: { tyre-diameter-growth: 50 mm } } ] }
                  - { from: 2015-05-01, sources: [{ cite: code }], beyond: prohibited,
                      tiers: [ { pathway: no-certificate, within: { tyre-diameter-growth: 30 mm } },
                        { pathway: certificate, within: { tyre-diameter-growth: 60 mm } } ] }

            """
        );
        var view = TopicCharts.Steps(site, site.Words.Topics["tyres-and-wheels"]).Single();
        (view.Title, view.Measure, view.Free, view.Certified).ShouldBe(
            (
                "Growth in tyre diameter (mm) over the years in mm, four-wheel drive with stability control",
                "growth in tyre diameter (mm)",
                true,
                true
            )
        );
        var place = view.Places.Single();
        place.Place.ShouldBe("The place");
        place.Rows.ShouldBe([new("1 May 2010", "no figure", "50 mm"), new("1 May 2015", "30 mm", "60 mm")]);
        // 120 and 1946 of the 6173 days from 2010 to the day after the site's on 286 pixels from 44 on; 102 pixels for 60 mm.
        place.Drawing.Text.ShouldContain("aria-label=\"The place: growth in tyre diameter (mm) over the years\"");
        place.Drawing.Text.ShouldContain("class=\"step certified\" d=\"M49.6 31H134.2L134.2 14H330\"");
        place.Drawing.Text.ShouldContain("class=\"step free\" d=\"M134.2 65H330\"");
        // No measure is named by the one, none is known of the other.
        TopicCharts.Steps(site, site.Words.Topics["certification"]).ShouldBeEmpty();
        TopicCharts.Steps(site, site.Words.Topics["ride-height"]).ShouldBeEmpty();
    }

    [Fact]
    public void Places_of_a_nation_that_count_the_parts_of_a_lift_are_drawn_on_one_scale_with_a_legend_of_what_is_drawn()
    {
        var alone = InventedPlace.With(
            "ride-height",
            """
              - { rule: raise, title: Raising, from: 2010-01-01, sources: [{ cite: code }], beyond: prohibited,
                  tiers: [ { pathway: certificate, within: { total-lift: 120 mm, suspension-lift: 50 mm } } ] }

            """
        );
        TopicCharts.Stacks(alone, SampleVehicle.All).Drawings.ShouldBeEmpty();

        var book = alone.Book;
        var site = new SiteBook(
            alone.Input with
            {
                Book = book with
                {
                    Jurisdictions =
                    [
                        book.Jurisdictions[0],
                        book.Jurisdictions[0] with
                        {
                            Id = "xa-b",
                            Name = "Its part",
                            Within = "xa",
                        },
                        Saying("xa-c", "Left free", new NotRegulated("")),
                        Saying("xa-d", "Unread", new NotEstablished("", null, null)),
                    ],
                },
            }
        );
        var view = TopicCharts.Stacks(site, SampleVehicle.All);
        view.Key.ShouldBe([new("suspension", "suspension")]);
        view.Drawings.Select(each => each.Title)
            .ShouldBe([
                "Four-wheel drive with stability control, without a certificate",
                "Four-wheel drive with stability control, with a certificate",
                "Four-wheel drive without stability control, without a certificate",
                "Four-wheel drive without stability control, with a certificate",
            ]);
        (string, string)[] others = [("Left free", "not regulated"), ("Unread", "not established")];
        view.Drawings[0]
            .Rows.Select(row => (row.Place, row.Suspension))
            .ShouldBe([("The place", "no such way"), ("Its part", "no such way"), .. others]);
        view.Drawings[1].Rows[2..].Select(row => (row.Place, row.Suspension)).ShouldBe(others);
        view.Drawings[1].Rows[0].ShouldBe(new("The place", "50 mm", "no figure of its own", "no figure of its own", "120 mm"));
        view.Drawings[1]
            .Drawing.Text.ShouldContain(
                "aria-label=\"Four-wheel drive with stability control, with a certificate: how high, by jurisdiction\""
            );
        // 120 mm end between lines of 20 mm: the whole width of 485 pixels from 215 on.
        view.Drawings[1].Drawing.Text.ShouldContain("x1=\"215\" y1=\"47\" x2=\"700\" y2=\"47\"");

        Jurisdiction Saying(string id, string name, Content content)
        {
            var place = book.Jurisdictions[0];
            var rule = place.Rules[0];
            return place with
            {
                Id = id,
                Name = name,
                Within = "xa",
                Rules = [rule with { Versions = [rule.Versions[0] with { Content = content }] }],
            };
        }
    }
}
