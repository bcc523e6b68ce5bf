using System.Collections.Immutable;
using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Answers;

/// <summary>How far each measure may still go on each pathway. Derived, on limits of a scenario of our own.</summary>
public sealed class MarginFinderTests
{
    private static readonly string[] Sizes = ["285/70R17", "265/75R16", "265/70R17", "265/65R17", "245/75R16", "33x12.50R15LT", "10.00R20"];

    [Fact]
    [Trait("Basis", "derived")]
    public void Each_measure_reaches_to_its_limit_or_to_what_the_others_leave_of_the_total()
    {
        // 75 mm in all without a certificate: with 20 mm of body 55 are left, the measure's own limit is 50; with 30 mm of suspension 45 of
        // body.
        var margins = Of(Tiers, """ "modification": { "suspension-lift": "30 mm", "body-lift": "20 mm" } """);
        margins
            .Select(margin => (margin.Measure.Name, margin.Now))
            .ShouldBe([("suspension-lift", 30), ("body-lift", 20), ("tyre-diameter-growth", 0)]);
        Certain(margins, "suspension-lift").ShouldBe([UpTo(50), UpTo(75), UpTo(75)]);
        Certain(margins, "body-lift").ShouldBe([UpTo(45), UpTo(120), UpTo(120)]);
        Certain(margins, "tyre-diameter-growth").ShouldBe([UpTo(50), UpTo(200), UpTo(200)]); // twice 25 and twice 100 mm
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_passed_already_leaves_nothing_and_what_is_not_limited_has_no_end()
    {
        var margins = Of(
            """ "tiers": [ { "pathway": "certificate", "within": { "suspension-lift": { "under": "75 mm" } } } ], "beyond":"""
                + """ "prohibited" """,
            """ "modification": { "suspension-lift": "80 mm" } """
        );
        Certain(margins, "suspension-lift")
            .ShouldBe([Reach.None, new Reach(ReachKind.UpTo, 75, false), new Reach(ReachKind.UpTo, 75, false)]);
        Certain(margins, "body-lift").ShouldBe([Reach.None, Reach.None, Reach.None]);
        Certain(Of(""" "not-regulated": "no rule" """, Lift("80 mm")), "body-lift")
            .ShouldBe([Reach.Unlimited, Reach.Unlimited, Reach.Unlimited]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Where_something_is_unknown_what_is_certain_and_what_is_possible_are_told_apart()
    {
        var margin = Of(
                """
                "tiers": [ { "pathway": "no-certificate", "when": { "stability-control": "no" }, "within": { "suspension-lift": "50 mm" } },
                           { "pathway": "no-certificate", "name": "with", "within": { "suspension-lift": "30 mm" } } ],
                           "beyond": "prohibited"
                """,
                Lift("10 mm")
            )
            .Single(each => each.Measure.Name == "suspension-lift")
            .Reaches[0];
        margin.Certain.ShouldBe(UpTo(30));
        margin.Possible.ShouldBe(UpTo(50));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_up_and_down_leaves_room_on_both_sides_and_a_body_block_none_below_nothing()
    {
        // 50 mm up or down: from -30 mm there are 80 mm up to the upper end and 20 mm down to the lower one, and both ends are told.
        var margins = Of(
            """
            "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "at-least": "-40 mm", "at-most": "50 mm" } } },
                       { "pathway": "certificate", "within": { "suspension-lift": { "over": "-75 mm", "at-most": "75 mm" } } } ],
                       "beyond": "prohibited"
            """,
            Lift("-30 mm")
        );
        var lift = margins.Single(each => each.Measure.Name == "suspension-lift");
        lift.Reaches.Select(reach => reach.Certain).ShouldBe([UpTo(50), UpTo(75), UpTo(75)]);
        lift.Downward.Select(reach => reach.Certain)
            .ShouldBe([UpTo(40), new Reach(ReachKind.UpTo, 75, false), new Reach(ReachKind.UpTo, 75, false)]);
        margins.Single(each => each.Measure.Name == "body-lift").Downward.ShouldBeEmpty();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_at_nothing_leaves_nothing_but_what_is_there() =>
        Certain(
            Of(
                """ "tiers": [ { "pathway": "no-certificate", "within": { "body-lift": "0 mm" } } ], "beyond": "prohibited" """,
                Lift("10 mm")
            ),
            "body-lift"
        )[0]
            .ShouldBe(UpTo(0));

    [Fact]
    [Trait("Basis", "published")]
    public void The_sizes_that_fit_stand_in_the_order_of_their_pathway_their_rim_and_their_growth()
    {
        // Handbook diameters (rim code 17 = 432 mm, 16 = 406 mm): 265/65R17 776, 265/70R17 804, 285/70R17 832, 245/70R17 776 (172 mm high),
        // 245/75R16 774, 265/75R16 804 mm. Up to 28 mm without, up to 50 mm with a certificate; 56 mm is too much.
        var book = Stating(
            """
            "tiers": [ { "pathway": "no-certificate", "within": { "tyre-diameter-growth": "20 mm" } }, { "pathway": "certificate",
            "within": { "tyre-diameter-growth": "50 mm" } } ], "beyond": "prohibited"
            """
        );
        book = book with { Reference = book.Reference with { TyreSizes = [.. Sizes.Select(TyreSize.Parse)] } };
        var answer = MarginFinder.Find(
            book,
            Read(
                book,
                """
                "vehicle": { "tyres": [ "265/65R17 112S" ], "tare": "2000 kg", "ratings": { "gvm": "3000 kg", "gcm": "6000 kg",
                "braked-tow": "3000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg" } },
                "modification": { "tyre-diameter-growth": "10 mm" }
                """
            )
        );
        answer.SizesTried.ShouldBe(7);
        answer
            .Sizes.Select(fit => (fit.Size.Designation, fit.Outcome.Worst, fit.SameRim, fit.Growth.Growth.Amount))
            .ShouldBe([
                ("265/65R17", Pathway.NoCertificate, true, 0),
                ("245/75R16", Pathway.NoCertificate, false, -2),
                ("265/70R17", Pathway.Certificate, true, 28),
                ("33x12.50R15LT", Pathway.Certificate, false, 50),
                ("265/75R16", Pathway.Certificate, false, 28),
            ]);
        // As marked.
        answer.Sizes[0].Loads.Select(load => (load.Index!.Value, load.MarginKg)).ShouldBe([(112, 2240 - 1450), (112, 2240 - 1750)]);
        // 725 kg a tyre: 97 = 730 kg; 875 kg: 103 = 875 kg.
        answer.Sizes[2].Loads.Select(load => (load.Index!.Value, load.MarginKg)).ShouldBe([(97, 1460 - 1450), (103, 1750 - 1750)]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_left_of_payload_and_trailer_is_told_by_each_limit_that_is_known()
    {
        var book = Stating(Tiers);
        var answer = MarginFinder.Find(
            book,
            Read(
                book,
                """
                "vehicle": { "tare": "2000 kg", "ratings": { "gvm": "3000 kg", "gcm": "6000 kg", "braked-tow": "3000 kg" },
                "towbar": { "mass": "2800 kg" }, "tanks": [ ] },
                "measured": { "weighbridge": { "mass": "2100 kg", "mass-state": "unladen" } },
                "trailer": { "mass": "2000 kg", "ball-load": "200 kg", "ratings": { "atm": "2500 kg" }, "coupling": { "mass": "3500 kg" } }
                """
            )
        );
        answer.Payload.Single(check => check.LimitFact == "vehicle.ratings.gvm").MarginKg.ShouldBe((Fraction)700); // 3000 - 2100 - 200
        answer
            .Trailer.Select(room => (room.Limit, room.AloneKg))
            .ShouldBe([
                ("GCM less the vehicle as loaded", 3900),
                ("tow rating of the vehicle, braked trailer", 3000),
                ("ATM of the trailer", 2500),
                ("towbar", 2800),
                ("coupling", 3500),
            ]);
        answer.Missing.ShouldContain(missing => missing.Fact == "vehicle.tyres");
        answer.Sizes.ShouldBeEmpty();
        answer.SizesTried.ShouldBe(0);
        answer.Cautions.ShouldBe(["not legal advice"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Without_masses_nothing_is_said_of_payload_and_the_margins_are_those_of_the_place_asked_for()
    {
        var book = Stating(Tiers);
        var answer = MarginFinder.Find(book, Read(book, Lift("10 mm")), "au-b");
        (answer.Jurisdiction, answer.Payload.Length, answer.Trailer.Length).ShouldBe(("au-b", 0, 0));
        Certain(answer.Margins, "suspension-lift")[0].ShouldBe(Reach.None); // the place has no rule
        Should.Throw<ArgumentException>(() => MarginFinder.Find(book, Read(book, Lift("10 mm")), "au-c"));
    }

    private static Reach UpTo(int value) => new(ReachKind.UpTo, value, true);

    private static Reach[] Certain(IEnumerable<Margin> margins, string measure) =>
        [.. margins.Single(each => each.Measure.Name == measure).Reaches.Select(reach => reach.Certain)];

    private static ImmutableArray<Margin> Of(string content, string more)
    {
        var book = Stating(content);
        return MarginFinder.Find(book, Read(book, more)).Margins;
    }
}
