using Fractions;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Tests.Answers;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>
/// What is left, what would mend a job and what stands in its way, from records made by hand in which each figure is another one; beside
/// them what a person is to read, written by hand.
/// </summary>
[Trait("Basis", "derived")]
public sealed class MadePartTests
{
    private static readonly Unit Kg = Unit.Find("kg")!;

    [Fact]
    public void What_a_job_leaves_is_told_by_pathway_by_rating_and_by_size()
    {
        var page = new Told();
        MarginText.Write(
            page,
            new MarginAnswer
            {
                Job = "W-1",
                Jurisdiction = "au-a",
                JurisdictionName = "State A",
                On = Made.Day("2026-11-25"),
                Book = "made",
                Margins =
                [
                    new Margin(
                        Made.MeasureOf("suspension-lift"),
                        30,
                        [
                            new PathwayReach(Pathway.NoCertificate, UpTo(50, true), UpTo(50, true)),
                            new PathwayReach(Pathway.Certificate, UpTo(75, false), Reach.Unlimited),
                            new PathwayReach(Pathway.Approval, UpTo(75, false), Reach.Unlimited), // no further than a certificate
                        ]
                    ),
                    new Margin(
                        Made.MeasureOf("body-lift"),
                        null,
                        [
                            new PathwayReach(Pathway.NoCertificate, UpTo(0, true), UpTo(0, true)),
                            new PathwayReach(Pathway.Certificate, Reach.None, Reach.None),
                        ]
                    )
                    {
                        Downward = [new PathwayReach(Pathway.NoCertificate, Reach.Unlimited, Reach.Unlimited)],
                    },
                ],
                Payload =
                [
                    new LoadCheck("gvm", "vehicle against its GVM", 2060, 2200, "g"),
                    new LoadCheck("rear-axle", "rear axle", 1100, 1050, "r"),
                ],
                Trailer = [new TrailerRoom("GCM less the vehicle", 3900), new TrailerRoom("tow rating", 3000)],
                SizesTried = 9,
                Sizes =
                [
                    Fit("265/70R17", Pathway.NoCertificate, Pathway.NoCertificate) with
                    {
                        Speedometer = [SpeedometerFinding.ReadsLow],
                    },
                    Fit("285/70R17", Pathway.NoCertificate, Pathway.Approval, (1650, 101, null, null), (9000, null, null, null)) with
                    {
                        SameRim = false,
                        TrueSpeed = new DerivedFigure(null, ""),
                    },
                    Fit("255/70R17", Pathway.Certificate, Pathway.Certificate, (1650, 101, 101, 0), (1800, 105, 105, 50)),
                    Fit("245/70R17", Pathway.Approval, Pathway.Approval, (1650, 101, 115, 780), (2100, 109, 115, 330)),
                    Fit("305/70R17", Pathway.Certificate, Pathway.Prohibited),
                ],
                SizeSources = [new CitedSource(Made.Cite("law"), Made.Source("au", "law"))],
                Missing = [new MissingFact("vehicle.wheelbase", "the mass on each axle")],
                Cautions = ["mind"],
            }
        );
        page.Lines.ShouldBe([
            "What is left, the rest of the job unchanged.",
            "Job W-1. By the rules of State A (au-a) as on 25 November 2026.",
            "Suspension-lift (now 30 mm):",
            "- allowed without a certificate: at most 50 mm",
            "- allowed with a certificate: under 75 mm (perhaps without limit: what holds is not known)",
            "Body-lift:",
            "- allowed without a certificate: up, nothing; down, no limit",
            "- allowed with a certificate: not on this pathway",
            "Payload:",
            "ok vehicle against its GVM: 2060 of 2200 kg, 140 kg left",
            "x  rear axle: 1100 of 1050 kg, 50 kg too much",
            "Trailer, weighed alone:",
            "- GCM less the vehicle: 3900 kg",
            "- tow rating: 3000 kg (governs)",
            "Tyre sizes that fit: 4 of 9 listed:",
            "size|growth|load index|true speed|needs",
            "265/70R17|28 mm, 3.6 %|?|103.6 (low)|no certificate",
            "285/70R17 *|28 mm, 3.6 %|beyond the table|?|no certificate or approval",
            "255/70R17|28 mm, 3.6 %|105 or more|103.6|certificate",
            "245/70R17|28 mm, 3.6 %|115: 330 kg left|103.6|approval",
            "* other rims than the placard's sizes.",
            "load index: the least for the axle ratings that will apply, or the one marked with what it leaves on the tighter axle.",
            "true speed: km/h at 100 km/h shown; (low) = the speedometer would read low, which its rule forbids.",
            "?  not established whether these are allowed: 305/70R17",
            "law, 1 (Somebody; the authority's own text; checked 2026-01-01)",
            "What is missing, and what it would add:",
            "?  vehicle.wheelbase would give: the mass on each axle",
            "Bear in mind:",
            "- mind",
        ]);
    }

