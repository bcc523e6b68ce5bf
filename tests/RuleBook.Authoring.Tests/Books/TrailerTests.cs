using RuleBook.Answers;
using RuleBook.Telling;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// A trailer that may not be towed as planned stands on the first line. Queensland: no trailer above 750 kg of GTM without brakes, above 2
/// t brakes on all wheels (Stay on Track Outback, questions and answers on towing). Victoria: brakes above 750 kg of ATM (club trailer
/// sheets).
/// </summary>
public sealed class TrailerTests
{
    [Theory]
    [Trait("Basis", "published")]
    [InlineData("au-qld", "{ mass: 700 kg, braked: no, ratings: { gtm: 750 kg } }", null)]
    [InlineData("au-qld", "{ mass: 700 kg, braked: yes, ratings: { gtm: 751 kg } }", null)]
    [InlineData(
        "au-qld",
        "{ mass: 700 kg, braked: no, ratings: { gtm: 751 kg } }",
        "GTM of the trailer 751 kg, limit 750 kg: 1 kg too much; or not met: trailer braked"
    )]
    [InlineData(
        "au-qld",
        "{ mass: 2000 kg, braked: no, ratings: { gtm: 1900 kg } }",
        "GTM of the trailer 1900 kg, limit 750 kg: 1150 kg too much; or not met: trailer braked; also not met: trailer within the "
            + "towing capacities"
    )]
    [InlineData(
        "au-vic",
        "{ mass: 700 kg, braked: no, ratings: { atm: 751 kg } }",
        "ATM of the trailer 751 kg, limit 750 kg: 1 kg too much; or not met: trailer braked"
    )]
    public void A_trailer_without_the_brakes_that_its_mass_asks_for_is_not_as_planned(string state, string trailer, string? told)
    {
        var answer = Towing(
            state,
            "maker-gives-towing-mass: yes, ratings: { gvm: 3000 kg, braked-tow: 3000 kg, unbraked-tow: 750 kg }",
            trailer
        );
        var first = FirstLines.Of(answer).First();
        if (told is null)
            answer.Blockers.ShouldBeEmpty();
        else
            first.ShouldContain(told);
        first.StartsWith("NOT AS PLANNED: past a rule of use", StringComparison.Ordinal).ShouldBe(told is not null);
        answer.Headline.ShouldBe(told is null ? Headline.NoCertificate : Headline.Blocked);
    }

    /// <summary>
    /// Every way of Victoria asks that the trailer be within the towing capacities, and 3200 kg are over the maker's 3000 kg.
    /// </summary>
    [Fact]
    [Trait("Basis", "published")]
    public void What_every_way_to_tow_lacks_is_told_where_none_lacks_anything_else()
    {
        var answer = Towing("au-vic", "ratings: { gvm: 3000 kg, braked-tow: 3000 kg }", "{ mass: 3200 kg, braked: yes }");
        FirstLines
            .Of(answer)
            .First()
            .ShouldContain(
                "past a rule of use, towing a trailer with a light vehicle: not met: trailer within the towing capacities; 200 kg"
            );
    }

    /// <summary>
    /// Basis: the book has no figure for Queensland where the maker is silent (a trade page on vehicles before 1992 alone).
    /// </summary>
    [Fact]
    [Trait("Basis", "published")]
    public void What_may_be_towed_where_the_maker_is_silent_is_told_as_left_open()
    {
        var answer = Towing("au-qld", "maker-gives-towing-mass: no", "{ mass: 700 kg, braked: yes, ratings: { gtm: 700 kg } }");
        FirstLines.Of(answer).ShouldContain("Rules of use left open: mass of the trailer behind a light vehicle.");
    }

    private static Assessment Towing(string state, string vehicle, string trailer) =>
        RealBook.Assess(
            $$"""
            registered-in: {{state}}
            on: 2026-11-25
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: no, {{vehicle}} }
            modification: { suspension-lift: 40 mm }
            trailer: {{trailer}}
            """
        );
}
