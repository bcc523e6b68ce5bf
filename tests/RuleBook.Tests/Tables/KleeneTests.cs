using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.Tables;

/// <summary>
/// Tests are joined by Kleene's strong conjunction, tiers by his strong disjunction (S. C. Kleene, Introduction to Metamathematics, 1952,
/// section 64): the tables below are his, t for true, f for false, u for unknown.
/// </summary>
public sealed class KleeneTests
{
    private const string Conjunction = "ttt tff tuu ftf fff fuf utu uff uuu";
    private const string Disjunction = "ttt tft tut ftt fff fuu utt ufu uuu";

    public static TheoryData<string> Both => [.. Conjunction.Split(' ')];

    public static TheoryData<string> Either => [.. Disjunction.Split(' ')];

    [Theory]
    [MemberData(nameof(Both))]
    public void A_rule_binds_where_all_its_tests_pass(string line)
    {
        var both = new Predicate([Is("first"), Is("second")]);
        Judge(Resolved(FiftyThenSeventyFive, both), line)
            .Binds.ShouldBe(
                line[2] switch
                {
                    't' => Truth.Yes,
                    'f' => Truth.No,
                    _ => Truth.Unknown,
                }
            );
    }

    [Theory]
    [MemberData(nameof(Either))]
    public void A_pathway_is_open_where_either_of_two_tiers_is(string line)
    {
        var content = new Stated(
            [
                Tier(Pathway.NoCertificate) with
                {
                    When = new Predicate([Is("first")]),
                },
                Tier(Pathway.NoCertificate) with
                {
                    When = new Predicate([Is("second")]),
                },
            ],
            Pathway.Prohibited
        );
        Judge(Resolved(content), line)
            .Outcome.ShouldBe(
                line[2] switch
                {
                    't' => new Outcome(Pathway.NoCertificate, Pathway.NoCertificate),
                    'f' => new Outcome(Pathway.Prohibited, Pathway.Prohibited),
                    _ => new Outcome(Pathway.NoCertificate, Pathway.Prohibited),
                }
            );
    }

    private static FactTest Is(string fact) => new(fact, ["yes"], null, Mark);

    private static RuleResult Judge(RuleBook.InForce.ResolvedVersion version, string line)
    {
        var words = Book().Vocabulary;
        foreach (var fact in (string[])["first", "second"])
            words = words with { Facts = words.Facts.Add(fact, new FactWord(fact, fact, fact, ["yes", "no"], fact, Mark)) };
        var table = DecisionTable.Of(words, version);
        var row = table.NewRow();
        foreach (var (fact, truth) in new[] { ("first", line[0]), ("second", line[1]) })
            if (truth != 'u')
                row.Set(table.Input(fact), truth == 't' ? "yes" : "no");
        return table.Judge(0, row);
    }
}