    public static TheoryData<RemedyLever, string, string?, string[], string, string> Changes() =>
        new()
        {
            { RemedyLever.SuspensionLift, "", "50 mm", [], "suspension lift 50 mm", "suspension-lift" },
            { RemedyLever.SuspensionLift, "", "0 mm", [], "no suspension lift", "suspension-lift" },
            { RemedyLever.BodyLift, "", "25 mm", [], "body lift 25 mm", "body-lift" },
            { RemedyLever.Tyres, "modification.tyres", "265/65R17", [], "tyres 265/65R17", "tyres" },
            { RemedyLever.Tyres, "modification.growth", "20 mm", [], "growth in tyre diameter 20 mm", "tyres" },
            { RemedyLever.ConstantLoad, "", "12 kg", ["rear axle"], "12 kg of constant load over the rear axle", "constant-load" },
            { RemedyLever.Gvm, "", "3600 kg", [], "re-rate the GVM to 3600 kg", "gvm" },
            { RemedyLever.Accessories, "", null, ["bar", "winch"], "leave off bar and winch (90 kg)", "accessories" },
            { RemedyLever.Trailer, "", "2800 kg", [], "trailer of at most 2800 kg", "trailer" },
            { RemedyLever.BallLoad, "", "250 kg", [], "ball load of at most 250 kg", "ball-load" },
            { RemedyLever.Day, "on", "2027-07-01", [], "wait until 1 July 2027", "day" },
        };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_change_is_told_as_what_one_would_do(RemedyLever lever, string path, string? to, string[] names, string told, string word)
    {
        var now = Assess(Stating(Tiers), Lift("60 mm"));
        var change = new RemedyChange(lever, path, to is null ? null : "then", to, [.. names], 90, Kg);
        var remedy = new Remedy(new RemedyGoal(Pathway.Certificate), [change], now, [], []);
        RemedyText.Changes(remedy with { Changes = [change, change] }).ShouldBe($"{told} and {told}");
        RemedyJson.Write(now, [remedy]).ShouldContain($"\"lever\": \"{word}\"");
        var page = new Told();
        RemedyText.Write(page, now, [remedy]);
        page.Lines.ShouldContain(
            to is null or "0 mm" ? $"- {told}"
            : lever == RemedyLever.Gvm ? $"- {told} (90 kg apart)"
            : $"- {told} (90 kg less)"
        );
    }

    [Fact]
    public void Where_nothing_mends_a_job_the_reason_is_told()
    {
        var forbidden = Assess(Stating(Tiers), Lift("80 mm"));
        Nothing(forbidden)
            .ShouldBe("No change was found that mends it. In the way stands: suspension-lift 80 mm, limit 75 mm: 5 mm too much.");
        Nothing(Assess(Stating(Tiers), Lift("unknown"))).ShouldBe("No change was found that mends it.");
        Nothing(Assess(Stating(Tiers), Lift("40 mm")))
            .ShouldBe("There is nothing to mend: it is allowed as planned, without a certificate.");
        Nothing(Assess(Stating(Tiers), """ "vehicle": { "category": "MC" } """))
            .ShouldBe("There is nothing to mend: no change to the vehicle is stated that a rule in the book could judge.");
        Nothing(Assess(Stating(""" "not-established": { "ask": "Office C." } """), Lift("60 mm")))
            .ShouldBe("No change mends it, for what holds is not known: nobody has established the limits for raise. Ask Office C.");
        var unjudged = Assess(Stating(Tiers), """ "modification": { "suspension-lift": "60 mm", "guard-flare": "30 mm" } """);
        Nothing(unjudged).ShouldBe("No change mends it: nobody's rule in the book speaks of the guard-flare. Ask Office A.");
        RemedyText.Line(unjudged, []).ShouldBe(""); // what nobody judged no change mends
        RemedyText.Line(forbidden, []).ShouldBe("");
        RemedyText.Line(forbidden with { Blockers = [Over] }, []).ShouldBe("no change was found that mends it");
        var remedy = new Remedy(RemedyGoal.NoBlocker, [], forbidden, [], []);
        RemedyText.Nothing(forbidden, [remedy]).ShouldBeNull();

        static string? Nothing(Assessment now) => RemedyText.Nothing(now, []);
    }

