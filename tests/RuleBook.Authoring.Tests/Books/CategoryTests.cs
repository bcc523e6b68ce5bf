using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// Vehicle Standard (Australian Design Rule Definitions and Vehicle Categories): L is for mopeds and motor cycles, T for trailers. The
/// sources of the book speak of cars, goods vehicles and buses.
/// </summary>
public sealed class CategoryTests
{
    private static readonly string[] OtherVehicles = ["LA", "LB", "LC", "LD", "LE", "TA", "TB", "TC", "TD"];

    public static TheoryData<string> Places => [.. RealBook.Book.Jurisdictions.Select(place => place.Id)];

    [Theory]
    [Trait("Basis", "published")]
    [MemberData(nameof(Places))]
    public void A_motor_cycle_or_a_trailer_is_not_answered_by_the_rules_for_cars(string place)
    {
        foreach (var category in OtherVehicles)
        {
            var answer = RealBook.Assess(
                $$"""
                registered-in: {{place}}
                on: 2026-11-25
                vehicle: { category: {{category}}, four-wheel-drive: no, ratings: { gvm: 3000 kg } }
                modification: { suspension-lift: 20 mm }
                """
            );
            answer.Findings.ShouldBeEmpty(category);
            answer.Between.Worst.ShouldBe(Pathway.Prohibited, category);
            FirstLines.Of(answer).First().ShouldStartWith("Undecided: no rule in the book covers this vehicle on ride height.");
        }
    }

    /// <summary>The towing rules of Victoria are for light vehicles; a vehicle of category NB2 is over 4.5 t (ADR categories).</summary>
    [Theory]
    [Trait("Basis", "published")]
    [InlineData("NB2", true)]
    [InlineData("LC", true)]
    [InlineData("MC", false)]
    public void A_trailer_behind_a_vehicle_that_no_rule_of_use_binds_is_said_not_to_be_judged(string category, bool told) =>
        FirstLines
            .Of(
                RealBook.Assess(
                    $$"""
                    registered-in: au-vic
                    on: 2026-11-25
                    vehicle: { category: {{category}}, four-wheel-drive: yes }
                    modification: { suspension-lift: 20 mm }
                    trailer: { mass: 300 kg, braked: no }
                    """
                )
            )
            .Any(line =>
                line.StartsWith("No rule of use in the book covers this vehicle on", StringComparison.Ordinal) && line.Contains("towing")
            )
            .ShouldBe(told);

    /// <summary>
    /// Some rules of New South Wales name no category, one of tyres does; a job that states none is of a car or the like.
    /// </summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void A_job_without_a_category_is_answered_and_not_asked_whether_it_is_of_a_trailer()
    {
        var answer = RealBook.Assess(
            """
            registered-in: au-nsw
            on: 2026-11-25
            vehicle: { four-wheel-drive: yes, ratings: { gvm: 3000 kg } }
            modification: { suspension-lift: 40 mm, tyres: 265/70R17 115S }
            """
        );
        answer.Findings.ShouldNotBeEmpty();
        answer.Undecided.SelectMany(effect => effect.Merged()).ShouldNotContain(option => OtherVehicles.Contains(option.Label));
    }
}
