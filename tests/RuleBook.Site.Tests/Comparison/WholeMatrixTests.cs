using System.Collections.Immutable;
using Fractions;
using RuleBook.Site.Comparison;

namespace RuleBook.Site.Tests.Comparison;

/// <summary>
/// The comparison of an invented place read whole, a line a row and a line a cell, for a wagon of 3000 kg and a car of 2000 kg: what binds
/// above the one or below the other binds neither.
/// </summary>
public sealed class WholeMatrixTests
{
    private static readonly ComparedVehicle Wagon = Vehicle("wagon", "yes", 3000);
    private static readonly ComparedVehicle Car = Vehicle("car", "no", 2000);

    [Fact]
    public void Each_question_is_answered_for_each_vehicle_with_its_alternatives_and_how_it_is_known()
    {
        var site = InventedPlace.With(
            "ride-height",
            """
              - { rule: wagons, title: Wagons, from: 2010-01-01, sources: [{ cite: code, clause: "1" }], for: { four-wheel-drive: yes },
                  measured: { between: [wheel-centre, guard-edge], mass-state: unladen, total: [suspension-lift, body-lift, tyre-lift] },
                  tiers: [
                    { pathway: no-certificate, within: { suspension-lift: 50 mm, body-lift: 0 mm } },
                    { pathway: no-certificate, when: { stability-control: yes }, within: { total-lift: 75 mm,
                        suspension-lift: { at-least: 0 mm, at-most: 60 mm }, track-increase: none } },
                    { pathway: certificate, within: { total-lift: not-established } } ],
                  beyond: approval }
              - { rule: heavy, title: Heavy, from: 2010-01-01, sources: [{ cite: code }], for: { gvm: { at-least: 3000 kg } },
                  tiers: [ { pathway: certificate, within: { total-lift: 20 mm } } ], beyond: prohibited }
              - { rule: heavier, title: Heavier, from: 2010-01-01, sources: [{ cite: code }], for: { gvm: { over: 3000 kg } },
                  tiers: [], beyond: prohibited }
              - { rule: light, title: Light, from: 2010-01-01, sources: [{ cite: code }], for: { gvm: { under: 2000 kg } },
                  tiers: [], beyond: prohibited }
              - { rule: cars, title: Cars, from: 2010-01-01, sources: [{ cite: code }], for: { four-wheel-drive: no }, not-regulated: Free. }

            """
        );
        var matrices = Matrices(site, opens: true);
        Lines(matrices.All().Single(matrix => matrix.Id == "ride-height"))
            .ShouldBe(
                """
                Ride height, topics/ride-height.html
                The place (xa, jurisdictions/xa.html), Wagons, for 0 and first
                  Free up to: no-certificate A suspension lift alone: suspension 50 mm / no-certificate B suspension lift and increase in wheel track: 75 mm in all: suspension 60 mm, increase in wheel track without limit, where electronic stability control: yes [authority's text, w1, jurisdictions/xa.html#ride-height.wagons]
                  Certified up to: not-established: how far is not established [, w1, jurisdictions/xa.html#ride-height.wagons]
                  With approval first, up to: approval: whatever is not named before [authority's text, w1, jurisdictions/xa.html#ride-height.wagons]
                  Beyond that: approval: with approval first [authority's text, w1, jurisdictions/xa.html#ride-height.wagons]
                  What counts: limit: suspension lift + body lift + half the tyre growth [, , jurisdictions/xa.html#ride-height.wagons]
                  Measured how: limit: wheel centre to guard edge, at the unladen mass [authority's text, w1, jurisdictions/xa.html#ride-height.wagons]
                The place (xa, jurisdictions/xa.html), Heavy, for 0 and first
                  Free up to: limit: no such way [authority's text, w2, jurisdictions/xa.html#ride-height.heavy]
                  Certified up to: certificate: 20 mm in all [authority's text, w2, jurisdictions/xa.html#ride-height.heavy]
                  With approval first, up to: limit: no such way [authority's text, w2, jurisdictions/xa.html#ride-height.heavy]
                  Beyond that: prohibited: not allowed [authority's text, w2, jurisdictions/xa.html#ride-height.heavy]
                  What counts: not-established: not established [, , jurisdictions/xa.html#ride-height.heavy]
                  Measured how: not-established: not established [, , jurisdictions/xa.html#ride-height.heavy]
                The place (xa, jurisdictions/xa.html), Cars, for 1
                  Free up to: not-regulated: not regulated [authority's text, w3, jurisdictions/xa.html#ride-height.cars]
                  Certified up to: not-regulated: not regulated [authority's text, w3, jurisdictions/xa.html#ride-height.cars]
                  With approval first, up to: not-regulated: not regulated [authority's text, w3, jurisdictions/xa.html#ride-height.cars]
                  Beyond that: not-regulated: not regulated [, , jurisdictions/xa.html#ride-height.cars]
                  What counts: not-regulated: not regulated [, , jurisdictions/xa.html#ride-height.cars]
                  Measured how: not-regulated: not regulated [, , jurisdictions/xa.html#ride-height.cars]
                """
            );
        Lines(matrices.All().Single(matrix => matrix.Id == "towing"))
            .ShouldBe(
                """
                Towing, topics/towing.html
                The place (xa, jurisdictions/xa.html), , for * and first
                  Free up to: not-established: not established [, , jurisdictions/xa.html]
                """
            );
        matrices
            .All()
            .Select(matrix => matrix.Id)
            .ShouldBe([.. matrices.All().Select(matrix => matrix.Id).Except(["certification"]), "certification"]);
        matrices
            .Where.Views.Select(view => $"{view.Id} {view.Title}: {view.Clause}, {view.More} more")
            .ShouldBe(["w1 Wagons: The code, 1, 0 more", "w2 Heavy: The code, 0 more", "w3 Cars: The code, 0 more"]);
        Lines(Matrices(site, opens: false).All().Single(matrix => matrix.Id == "ride-height")).ShouldNotContain(", w1, ");
    }

