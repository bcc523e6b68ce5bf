using System.Collections.Immutable;
using System.Xml.Linq;
using Fractions;
using RuleBook.Law;
using RuleBook.Site.Charts;

namespace RuleBook.Site.Tests.Charts;

/// <summary>
/// Drawings read whole, a line a shape: its kind, its style, where it stands and what it says. Worked by hand on scales of a round number
/// of pixels; places and figures are invented.
/// </summary>
public sealed class WholeDrawingTests
{
    private static readonly DateOnly First = new(2020, 1, 1);

    /// <summary>The scale of 485 mm has as many pixels, from 215 on: what is 50 mm long is 50 wide.</summary>
    [Fact]
    public void Parts_are_stacked_with_their_total_and_what_has_no_figure_says_so()
    {
        ImmutableArray<LiftParts> rows =
        [
            Stated("Sum", 50, 30, 20, null),
            Stated("Undivided", null, null, null, 120),
            Without("Free", "not-regulated"),
            Without("Closed", "none-such"),
            Without("Open", "not-established"),
            Stated("Apart", 50, null, null, null),
            Stated("Nothing", null, null, null, null),
            Stated("Capped", 100, 50, 0, 120),
        ];
        Shapes(StackChart.Draw(rows, 485, "How high?").Text)
            .ShouldBe(
                """
                svg drawing 0 0 760 280 img How high?
                line axis 215 22 215 272
                text label middle 215 16: 0 mm
                line grid 315 22 315 272
                text label middle 315 16: 100 mm
                line grid 415 22 415 272
                text label middle 415 16: 200 mm
                line grid 515 22 515 272
                text label middle 515 16: 300 mm
                line grid 615 22 615 272
                text label middle 615 16: 400 mm
                text label end 205 40: Sum
                rect suspension 215 28 50 14
                rect block 265 28 30 14
                rect tyre-part 295 28 20 14
                path hatch M295 34L301 28M295 40L307 28M299 42L313 28M305 42L315 32M311 42L315 38
                line dim 215 47 315 47
                line dim 211 51 219 43
                line dim 311 51 319 43
                text label strong 323 41: 100 mm
                text label end 205 70: Undivided
                rect undivided 215 58 120 14
                line dim 215 77 335 77
                line dim 211 81 219 73
                line dim 331 81 339 73
                text label strong 343 71: 120 mm
                text label end 205 100: Free
                text label quiet 223 100: not regulated
                text label end 205 130: Closed
                text label quiet 223 130: no such way
                text label end 205 160: Open
                text label quiet 223 160: not established
                text label end 205 190: Apart
                rect suspension 215 178 50 14
                text label quiet 273 190: the rest is not limited apart
                text label end 205 220: Nothing
                text label quiet 223 220: no figure for the total
                text label end 205 250: Capped
                rect suspension 215 238 100 14
                rect block 315 238 50 14
                line dim 215 257 335 257
                line dim 211 261 219 253
                line dim 331 261 339 253
                text label strong 373 251: 120 mm
                """
            );
        StackChart.Styles(rows[..1]).ShouldBe(["suspension", "block", "tyre-part"]);
        StackChart.Styles(rows[1..2]).ShouldBe(["undivided"]);
        StackChart.Styles([rows[7]]).ShouldBe(["suspension", "block"]);
        StackChart.Styles(rows[2..5]).ShouldBeEmpty();
        // Every scale has 100 mm; the 150 mm drawn beyond a total of 120 end between two lines that are 20 mm apart.
        StackChart.Scale([]).ShouldBe(100);
        StackChart.Scale([rows[0]]).ShouldBe(100);
        StackChart.Scale(rows).ShouldBe(160);
    }

