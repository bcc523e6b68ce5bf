using RuleBook.Authoring.Tests.Books;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>Figures that no vehicle can have are errors at their place.</summary>
public sealed class JobErrorTests
{
    [Theory]
    [InlineData("vehicle: { tanks: [ { capacity: -80 L, fuel: diesel } ] }", "negative")]
    [InlineData("vehicle: { tanks: [ { capacity: 80 L, fuel: diessel } ] }", "unknown-fuel")]
    [InlineData("vehicle: { tare: 2600 kg, tare-axles: { front: 1350 kg, rear: 1200 kg } }", "contradiction")]
    [InlineData("vehicle: { wheelbase: 0 mm }", "negative")]
    [InlineData("vehicle: { wheelbase: 2850 kg }", "wrong-unit")]
    [InlineData("vehicle: { ratings: { gvm: 3500 kg, gmc: 7000 kg } }", "unknown-key")]
    [InlineData("trailer: { mass: 2890 kg, axles: 2650 kg, ball-load: 200 kg }", "contradiction")]
    [InlineData("measured: { after: { front-left: 500 mm } }", "missing-key")]
    [InlineData(
        "measured: { weighbridge: { front-alone: 1500 kg, rear-alone: 1500 kg, front-hitched: 1400 kg, rear-hitched: 1900 kg, "
            + "trailer-axles: 2500 kg, trailer-alone: 2700 kg } }",
        "contradiction"
    )]
    [InlineData("modification: { springs: { rear: { wheel-rate: 60 N/mm, height-gained: 50 mm, free-height: 700 mm } } }", "contradiction")]
    [InlineData("load: { occupants: [ { mass: -80 kg } ] }", "negative")]
    [InlineData("measured: { uncertainty: { suspension-lft: 5 mm } }", "unknown-key")]
    public void What_cannot_be_is_an_error_at_its_place(string line, string code)
    {
        var problem = Should
            .Throw<InputException>(() => RealBook.Assess($"registered-in: au-qld\non: 2026-11-20\n{line}\n"))
            .Problems.ShouldHaveSingleItem();
        problem.Code.ShouldBe(code);
        problem.Mark.Line.ShouldBe(3);
        problem.Mark.Column.ShouldBeGreaterThan(1);
    }

    [Fact]
    public void More_occupants_than_seats_is_an_error() =>
        Should
            .Throw<InputException>(() =>
                RealBook.Assess(
                    """
                    registered-in: au-qld
                    on: 2026-11-20
                    vehicle: { seats: 1 }
                    load: { occupants: [ { mass: 80 kg }, { mass: 70 kg } ] }
                    """
                )
            )
            .Problems.ShouldHaveSingleItem()
            .Mark.Line.ShouldBe(4);

    [Fact]
    public void A_misspelt_fuel_comes_with_the_one_that_was_meant() =>
        Should
            .Throw<InputException>(() =>
                RealBook.Assess("registered-in: au-qld\non: 2026-11-20\nvehicle: { tanks: [ { capacity: 80 L, fuel: diessel } ] }\n")
            )
            .Problems.ShouldHaveSingleItem()
            .Tip.ShouldContain("diesel");

    [Fact]
    public void A_condition_given_as_met_that_the_load_indices_deny_is_an_error() =>
        Should
            .Throw<InputException>(() =>
                RealBook.Assess(
                    """
                    registered-in: au-qld
                    on: 2026-11-20
                    vehicle: { tyres: 265/65R17 112S }
                    modification: { tyres: 265/70R17 110S }
                    shown: { tyre-load-rating-kept: yes }
                    """
                )
            )
            .Problems.ShouldHaveSingleItem()
            .Mark.Line.ShouldBe(5);
}