    [Fact]
    public void Of_two_versions_that_may_be_in_force_each_has_a_row_that_says_so_and_what_is_disputed_is_told()
    {
        var site = InventedPlace.With(
            "ride-height",
            """
              - rule: raise
                title: Raising
                versions:
                  - { from: 2010-01-01, sources: [{ cite: code }], tiers: [ { pathway: no-certificate, within: { suspension-lift: 30 mm } } ],
                      beyond: prohibited, disputed: [ { about: whether, because: It is so., readings: [
                        { says: one, sources: [{ cite: code }] }, { says: other, sources: [{ cite: code }] } ] } ] }
                  - { from: "[2026-01-01..2027-12-31]", sources: [{ cite: code }],
                      tiers: [ { pathway: no-certificate, within: { suspension-lift: 40 mm } } ] }

            """
        );
        Lines(Matrices(site, opens: true).All().Single(matrix => matrix.Id == "ride-height"))
            .ShouldBe(
                """
                Ride height, topics/ride-height.html
                The place (xa, jurisdictions/xa.html), Raising, for * and first
                  Free up to: no-certificate: suspension 30 mm [day open, disputed, authority's text, w1, jurisdictions/xa.html#ride-height.raise]
                  Beyond that: prohibited: not allowed [day open, disputed, authority's text, w1, jurisdictions/xa.html#ride-height.raise]
                The place (xa, jurisdictions/xa.html), Raising, for * and first
                  Free up to: no-certificate: suspension 40 mm [day open, authority's text, w2, jurisdictions/xa.html#ride-height.raise]
                  Beyond that: not-established: not established [day open, , jurisdictions/xa.html#ride-height.raise]
                """
            );
    }

    [Fact]
    public void A_nation_is_compared_with_its_states_and_nations_without_any_stand_together()
    {
        var nation = CompareGroup.Of(InventedBook.Site).ShouldHaveSingleItem();
        (nation.Id, nation.Name, nation.Path).ShouldBe(("xa", "The nation", "compare.html"));
        nation.Places.Select(place => place.Id).ShouldBe(["xa", "xa-n"]);
        var rule = "  - { rule: raise, title: Raising, from: 2010-01-01, sources: [{ cite: code }], not-regulated: Free. }\n";
        var all = CompareGroup.Of(InventedPlace.With("ride-height", rule)).ShouldHaveSingleItem();
        (all.Id, all.Name, all.Path).ShouldBe(("all", "all jurisdictions", "compare.html"));
        all.Days.ShouldBe([new DateOnly(2010, 1, 1)]);
    }

    private static Matrices Matrices(SiteBook site, bool opens) =>
        new(site, new CompareGroup("xa", "The place", site.Places, [Wagon, Car], [], true), new KnownRows(site), site.Day, opens);

    private static ComparedVehicle Vehicle(string id, string driven, int gvm) =>
        new(
            id,
            "xa",
            id,
            ImmutableSortedDictionary<string, string>.Empty.Add("four-wheel-drive", driven),
            ImmutableDictionary<string, Fraction>.Empty.Add("gvm", gvm)
        );

    private static string Lines(Matrix matrix) =>
        string.Join(
            '\n',
            matrix
                .Rows.SelectMany(row =>
                    row.Cells.Zip(matrix.Questions)
                        .Select(each =>
                            $"  {each.Second.Title}: {string.Join(" / ", each.First.Lines.Select(Line))} "
                            + $"[{each.First.Standing}, {each.First.Where}, {each.First.Url}]"
                        )
                        .Prepend($"{row.Name} ({row.Place}, {row.Url}), {row.About}, for {row.Vehicles}{(row.First ? " and first" : "")}")
                )
                .Prepend($"{matrix.Title}, {matrix.Url}")
        );

    private static string Line(MatrixLine line) =>
        $"{line.Kind}{(line.Name.Length > 0 ? " " : "")}{line.Name}: {line.Text}{(line.When.Length > 0 ? ", where " : "")}{line.When}";
}
