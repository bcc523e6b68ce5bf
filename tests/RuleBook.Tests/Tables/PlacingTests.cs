using System.Numerics;
using Fractions;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.Tables;

/// <summary>
/// A legal limit is never decided by rounding: a measure is placed by exact comparison of rational numbers, whatever their size. Inch by
/// the International Yard and Pound Agreement of 1959 (25.4 mm); the rest is arithmetic.
/// </summary>
public sealed class PlacingTests
{
    private static readonly Fraction Tiny = new(BigInteger.One, BigInteger.Pow(10, 60)); // far beyond 128 bits

    public static TheoryData<Fraction, Pathway> AroundFifty =>
        new()
        {
            { 50, Pathway.NoCertificate },
            { new Fraction(501, 10), Pathway.Certificate },
            { new Fraction(499, 10), Pathway.NoCertificate },
            { Quantity.Parse("2 in").Base, Pathway.Certificate }, // 50.8 mm
            { Quantity.Parse("1.9685 in").Base, Pathway.NoCertificate }, // 49.9999 mm
            { new Fraction(50) + Tiny, Pathway.Certificate },
            { new Fraction(50) - Tiny, Pathway.NoCertificate },
            { new Fraction(BigInteger.Pow(7, 50) * 50, BigInteger.Pow(7, 50), false), Pathway.NoCertificate }, // 50, not reduced
            { new Fraction(BigInteger.Pow(7, 50) * 50 + 1, BigInteger.Pow(7, 50)), Pathway.Certificate },
            { new Fraction(long.MaxValue, 1), Pathway.Prohibited },
            { new Fraction(long.MinValue, 1), Pathway.NoCertificate },
            { new Fraction(BigInteger.Pow(10, 40)), Pathway.Prohibited },
            { -new Fraction(BigInteger.Pow(10, 40)), Pathway.NoCertificate },
            { 75, Pathway.Certificate },
            { new Fraction(75) + Tiny, Pathway.Prohibited },
        };

    [Theory]
    [Trait("Basis", "derived")]
    [MemberData(nameof(AroundFifty))]
    public void A_lift_at_the_limit_is_within_and_one_past_it_by_anything_is_not(Fraction lift, Pathway pathway)
    {
        var table = DecisionTable.Of(Book().Vocabulary, Resolved(FiftyThenSeventyFive));
        var row = table.NewRow();
        row.Set(table.Input(Lift), lift);
        table.Judge(row).ShouldBe(new Outcome(pathway, pathway));
        row.Clear();
        table.Judge(row).ShouldBe(Outcome.Open);
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData(2, 7, 0, 1, 1, 7, Pathway.NoCertificate)] // 2/7 + 0 + 1/7 < 3/7 + tiny
    [InlineData(1, 3, 1, 3, 1, 3, Pathway.Certificate)]
    [InlineData(long.MaxValue, long.MaxValue - 2, 0, 1, 0, 1, Pathway.Certificate)] // just over one
    [InlineData(long.MaxValue - 2, long.MaxValue, 1, long.MaxValue, 0, 1, Pathway.NoCertificate)]
    [InlineData(1, long.MaxValue, 1, long.MaxValue - 2, 1, long.MaxValue - 4, Pathway.NoCertificate)]
    public void A_total_is_added_up_exactly(long first, long of, long second, long ofSecond, long third, long ofThird, Pathway pathway)
    {
        // At most just under one without a certificate; three thirds are one, which is not.
        var limit = new Limit(FactSet.TotalLift, LimitKind.Bounded, new Bounds(null, new Bound(Fraction.One, false)), Mark);
        var version = Resolved(new Stated([Tier(Pathway.NoCertificate, limit)], Pathway.Certificate));
        var vocabulary = Book().Vocabulary;
        foreach (var name in (string[])["body-lift", FactSet.TyreGrowth, FactSet.TyreLift, FactSet.TotalLift])
            vocabulary = vocabulary with { Measures = vocabulary.Measures.Add(name, MeasureOf(name)) };
        var table = DecisionTable.Of(vocabulary, version);
        var row = table.NewRow();
        row.Set(table.Input(Lift), first, of);
        row.Set(table.Input("body-lift"), second, ofSecond);
        row.Set(table.Input(FactSet.TyreLift), third, ofThird);
        table.Judge(row).ShouldBe(new Outcome(pathway, pathway));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_measure_with_more_edges_than_a_column_has_cells_is_told_apart_all_the_same()
    {
        // At most i mm on one of four pathways by turns, i from 1 to 100: two hundred cells.
        var tiers = Enumerable
            .Range(1, 100)
            .Select(i => Tier(i % 2 == 0 ? Pathway.NoCertificate : Pathway.Certificate, AtMost(Lift, i)))
            .ToArray();
        var table = DecisionTable.Of(Book().Vocabulary, Resolved(new Stated([.. tiers], Pathway.Prohibited)));
        var row = table.NewRow();
        for (var tenth = 1; tenth <= 1010; tenth++)
        {
            row.Set(table.Input(Lift), tenth, 10);
            var whole = (tenth + 9) / 10;
            var expected =
                whole > 100 ? Pathway.Prohibited
                : whole % 2 == 0 ? Pathway.NoCertificate
                : Pathway.Certificate;
            table.Judge(row).ShouldBe(new Outcome(expected, expected), $"{tenth} tenths");
        }
    }
}
