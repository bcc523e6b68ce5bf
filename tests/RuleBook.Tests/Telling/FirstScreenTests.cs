using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Tests.Figures;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>
/// The first lines and the line of each subject. Derived, on a scenario of our own; each figure is worked beside its check.
/// </summary>
public sealed class FirstScreenTests
{
    private static readonly Book Height = Stating(Tiers);

    /// <summary>2400 kg and a bar of 190 kg are 90 kg over 2500 kg; with 75 kg of driver 165 kg.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void The_worst_state_of_a_rating_is_told_first_and_the_other_in_short() =>
        FirstLines
            .Of(
                Reckoned.Assess(
                    """
                    "vehicle": { "tare": "2400 kg", "tanks": [ { "capacity": "10 L", "fuel": "diesel" } ],
                    "ratings": { "gvm": "2500 kg" } },
                    "load": { "occupants": [ { "mass": "75 kg" } ] }, "modification": { "accessories": [ { "name": "bar",
                    "mass": "190 kg" } ] }
                    """
                )
            )
            .First()
            .ShouldBe("NOT AS PLANNED: 165 kg over GVM when loaded (2665 of 2500 kg); 90 kg over before anybody gets in.");

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("unladen", "before anybody gets in")]
    [InlineData("loaded", "when loaded")]
    [InlineData("planned", "when hitched")]
    [InlineData("weighed", "as weighed, hitched")]
    [InlineData("weighed-alone", "as weighed")]
    public void A_load_over_its_rating_says_in_which_state(string state, string told) =>
        BlockerText
            .Sentence(
                new Blocker(BlockerKind.OverRating, "gcm", "GCM")
                {
                    State = state,
                    Value = 6100,
                    Limit = 6000,
                    Unit = RuleBook.Units.Unit.Find("kg"),
                }
            )
            .ShouldBe($"100 kg over GCM {told} (6100 of 6000 kg)");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_that_is_kept_is_told_as_figure_of_limit() =>
        Rows(Height, Lift("60 mm")).ShouldContain("Height|suspension-lift 60 of 75, total-lift 60 of 150 mm");

    [Fact]
    [Trait("Basis", "derived")]
    public void A_mass_known_in_part_is_told_as_the_least_that_it_can_be() =>
        Rows(
                Reckoned.Book,
                """ "vehicle": { "tare": "2400 kg", "tanks": [ { "capacity": "10 L", "fuel": "diesel" } ] }, "modification": {"""
                    + """ "accessories": [ { "name": "winch" } ] } """
            )
            .ShouldContain("Masses|unladen not known, at least 2400 kg");

    [Fact]
    [Trait("Basis", "derived")]
    public void The_load_on_the_ball_and_the_trailer_are_told_apart() =>
        Rows(
                Reckoned.Book,
                $$""" "vehicle": { {{Reckoned.Wagon}} }, "trailer": { "mass": "3000 kg", "ball-load": "300 kg", "braked": "yes" } """
            )
            .Single(row => row.StartsWith("Combination|", StringComparison.Ordinal))
            .ShouldContain("ball 300 of 350 kg");

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(true, "State B: no rule in the book follows its roads")]
    [InlineData(false, "State B: nobody has looked which rules follow its roads")]
    public void Roads_without_a_rule_and_roads_where_nobody_looked_are_told_apart(bool looked, string told) =>
        Rows(
                Assess(Height, Lift("60 mm")) with
                {
                    Roads = [new RoadElsewhere("au-b", "State B", looked, [])],
                },
                Read(Height, Lift("60 mm")),
                Height
            )
            .ShouldContain($"On the road|{told}");

    private static List<string> Rows(Book book, string more)
    {
        var job = book == Reckoned.Book ? Reckoned.Read(more) : Read(book, more);
        return Rows(Assessor.Assess(book, job), job, book);
    }

    private static List<string> Rows(Assessment answer, Job job, Book book)
    {
        var page = new Told();
        new FirstScreen(page, book.Vocabulary, whole: true).Write(answer, job, null, "");
        return page.Lines;
    }
}
