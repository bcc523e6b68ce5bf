using RuleBook.Telling;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// The track follows from the offsets before and after, so that the one which a job leaves out is what has to be asked for. Basis:
/// geometry of a wheel.
/// </summary>
public sealed class WheelOffsetTests
{
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("au-sa", "before: 30 mm", "What is the increase in wheel track (modification.wheel-offset.after would tell)?")]
    [InlineData(
        "au-sa",
        "before: unknown, after: 10 mm",
        "What is the increase in wheel track (modification.wheel-offset.before would tell)?"
    )]
    [InlineData("au-qld", "after: 10 mm", "What is the increase in wheel track (modification.wheel-offset.before would tell)?")]
    [InlineData("au-qld", "before: unknown, after: unknown", "What is the increase in wheel track?")]
    public void The_offset_that_is_missing_is_asked_for(string state, string offsets, string question) =>
        RealBook
            .Assess(
                $$"""
                registered-in: {{state}}
                on: 2026-11-20
                vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes, built: 2019-08, ratings: { gvm: 3000 kg } }
                modification: { wheel-offset: { {{offsets}} } }
                """
            )
            .Undecided.Select(effect => Questions.Ask(effect, RealBook.Book.Vocabulary))
            .ShouldContain(question);
}
