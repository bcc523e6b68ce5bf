using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.Tables;

/// <summary>
/// Tiers tried from the least onerous on, in Kleene's strong logic (S. C. Kleene, Introduction to Metamathematics, 1952, section 64).
/// Derived, on made-up limits.
/// </summary>
public sealed class JudgeTests
{
    private const string Fitted = "stability-control";

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(0, Pathway.NoCertificate)]
    [InlineData(50, Pathway.NoCertificate)] // reached is within
    [InlineData(51, Pathway.Certificate)]
    [InlineData(75, Pathway.Certificate)]
    [InlineData(76, Pathway.Prohibited)]
    public void The_first_tier_whose_limits_hold_gives_the_pathway(int lift, Pathway pathway) =>
        Try(FiftyThenSeventyFive, Raised(lift)).ShouldBe(new Outcome(pathway, pathway));

    [Fact]
    [Trait("Basis", "derived")]
    public void A_lift_that_is_not_known_leaves_every_tier_and_what_lies_beyond() =>
        Try(FiftyThenSeventyFive, FactSet.Nothing).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(40, 60, Pathway.NoCertificate, Pathway.Certificate)]
    [InlineData(60, 70, Pathway.Certificate, Pathway.Certificate)]
    [InlineData(60, 90, Pathway.Certificate, Pathway.Prohibited)]
    [InlineData(76, 90, Pathway.Prohibited, Pathway.Prohibited)]
    public void A_lift_known_within_bounds_leaves_the_tiers_that_it_can_reach(int low, int high, Pathway best, Pathway worst)
    {
        var facts = FactSet.Nothing.With(Lift, new Derived(new Interval(low, high), "measured"));
        Try(FiftyThenSeventyFive, facts).ShouldBe(new Outcome(best, worst));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_nobody_has_established_can_be_anything_and_what_is_not_regulated_needs_nothing()
    {
        Try(new NotEstablished("the authority", null, null), Raised(10)).ShouldBe(Outcome.Open);
        Outcome.Open.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        Try(new NotRegulated("no rule"), Raised(500)).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(40, Pathway.NoCertificate, Pathway.NoCertificate)]
    [InlineData(60, Pathway.Certificate, Pathway.Certificate)]
    [InlineData(80, Pathway.Approval, Pathway.Prohibited)] // past what a certificate reaches: no certificate alone, the rest is not said
    public void Where_a_rule_does_not_say_what_lies_beyond_it_is_at_least_more_onerous_than_the_last_tier_that_was_passed(
        int lift,
        Pathway best,
        Pathway worst
    ) => Try(((Stated)FiftyThenSeventyFive) with { Beyond = null }, Raised(lift)).ShouldBe(new Outcome(best, worst));

    [Fact]
    [Trait("Basis", "derived")]
    public void A_tier_for_other_vehicles_says_nothing_of_what_lies_beyond()
    {
        var content = new Stated([Tier(Pathway.Certificate, AtMost(Lift, 75)) with { When = When(Fitted, "yes") }], null);
        Try(content, Raised(80).With(Fitted, "no")).ShouldBe(Outcome.Open);
        Try(content, Raised(80)).ShouldBe(Outcome.Open);
        Try(content, Raised(80).With(Fitted, "yes")).ShouldBe(new Outcome(Pathway.Approval, Pathway.Prohibited));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Past_a_tier_that_prohibits_nothing_is_more_onerous() =>
        Try(new Stated([Tier(Pathway.Prohibited, AtMost(Lift, 10))], null), Raised(80))
            .ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("yes", Truth.Yes)]
    [InlineData("no", Truth.No)]
    [InlineData(null, Truth.Unknown)]
    public void A_rule_binds_the_vehicles_that_it_names(string? word, Truth binds)
    {
        var facts = word is null ? FactSet.Nothing : FactSet.Nothing.With(Fitted, word);
        Judged(Resolved(FiftyThenSeventyFive, When(Fitted, "yes", "certified")), facts).Binds.ShouldBe(binds);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(60, Truth.Yes)]
    [InlineData(61, Truth.No)]
    public void A_rule_may_bind_by_a_measure(int lift, Truth binds)
    {
        var upTo60 = new Predicate([new FactTest(Lift, [], new Bounds(null, new Bound(60, true)), Mark)]);
        Judged(Resolved(FiftyThenSeventyFive, upTo60), Raised(lift)).Binds.ShouldBe(binds);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_condition_known_not_to_be_met_closes_its_tier_and_one_still_to_be_shown_does_not()
    {
        var tier = Tier(Pathway.NoCertificate, AtMost(Lift, 50)) with { Provided = ["travel-kept"] };
        var version = Resolved(new Stated([tier], Pathway.Prohibited));
        Judged(version, Raised(40)).Outcome.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
        Judged(version, Shown(true)).Outcome.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
        Judged(version, Shown(false)).Outcome.ShouldBe(new Outcome(Pathway.Prohibited, Pathway.Prohibited));

        static FactSet Shown(bool met) => Raised(40) with { Shown = ImmutableDictionary<string, bool>.Empty.Add("travel-kept", met) };
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_was_judged_before_changes_no_verdict()
    {
        var tier = Tier(Pathway.NoCertificate, AtMost(Lift, 50)) with { When = When(Fitted, "yes"), Provided = ["travel-kept"] };
        var table = DecisionTable.Of(Book().Vocabulary, Resolved(new Stated([tier], Pathway.Prohibited)));
        var row = table.NewRow();
        for (var turn = 0; turn < 2; turn++)
            foreach (var fitted in (string?[])["yes", "no", null])
            foreach (var met in (bool?[])[null, false, true])
            foreach (var lift in (int[])[40, 50, 51])
            {
                row.Clear();
                row.Set(table.Input(Lift), lift);
                row.Set(table.Input("travel-kept"), met);
                if (fitted is not null)
                    row.Set(table.Input(Fitted), fitted);
                var may = lift <= 50 && met is not false && fitted is not "no";
                table
                    .Judge(row)
                    .ShouldBe(
                        new Outcome(
                            may ? Pathway.NoCertificate : Pathway.Prohibited,
                            may && fitted is not null ? Pathway.NoCertificate : Pathway.Prohibited
                        )
                    );
            }
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void No_limit_always_holds_and_a_limit_that_is_not_established_is_neither_kept_nor_broken()
    {
        Try(new Stated([Tier(Pathway.NoCertificate, Of(Lift, LimitKind.None))], Pathway.Prohibited), Raised(500))
            .ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.NoCertificate));
        Try(new Stated([Tier(Pathway.NoCertificate, Of(Lift, LimitKind.NotEstablished))], Pathway.Prohibited), Raised(0))
            .ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Of_two_verdicts_both_give_the_more_onerous_and_either_gives_the_span()
    {
        var easy = new Outcome(Pathway.NoCertificate, Pathway.Certificate);
        var hard = new Outcome(Pathway.Certificate, Pathway.Approval);
        foreach (var (left, right) in new[] { (easy, hard), (hard, easy) })
        {
            left.And(right).ShouldBe(new Outcome(Pathway.Certificate, Pathway.Approval));
            left.Or(right).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Approval));
        }

        easy.Decided.ShouldBeFalse();
        new Outcome(Pathway.Approval, Pathway.Approval).Decided.ShouldBeTrue();
    }

    [Fact]
    [Trait("Basis", "common practice")]
    // Common practice, no source.
    public void The_total_lift_is_suspension_and_body_and_half_the_growth_of_the_tyre_unless_a_rule_counts_otherwise()
    {
        var facts = Raised(45).With("body-lift", 20, "stated").With(FactSet.TyreGrowth, 28, "stated");
        facts.Measure(FactSet.TyreLift, FactSet.PartsOf(null)).Exact.ShouldBe((Fraction)14);
        facts.Measure(FactSet.TotalLift, FactSet.PartsOf(null)).Exact.ShouldBe((Fraction)79);
        facts.Measure(FactSet.TotalLift, FactSet.PartsOf([])).Exact.ShouldBe((Fraction)79);
        facts.Measure(FactSet.TotalLift, FactSet.PartsOf([Lift, "body-lift"])).Exact.ShouldBe((Fraction)65);
        Raised(45).Measure(FactSet.TotalLift, FactSet.PartsOf(null)).ShouldBe(Interval.Anything);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void The_uncertainty_of_a_total_is_the_sum_over_its_parts_and_that_of_the_tyre_half_of_its_growth()
    {
        var facts = FactSet.Nothing with
        {
            Uncertainties = ImmutableDictionary<string, Fraction>.Empty.Add(Lift, 2).Add("body-lift", 1).Add(FactSet.TyreGrowth, 4),
        };
        facts.Uncertainty(FactSet.TyreLift, FactSet.PartsOf(null)).ShouldBe((Fraction)2);
        facts.Uncertainty(FactSet.TotalLift, FactSet.PartsOf(null)).ShouldBe((Fraction)5);
        facts.With(FactSet.TotalLift, 80, "stated").Uncertainty(FactSet.TotalLift, FactSet.PartsOf(null)).ShouldBe(Fraction.Zero);
        facts.Uncertainty("track-increase", FactSet.PartsOf(null)).ShouldBe(Fraction.Zero);
    }

    private static Outcome Try(Content content, FactSet facts) => Judged(Resolved(content), facts).Outcome;

    private static RuleResult Judged(ResolvedVersion version, FactSet facts)
    {
        var table = DecisionTable.Of(Book().Vocabulary, version);
        var row = table.NewRow();
        row.Set(facts);
        return table.Judge(0, row);
    }
}