    /// <summary>The goals in their order: that nothing stands in the way, then the furthest from being free first.</summary>
    [Fact]
    public void What_a_change_leads_to_is_told_with_what_stays_open()
    {
        var now = Assess(Stating(Tiers), Lift("80 mm"));
        var free = Assess(Stating(Tiers), Lift("40 mm"));
        var open = Assess(Stating(Tiers), Lift("unknown"));
        var partly = Assess(Stating(Tiers), $$""" "vehicle": { "tare": "2400 kg" }, {{Lift("40 mm")}} """); // against no rating
        var unjudged = Assess(Stating(Tiers), """ "modification": { "suspension-lift": "40 mm", "guard-flare": "30 mm" } """);
        Remedy To(string lift, Assessment after, Pathway? within = Pathway.Certificate) =>
            new(new RemedyGoal(within), [new RemedyChange(RemedyLever.SuspensionLift, "", "80 mm", lift, [], null, null)], after, [], []);

        Line(To("50 mm", free)).ShouldBe("suspension lift 50 mm: no certificate");
        Line(To("50 mm", open)).ShouldBe("suspension lift 50 mm: still undecided");
        Line(To("50 mm", now)).ShouldBe("suspension lift 50 mm: not allowed");
        Line(To("50 mm", free with { Blockers = [Over] }))
            .ShouldBe("suspension lift 50 mm: allowed without a certificate, still not as planned");
        Line(To("50 mm", unjudged)).ShouldBe("suspension lift 50 mm: no certificate, guard-flare unjudged");
        RemedyText.Line(unjudged, [To("50 mm", unjudged)]).ShouldBe("suspension lift 50 mm: no certificate; still not judged: guard-flare");
        Line(To("50 mm", partly)).ShouldBe("suspension lift 50 mm: no certificate; what is left open above stays so");
        Line(To("1 mm", free), To("2 mm", free, null)).ShouldBe("suspension lift 2 mm: no certificate"); // a blocker first
        Line(To("1 mm", free, Pathway.NoCertificate), To("2 mm", free)).ShouldBe("suspension lift 2 mm: no certificate");
        // Three that may still be forbidden, and one that is not: that one is told.
        Line(To("4 mm", open), To("3 mm", open), To("2 mm", open), To("1 mm", free))
            .ShouldBe(
                "suspension lift 4 mm: still undecided, or suspension lift 3 mm: still undecided, or suspension lift 1 mm: no certificate"
            );
        Then(To("50 mm", free)).ShouldBe("then: allowed without a certificate");
        Then(To("50 mm", unjudged)).ShouldBe("then: allowed without a certificate; not judged: guard-flare");
        Then(To("50 mm", partly)).ShouldBe("then: allowed without a certificate; what the answer leaves open stays so");
        Then(To("50 mm", Assess(Stating(Tiers), """ "vehicle": { "category": "MC" } """)))
            .ShouldBe("then: nothing that was judged stands in the way");

        string Line(params Remedy[] remedies) => RemedyText.Line(now, remedies);
        string Then(Remedy remedy)
        {
            var page = new Told();
            RemedyText.Write(page, now, [remedy]);
            return page.Lines.Single(line => line.StartsWith("then: ", StringComparison.Ordinal));
        }
    }

    private static readonly Blocker Over = new(BlockerKind.OverRating, "gvm", "GVM")
    {
        Value = 3600,
        Limit = 3500,
        Unit = Kg,
    };