    /// <summary>1430 days on 286 pixels from 44 on: five days a pixel. 102 mm on as many, 116 down.</summary>
    [Fact]
    public void Steps_are_level_while_a_figure_holds_and_have_a_gap_where_none_is_known() =>
        Shapes(
                StepChart
                    .Draw(
                        [
                            ("certified", [(First, null)]),
                            ("free", [(First, null), (Day(100), 40), (Day(500), 60), (Day(800), null), (Day(1000), 30)]),
                        ],
                        First,
                        Day(1430),
                        102,
                        "Over the years"
                    )
                    .Text
            )
            .ShouldBe(
                """
                svg drawing 0 0 350 140 img Over the years
                line axis 44 116 330 116
                text label end 38 120: 0
                line grid 44 96 330 96
                text label end 38 100: 20
                line grid 44 76 330 76
                text label end 38 80: 40
                line grid 44 56 330 56
                text label end 38 60: 60
                line grid 44 36 330 36
                text label end 38 40: 80
                line grid 44 16 330 16
                text label end 38 20: 100
                line axis 44 116 44 120
                text label middle 44 134: 2020
                line axis 117.2 116 117.2 120
                text label middle 117.2 134: 2021
                line axis 190.2 116 190.2 120
                text label middle 190.2 134: 2022
                line axis 263.2 116 263.2 120
                text label middle 263.2 134: 2023
                path step free M64 76H144L144 56H204M244 86H330
                """
            );

    /// <summary>
    /// What its label names: four lengths, each with a letter in a circle where its line is, and the parts they are measured on.
    /// </summary>
    [Fact]
    public void The_diagram_has_four_lettered_lengths_on_a_wheel_in_its_arch()
    {
        var shapes = Shapes(HeightDiagram.Draw().Text).Split('\n');
        shapes[0]
            .ShouldBe(
                "svg drawing 0 0 640 330 img A wheel in its arch, from the side. A: wheel centre to guard edge. B: body block. "
                    + "C: suspension. "
                    + "D: tyre."
            );
        shapes
            .Where(shape => shape.Contains("letter", StringComparison.Ordinal))
            .ShouldBe([
                "circle letter 52 166 12",
                "text lettering middle 52 171: A",
                "circle letter 344 172 12",
                "text lettering middle 344 177: B",
                "circle letter 530 264 12",
                "text lettering middle 530 269: C",
                "circle letter 347 282 12",
                "text lettering middle 347 287: D",
            ]);
        // A line and two ticks for each length.
        shapes.Count(shape => shape.StartsWith("line dim ", StringComparison.Ordinal)).ShouldBe(12);
        shapes
            .Select(shape => string.Join(' ', shape.Split(' ')[..2]))
            .Distinct()
            .ShouldBe(
                [
                    .. "circle letter|circle rim|circle tyre|line centre|line dim|line extension|line ground|path body|path spring".Split(
                        '|'
                    ),
                    .. "rect block|rect rail|svg drawing|text lettering".Split('|'),
                ],
                ignoreOrder: true
            );
    }

    [Fact]
    public void Of_a_total_and_the_sum_of_its_parts_the_smaller_is_the_highest()
    {
        Stated("x", 50, 30, 20, 90).Highest.ShouldBe((Fraction?)90);
        Stated("x", 50, 30, 20, 110).Highest.ShouldBe((Fraction?)100);
        Stated("x", 50, 30, null, 110).Highest.ShouldBe((Fraction?)110);
        Stated("x", 50, 30, null, null).Highest.ShouldBeNull();
    }

    private static DateOnly Day(int after) => First.AddDays(after);

    private static LiftParts Without(string place, string state) => Stated(place, null, null, null, null) with { State = state };

    private static LiftParts Stated(string place, int? suspension, int? body, int? tyre, int? total) =>
        new(
            InventedBook.Site.Places[0] with
            {
                Name = place,
            },
            Pathway.Certificate,
            "stated",
            (Fraction?)suspension,
            (Fraction?)body,
            (Fraction?)tyre,
            (Fraction?)total
        );

    private static string Shapes(string drawing) =>
        string.Join(
            '\n',
            XElement
                .Parse(drawing)
                .DescendantsAndSelf()
                .Select(shape =>
                    $"{shape.Name.LocalName} "
                    + $"{string.Join(' ', shape.Attributes().Where(each => !each.IsNamespaceDeclaration).Select(each => each.Value))}"
                    + (shape.HasElements || shape.Value.Length == 0 ? "" : $": {shape.Value}")
                )
        );
}
