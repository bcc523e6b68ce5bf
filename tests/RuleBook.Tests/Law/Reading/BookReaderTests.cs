using Fractions;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Answers;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Tests.Law.Reading;

/// <summary>A book is read as it is written. Derived: what the files say.</summary>
public sealed class BookReaderTests
{
    private static readonly Book Book = Files.Sound();
    private static readonly Jurisdiction State = Book.Jurisdiction("xa")!;

    [Fact]
    [Trait("Basis", "derived")]
    public void The_words_are_read_with_their_units_and_places()
    {
        var words = Book.Vocabulary;
        words.Measures.Keys.Order().ShouldBe(["built", "doors", "suspension-lift", "total-lift", "track"]);
        words
            .Measures["suspension-lift"]
            .ShouldSatisfyAllConditions(
                measure => measure.Unit.Symbol.ShouldBe("mm"),
                measure => measure.IfAbsent.ShouldBe(Fraction.Zero),
                measure => measure.IsDerived.ShouldBeFalse(),
                measure => measure.NeedsOwnRule.ShouldBeFalse(),
                measure => measure.IsDate.ShouldBeFalse(),
                measure => measure.Job.ShouldBe("modification.suspension-lift")
            );
        words
            .Measures["total-lift"]
            .ShouldSatisfyAllConditions(
                measure => measure.IfAbsent.ShouldBeNull(),
                measure => measure.IsDerived.ShouldBeTrue(),
                measure => measure.NeedsOwnRule.ShouldBeTrue()
            );
        words.Measures["built"].IsDate.ShouldBeTrue();
        words.Measures["doors"].Unit.Symbol.ShouldBe("");
        words.Facts["category"].Values.ShouldBe(["MC", "NA"]); // the categories stand in a list of their own
        words.Facts["stability-control"].Values.ShouldBe(["yes", "no"]);
        words.Conditions.Keys.ShouldBe(["lane-change-test"]);
        words.Pathways.Keys.ShouldBe(["certificate"]);
        words.Topics["ride-height"].OfUse.ShouldBeFalse();
        words.Naming("ride-height").Select(measure => measure.Name).ShouldBe(["suspension-lift"]);
        words.Topics["certification"].OfUse.ShouldBeTrue();
        Book.Cautions.ShouldBe(["not legal advice"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_jurisdiction_says_where_it_lies_who_is_asked_and_what_is_covered()
    {
        Book.Jurisdictions.Select(place => place.Id).ShouldBe(["au", "xa"]);
        Book.Jurisdictions[0].Registers.ShouldBeFalse();
        Book.Jurisdictions[0].RegistersNote.ShouldBe("the states do");
        State.Registers.ShouldBeTrue();
        State.Within.ShouldBe("au");
        State.Aliases.ShouldBe(["old-xa"]);
        State.DecidedBy.ShouldBe("work");
        State.Ask.ShouldBe(new Authority("Office", "https://example.org/"));
        State
            .Coverage.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(each => each.State.ShouldBe("partial"), each => each.Lacks.ShouldBe("towing"));
        State
            .Cautions.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.Text.ShouldBe("take care"),
                each => each.When.Tests.ShouldHaveSingleItem().OneOf.ShouldBe(["yes"]),
                each => each.Sources.Length.ShouldBe(1)
            );
        State
            .Sources.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.ReadAs.ShouldBe(ReadAs.Secondary),
                each => each.Edition.ShouldBe("3"),
                each => each.Dated.ShouldBe(Made.Date("2018-10")),
                each => each.Checked.ShouldBe(Made.Date("2026-11-25")),
                each => each.RecheckAfter.ShouldBe(Made.Date("2027-11")),
                each => each.Aliases.ShouldBe(["old-law"]),
                each => each.Note.ShouldBe("read twice"),
                each => each.Jurisdiction.ShouldBe("xa")
            );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rule_and_a_version_stated_in_full_are_read_tier_by_tier()
    {
        var rule = State.Rules.ShouldHaveSingleItem();
        rule.Id.ShouldBe("xa/ride-height/raise");
        rule.Aliases.ShouldBe(["lift"]);
        rule.DecidedBy.ShouldBe("inspection");
        rule.GovernedByTravel.ShouldBeTrue();
        rule.For.Tests.ShouldHaveSingleItem().OneOf.ShouldBe(["MC", "NA"]);

        var version = rule.Versions[0];
        (version.From, version.Until, version.Note).ShouldBe((Made.Date("2012-01-01"), Made.Date("2018-10-26"), "first"));
        version.Decides.ShouldBeTrue();
        version
            .Sources.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.Cite.ShouldBe("law"),
                each => each.Clause.ShouldBe("4.2"),
                each => each.Note.ShouldBe("table")
            );
        version.Measured!.ShouldSatisfyAllConditions(
            each => each.Between.ShouldBe(["wheel-centre", "guard-edge"]),
            each => each.MassState.ShouldBe("unladen"),
            each => each.Total.ShouldBe(["suspension-lift"])
        );
        var stated = version.Content.ShouldBeOfType<Stated>();
        stated.Beyond.ShouldBe(Pathway.Prohibited);
        stated
            .Tiers.Select(tier => (tier.Name, tier.Pathway))
            .ShouldBe([("no-certificate", Pathway.NoCertificate), ("engineered", Pathway.Certificate)]);
        stated.Tiers[0].Provided.ShouldBe(["lane-change-test"]);
        stated.Tiers[0].When.Tests.ShouldBeEmpty();
        stated.Tiers[1].Codes.ShouldBe(["LS9"]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Limits_say_at_which_end_they_hold_and_four_things_are_kept_apart()
    {
        var tiers = ((Stated)State.Rules[0].Versions[0].Content).Tiers;
        tiers[0]
            .Limits.Select(limit => (limit.Measure, limit.Kind, limit.Bounds))
            .ShouldBe([
                // A bare figure is the most that is allowed, and reached is within.
                ("suspension-lift", LimitKind.Bounded, new Bounds(null, new Bound(50, true))),
                ("total-lift", LimitKind.None, null),
            ]);
        tiers[1]
            .Limits.Select(limit => (limit.Kind, limit.Bounds))
            .ShouldBe([
                (LimitKind.Bounded, new Bounds(new Bound(new Fraction(254, 10), true), new Bound(75, true))),
                (LimitKind.NotEstablished, null),
            ]);
        tiers[1]
            .When.Tests.Select(test => (test.Fact, test.Bounds))
            .ShouldBe([
                ("stability-control", null),
                ("track", new Bounds(new Bound(1400, false), new Bound(1600, false))),
                (
                    "built",
                    new Bounds(new Bound(Made.Day("2010-01-01").DayNumber, true), new Bound(Made.Day("2020-01-01").DayNumber, false))
                ),
            ]);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Adoption_what_nobody_knows_what_is_announced_and_what_is_proposed_are_read()
    {
        var versions = State.Rules[0].Versions;
        var adoption = versions[1].Content.ShouldBeOfType<Adoption>();
        (adoption.Rule, adoption.AsOf).ShouldBe(("au/ride-height/raise", Made.Day("2018-01-01")));
        adoption
            .Exceptions.Select(each =>
                (each.Tier, each.Limits.Length, each.Provided.HasValue, each.Dropped, each.Added?.Pathway, each.Sources.Length)
            )
            .ShouldBe([
                ("certificate", 1, false, false, null, 0),
                ("approval", 0, false, true, null, 0),
                (null, 0, false, false, Pathway.Approval, 1),
                ("no-certificate", 0, true, false, null, 0),
            ]);
        (versions[2].From, versions[2].InForceBy).ShouldBe((null, Made.Date("2021")));
        versions[2].Content.ShouldBeOfType<Stated>().Beyond.ShouldBeNull();
        versions[3].Announced.ShouldBe(Made.Date("2027-07-01"));
        versions[3].Decides.ShouldBeFalse();
        versions[3].Content.ShouldBe(new NotEstablished("Office", "the notice", "au/ride-height/raise"));
        versions[4].Proposed.ShouldBeTrue();
        versions[4].Decides.ShouldBeFalse();
        versions[4].Content.ShouldBe(new NotRegulated("no rule"));
        versions[4]
            .Disputes.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.Readings.ShouldHaveSingleItem().Sources.Length.ShouldBe(1),
                each => each.Taken.ShouldBe("50"),
                each => each.Because.ShouldBe("newer")
            );
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_rule_taken_over_as_amended_names_no_day() =>
        Files.Wrong("jurisdictions/xa/ride-height", "\"as-of\": \"2018-01-01\"", "\"as-of\": \"amended\"").ShouldBeEmpty();

    [Fact]
    [Trait("Basis", "derived")]
    public void A_scheme_says_who_certifies_what_is_issued_what_comes_first_and_what_it_costs()
    {
        var scheme = State.Schemes.ShouldHaveSingleItem();
        (scheme.Name, scheme.Title).ShouldBe(("engineers", "Engineers"));
        scheme.For.Tests.ShouldHaveSingleItem().OneOf.ShouldBe(["MC"]);
        var version = scheme.Versions[0];
        (version.Certifier, version.AppointedBy, version.Decides, version.Reregistering).ShouldBe(
            ("engineer", "Office", "certifier", "again")
        );
        version.AcceptsAppointedIn!.Value.ShouldBe(["xb"]);
        version
            .Issued.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.Pathway.ShouldBe(Pathway.Certificate),
                each => each.Papers.ShouldBe(["certificate", "plate"])
            );
        version
            .Steps.Select(step => (step.Text, step.BeforeWork, string.Join(' ', step.Pathways)))
            .ShouldBe([("ask first", true, "Certificate Approval"), ("inspect", false, "Approval")]);
        version
            .Fees.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(
                each => each.Amount.ShouldBe(Quantity.Parse("30 AUD")),
                each => each.From.ShouldBe(Made.Date("2026"))
            );
        version.NotEstablished.ShouldBe(["how long"]);
        (scheme.Versions[1].From, scheme.Versions[1].InForceBy).ShouldBe((null, Made.Date("2030")));
        scheme.Versions[1].AcceptsAppointedIn.ShouldBeNull(); // whether others are accepted is not said
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_reference_tables_are_read_in_base_units_with_their_sources()
    {
        var reference = Book.Reference;
        reference
            .Fluids["diesel"]
            .ShouldSatisfyAllConditions(
                fluid => fluid.DensityKgPerL.ShouldBe(new Fraction(835, 1000)),
                fluid => fluid.AtLeastKgPerL.ShouldBe(new Fraction(82, 100)),
                fluid => fluid.AtMostKgPerL.ShouldBe(new Fraction(85, 100)),
                fluid => fluid.Sources.Length.ShouldBe(1)
            );
        reference.TareFuelL.ShouldBe((Fraction)10);
        reference.GuardFactor.ShouldBe(new Fraction(1, 2));
        reference.LeftRightWarningMm.ShouldBe((Fraction)20);
        reference.Uncertainties["suspension-lift"].Expanded.ShouldBe((Fraction)5);
        reference.Uncertainties["weighbridge"].Expanded.ShouldBe((Fraction)10);
        reference.TyreSizes.ShouldBe([TyreSize.Parse("265/65R17"), TyreSize.Parse("265/70R17")]);
        var period = reference.Speedometer.ShouldHaveSingleItem();
        (period.From, period.Before).ShouldBe((Made.Day("2006-07-01"), Made.Day("2030-01-01")));
        period.Rules.ShouldHaveSingleItem().Rule.ShouldBe(new SpeedometerRule(0, 10, 4, 40));
        reference.Clearance!.ShouldSatisfyAllConditions(
            each => each.MidwayMmPerMetre.ShouldBe(new Fraction(3333, 100)),
            each => each.RunningMm.ShouldBe((Fraction)100),
            each => each.MidwayState.ShouldBe("loaded"),
            each => each.RunningState.ShouldBe("unladen")
        );
        reference
            .Towing.ShouldHaveSingleItem()
            .ShouldSatisfyAllConditions(each => each.Braked.ShouldBe(new Fraction(3, 2)), each => each.Unbraked.ShouldBe(Fraction.One));
        var speeds = reference.TyreSpeeds.ShouldHaveSingleItem();
        speeds.For("MC", "xa").ShouldBe((Fraction)140);
        speeds.For("NA", "xa-n").ShouldBe((Fraction)120); // any other
        speeds.For(null, "xa").ShouldBeNull(); // which one is not known
        (speeds with { Jurisdiction = "xa" }).For("MC", "xa-n").ShouldBe((Fraction)140); // within it
        (speeds with { Jurisdiction = "xa" }).For("MC", "xab").ShouldBeNull(); // another nation
        reference
            .Sources.Keys.Order()
            // Every file that cites.
            .ShouldBe(["clearance", "fluids", "speedometer", "tare", "towing", "tyre-sizes", "tyre-speeds", "uncertainties"]);
        reference.Sources["tare"].ShouldHaveSingleItem().Source.Id.ShouldBe("act"); // cited from the nation's own sources
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_book_without_reference_tables_reckons_with_none()
    {
        var problems = new List<Problem>();
        var empty = BookReader.Read([], "empty", problems);
        problems.ShouldBeEmpty();
        empty.Jurisdictions.ShouldBeEmpty();
        empty.Reference.GuardFactor.ShouldBe(Fraction.One);
        empty.Reference.LeftRightWarningMm.ShouldBeNull();
        empty.Reference.TareFuelL.ShouldBeNull();
        empty.Reference.Clearance.ShouldBeNull();
        empty.Reference.TyreSizes.ShouldBeEmpty();
    }
}
