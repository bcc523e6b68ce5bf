using Fractions;
using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>
/// What a word of the vocabulary means is changed in one place: told once, with what it said and what it says (worked out by hand from the
/// files of <c>schema/vocabulary</c>). The titles of measures, facts and topics are wording and are not told.
/// </summary>
public sealed class EditedWordsTests
{
    private const string BodyLift = "measure body-lift";
    private const string Kind = "fact vehicle-kind";

    [Theory]
    [InlineData(
        "measures",
        "Height of the blocks between body and frame.",
        "Height of the blocks.",
        BodyLift,
        "no longer Height of the blocks between body and frame.; now Height of the blocks."
    )]
    [InlineData(
        "measures",
        "job: modification.body-lift",
        "job: measured.body-block",
        BodyLift,
        "no longer stated at modification.body-lift; now stated at measured.body-block"
    )]
    [InlineData(
        "measures",
        "body lift, unit: mm",
        "body lift, unit: cm",
        BodyLift,
        "no longer in mm, plausible from 0 mm to 200 mm, 0 mm where it is absent; now in cm, plausible from 0 cm to 20 cm, 0 cm "
            + "where it is absent"
    )]
    [InlineData(
        "measures",
        "modification.body-lift, ",
        "modification.body-lift, below-zero: stated, ",
        BodyLift,
        "no longer below zero: Never; now below zero: Stated"
    )]
    [InlineData("measures", "modification.body-lift, ", "modification.body-lift, step: 2 mm, ", BodyLift, "new: in steps of 2 mm")]
    [InlineData(
        "measures",
        "at-least: 0 mm, at-most: 200 mm }, definition: Height of the blocks",
        "at-least: 0 mm, at-most: 250 mm }, definition: Height of the blocks",
        BodyLift,
        "no longer plausible from 0 mm to 200 mm; now plausible from 0 mm to 250 mm"
    )]
    [InlineData(
        "measures",
        "at-least: 0 mm, at-most: 200 mm }, definition: Height of the blocks",
        "at-least: 0 mm, at-most: 200 mm }, possible: { at-most: 1 m }, definition: Height of the blocks",
        BodyLift,
        "new: possible to 1000 mm"
    )]
    [InlineData(
        "measures",
        "job: modification.body-lift, if-absent: 0 mm, ",
        "job: modification.body-lift, ",
        BodyLift,
        "no longer 0 mm where it is absent; now unknown where it is absent"
    )]
    [InlineData(
        "measures",
        "modification.body-lift, ",
        "modification.body-lift, derived: yes, ",
        BodyLift,
        "no longer stated; now derived"
    )]
    [InlineData(
        "measures",
        "modification.body-lift, if-absent: 0 mm, topics: [ride-height]",
        "modification.body-lift, if-absent: 0 mm, topics: [towing, ride-height]",
        BodyLift,
        "no longer touches ride-height; now touches ride-height towing"
    )]
    [InlineData(
        "measures",
        "modification.body-lift, ",
        "modification.body-lift, own-rule: yes, ",
        BodyLift,
        "no longer is allowed by silence; now asks for a rule of its own"
    )]
    [InlineData("facts", "job: vehicle.kind", "job: vehicle.sort", Kind, "no longer stated at vehicle.kind; now stated at vehicle.sort")]
    [InlineData(
        "topics",
        "How far a vehicle may be raised or lowered by its suspension, its body mounts and its tyres, and how that is measured.",
        "How far.",
        "topic ride-height",
        "no longer How far a vehicle may be raised or lowered by its suspension, its body mounts and its tyres, and how that is "
            + "measured.; now How far."
    )]
    [InlineData(
        "topics",
        "and what comes before the work.",
        "and what comes before the work.\n    of-use: yes",
        "topic certification",
        "no longer of modification; now of use"
    )]
    [InlineData(
        "conditions",
        "title: two thirds of the suspension travel kept",
        "title: two thirds kept",
        "condition suspension-travel-kept-two-thirds",
        "no longer two thirds of the suspension travel kept; now two thirds kept"
    )]
    [InlineData(
        "conditions",
        "At least two thirds of the original suspension travel remain in each direction, on every wheel.",
        "Most remains.",
        "condition suspension-travel-kept-two-thirds",
        "no longer At least two thirds of the original suspension travel remain in each direction, on every wheel.; now Most remains."
    )]
    [InlineData(
        "conditions",
        "share: 1/3",
        "share: 1/4",
        "condition suspension-travel-kept-two-thirds",
        "no longer not met where suspension-travel-lost is over 33.333 %; now not met where suspension-travel-lost is over 25 %"
    )]
    [InlineData(
        "conditions",
        "    decided-by: tyres-against-placard\n",
        "",
        "condition tyre-load-rating-kept",
        "no longer decided by TyresAgainstPlacard"
    )]
    [InlineData(
        "conditions",
        "\"{figure} of ground clearance\"",
        "\"{figure} clear of the ground\"",
        "condition clearance-unladen",
        "no longer {figure} of ground clearance; now {figure} clear of the ground"
    )]
    [InlineData(
        "categories",
        "off-road passenger vehicle, gvm: { at-most: 4500 kg",
        "off-road passenger vehicle, gvm: { at-most: 4400 kg",
        "figures of no single place",
        "no longer a GVM of MC up to 4500 kg; now a GVM of MC up to 4400 kg"
    )]
    [InlineData(
        "cautions",
        "Check the figures against the source named before money is spent or work is begun.",
        "Check the figures.",
        "figures of no single place",
        "no longer caution: Check the figures against the source named before money is spent or work is begun.; now caution: "
            + "Check the figures."
    )]
    public void What_a_word_means_is_told_with_what_it_meant(string file, string old, string now, string about, string text)
    {
        var edited = InventedBook.Of(texts =>
        {
            var path = $"schema/vocabulary/{file}.yaml";
            texts[path].Split(old).Length.ShouldBe(2, "the edit is made in one place");
            texts[path] = texts[path].Replace(old, now, StringComparison.Ordinal);
        });

        var remark = WordRemarks.Of(InventedBook.Book, edited).ShouldHaveSingleItem();
        (remark.About, remark.Text).ShouldBe((about, text));
        (remark.Kind, remark.Jurisdiction, remark.Place, remark.From).ShouldBe((RemarkKind.Other, null, "The words of the book", null));
    }