    public static TheoryData<Blocker, string, string> Blockers() =>
        new()
        {
            { Over with { State = "loaded" }, "100 kg over GVM when loaded (3600 of 3500 kg)", "100 kg over when loaded" },
            { Over with { AtLeast = true }, "at least 100 kg over GVM (3600 of 3500 kg)", "at least 100 kg over" },
            {
                Over with
                {
                    TooCloseWithin = 120,
                },
                "100 kg over GVM (3600 of 3500 kg, too close to call: weighed to within 120 kg)",
                "100 kg over"
            },
            {
                Over with
                {
                    Kind = BlockerKind.RefusedRating,
                    State = "weighed-alone",
                },
                "100 kg over GVM as it is now as weighed (3600 of 3500 kg); the higher one asked for does not count",
                "100 kg over as weighed"
            },
            {
                Over with
                {
                    Kind = BlockerKind.NotCertifiable,
                    LimitWhat = "axles",
                },
                "GVM not certifiable: 100 kg over what the axles carry together (3600 of 3500 kg)",
                "GVM not certifiable: 100 kg over what the axles carry together (3600 of 3500 kg)"
            },
            { Of(BlockerKind.RuleOfUse), "forbidden by a rule of use: flare", "forbidden by a rule of use: flare" },
            {
                Of(BlockerKind.NotJudged),
                "not judged: no rule in the book speaks of the flare",
                "not judged: no rule in the book speaks of the flare"
            },
            { Of(BlockerKind.Unsafe), "flare", "flare" },
            { Of(BlockerKind.Contradicted) with { Why = "two figures" }, "two figures", "two figures" },
        };

    [Theory]
    [MemberData(nameof(Blockers))]
    public void A_blocker_says_by_how_much_over_what_and_when(Blocker blocker, string sentence, string brief)
    {
        BlockerText.Sentence(blocker).ShouldBe(sentence);
        BlockerText.Short(blocker).ShouldBe(brief);
    }

    /// <summary>A rule of use with two ways, of which one lacks a figure and a condition, and both lack another.</summary>
    [Fact]
    public void A_rule_of_use_that_is_passed_says_what_each_way_lacks_and_what_both_lack_once()
    {
        Term Named(string name) => new(name, name, name, Made.Mark);
        var limit = Made.AtMost(Made.Lift, 50);
        var check = new LimitCheck(Made.Tier(Pathway.NoCertificate, limit), Made.MeasureOf(Made.Lift), limit, Interval.Of(60), Truth.No);
        var way = new ClosedTier(check.Tier, [check], [Named("lamp"), Named("sign")], []);
        var other = way with { Limits = [], Conditions = [Named("flag"), Named("sign")] };
        Sentence(way)
            .ShouldBe(
                "past a rule of use, raised vehicles: suspension-lift 60 mm, limit 50 mm: 10 mm too much, not met: lamp, not met: sign"
            );
        Sentence(way, other)
            .ShouldBe(
                "past a rule of use, raised vehicles: suspension-lift 60 mm, limit 50 mm: 10 mm too much, not met: lamp; or not met: flag; "
                    + "also not met: sign"
            );

        static string Sentence(params ClosedTier[] past) =>
            BlockerText.Sentence(new Blocker(BlockerKind.RuleOfUse, "raise", "Raised vehicles") { Past = [.. past] });
    }

    private static Blocker Of(BlockerKind kind) => new(kind, "flare", "flare");

    private static Reach UpTo(int value, bool closed) => new(ReachKind.UpTo, value, closed);

    private static SizeFit Fit(string size, Pathway best, Pathway worst, params (int Rating, int? Needed, int? Index, int? Left)[] loads) =>
        new(
            TyreSize.Parse(size),
            new Outcome(best, worst),
            true,
            TyreGrowth.Of(TyreSize.Parse("265/70R17"), [TyreSize.Parse("265/65R17")], DiameterBasis.Handbook) with
            {
                Growth = new DerivedFigure(28, ""),
                GrowthPercent = new DerivedFigure(new Fraction(36, 10), ""),
            },
            new DerivedFigure(new Fraction(1036, 10), ""),
            100,
            [],
            [
                .. loads.Select(load => new SizeLoad(
                    new LoadIndexNeed(Axle.Front, load.Rating, 2, load.Needed is { } needed ? new LoadIndex(needed) : null),
                    load.Index is { } index ? new LoadIndex(index) : null,
                    load.Left is { } left ? (Fraction?)left : null
                )),
            ]
        );
}
