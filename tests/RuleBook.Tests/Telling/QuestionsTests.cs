using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>What is not known, as a question.</summary>
public sealed class QuestionsTests
{
    private static readonly Outcome Open = new(Pathway.NoCertificate, Pathway.Prohibited);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(Pathway.Prohibited, "decides nothing by itself")]
    [InlineData(
        Pathway.Certificate,
        "yes: from allowed without a certificate to allowed with a certificate; no: from allowed without a certificate to not allowed"
    )]
    public void A_question_of_which_every_answer_gives_the_same_says_that_it_decides_nothing_by_itself(Pathway worst, string told) =>
        Questions
            .Of(
                new Effect(
                    new Opening("vehicle.winch", OpeningKind.Word, [new Option("yes", null), new Option("no", null)]),
                    [new(Pathway.NoCertificate, worst), Open]
                ),
                Stating(Tiers).Vocabulary
            )
            .ShouldBe($"What is vehicle.winch? {told}");
}