    /// <summary>A fact of no rule, at the end of the file.</summary>
    [Fact]
    public void A_word_that_is_new_is_told_where_it_stands_and_one_that_is_gone_where_it_stood()
    {
        var line = 0;
        var more = InventedBook.Of(texts =>
        {
            line = texts["schema/vocabulary/facts.yaml"].Split('\n').Length;
            texts["schema/vocabulary/facts.yaml"] +=
                "  - { fact: hitch, title: hitch, question: Is there a hitch?, job: vehicle.hitch, values: [yes, no], "
                + "definition: A hitch. }\n";
        });

        WordRemarks
            .Of(InventedBook.Book, more)
            .Concat(WordRemarks.Of(more, InventedBook.Book))
            .Select(remark => (remark.About, remark.Text, remark.Mark.File, remark.Mark.Line))
            .ShouldBe([
                ("fact hitch", $"new: {Hitch}", "schema/vocabulary/facts.yaml", line),
                ("fact hitch", $"no longer {Hitch}", "schema/vocabulary/facts.yaml", line),
            ]);
    }

    private const string Hitch = "A hitch., stated at vehicle.hitch, one of yes, no, any of them whether named or not";

    [Fact]
    public void Of_the_same_words_nothing_is_told() => WordRemarks.Of(InventedBook.Book, InventedBook.Of(_ => { })).ShouldBeEmpty();

    /// <summary>Figures of no law, against a book that has none of them.</summary>
    [Fact]
    public void A_figure_of_no_single_place_is_told_with_its_unit()
    {
        Told(none => none with { TareFuelL = 10 }).ShouldBe("new: fuel in tare 10 L");
        Told(none => none with { LeftRightWarningMm = 15 }).ShouldBe("new: left and right 15 mm");
        Told(none => none with { GuardFactor = new Fraction(3, 2) }).ShouldBe("no longer guard band 1; now guard band 1.5");
        Told(none => none with { Clearance = new ClearanceRule(null, new Fraction(100, 3), 100, "", "", []) })
            .ShouldBe("new: clearance in every place 33.333 mm a metre midway, 100 mm anywhere");
        Told(none => none with { Towing = [new DefaultTowing("xa", new Fraction(3, 2), 1, [])] })
            .ShouldBe("new: towing without a maker's figure in xa: 1.5 times the vehicle's mass with brakes, 1 without");
        Told(none =>
                none with
                {
                    Fluids = none.Fluids.Add("petrol", new Fluid("petrol", new Fraction(3, 4), new Fraction(7, 10), null, [])),
                }
            )
            .ShouldBe("new: petrol 0.75 kg/L, from 0.7");
        Told(none => none with { Fluids = none.Fluids.Add("diesel", new Fluid("diesel", 1, null, 2, [])) })
            .ShouldBe("new: diesel 1 kg/L to 2");
        Told(none => none with { Uncertainties = none.Uncertainties.Add("tare", new Uncertainty("tare", 20, "")) })
            .ShouldBe("new: uncertainty of tare 20");
        Told(none => none with { Categories = [new CategoryBounds("NA", null, null, 3500, null, 9, [])] })
            .ShouldBe("new: category NA: a GVM up to 3500 kg, up to 9 seats");
        Told(none => none with { TyreSpeeds = [new TyreSpeedRule("xa", "fast", [new(["MA", "MB"], 180), new([], 120)], [])] })
            .ShouldBe("new: fast in xa of MA and MB: 180 km/h, fast in xa of any other category: 120 km/h");
        Told(none =>
                none with
                {
                    Speedometer =
                    [
                        new(null, null, new DateOnly(1988, 7, 1), [], []),
                        new("xa", new DateOnly(1988, 7, 1), null, [new("old", new(10, 10, 0, 40)), new("new", new(0, 10, 4))], []),
                    ],
                }
            )
            .ShouldBe(
                "new: speedometer in every place before 1 July 1988: no accuracy asked for, speedometer in xa from 1 July 1988: old, 10 % "
                    + "under to 10 % and 0 km/h over, above 40 or new, 0 % under to 10 % and 4 km/h over"
            );
    }

    private static string Told(Func<Reference, Reference> figures)
    {
        var without = InventedBook.Book with { Reference = Reference.None };
        var remark = WordRemarks.Of(without, without with { Reference = figures(Reference.None) }).ShouldHaveSingleItem();
        (remark.About, remark.Mark).ShouldBe(("figures of no single place", new Mark("schema/reference", 1, 1)));
        return remark.Text;
    }
}
