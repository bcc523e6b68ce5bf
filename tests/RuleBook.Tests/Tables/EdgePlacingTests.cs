using System.Numerics;
using Fractions;
using RuleBook.Facts;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.Tables;

/// <summary>
/// What is placed by whole numbers and what is placed as a fraction give the same: at, just below and just above limits of every size,
/// around 32 and 64 bits, on the grid of a table and off it. The outside is the comparison of fractions of any size by the package
/// Fractions.
/// </summary>
public sealed class EdgePlacingTests
{
    private const string Other = "body-lift";

    private static readonly Fraction TooFine = new(1, 999_999_937); // on no grid of a table

    private static readonly Fraction[] Steps =
    [
        0,
        new(1, 10),
        new(1, 100_000),
        new(1, 1_000_000),
        new(1, 3),
        new(1, 7),
        new(1, int.MaxValue),
        new(1, 1L << 31),
        new(1, 1L << 32),
        new(1, 1L << 33),
        new(1, (1L << 31) - 2),
        new(1, 1L << 62),
        new(1, long.MaxValue),
        new(BigInteger.One, BigInteger.Pow(10, 30)),
        1,
        1L << 31,
        1L << 33,
        long.MaxValue,
    ];

    public static TheoryData<string> Edges =>
        [
            "0",
            "50",
            "254/5",
            "-254/5",
            "1/3",
            "22/7",
            "1/100000",
            "1/100001",
            "2147483647",
            "2147483648",
            "4294967295/2",
            "4294967296",
            "-2147483648",
            "1/2147483648",
            "4294967297/4294967296",
            "36028797018963968",
            "9007199254740993",
            "9223372036854775807",
            "-9223372036854775808",
            "9223372036854775808",
            "9223372036854775807/2",
            "1/9223372036854775807",
            "1000000000000000000000000000000",
            "1/1000000000000000000000000000000",
        ];

    [Theory]
    [Trait("Basis", "derived")]
    [MemberData(nameof(Edges))]
    public void A_measure_lies_below_at_or_above_a_limit_of_any_size(string limit)
    {
        var edge = Fraction.FromString(limit, System.Globalization.CultureInfo.InvariantCulture);
        foreach (var beside in (Fraction[])[100, TooFine])
        {
            var table = Table(Lift, edge, beside);
            var (input, row) = (table.Input(Lift), table.NewRow());
            foreach (var value in Steps.SelectMany(step => new[] { edge - step, edge + step }))
            {
                row.Clear();
                row.Set(input, value);
                table.Judge(row).ShouldBe(Given(value, edge), $"{value} beside {edge}");
                row.Set(input, Interval.Of(value));
                table.Judge(row).ShouldBe(Given(value, edge), $"{value} as a range beside {edge}");
                row.Set(input, new Interval(value, null));
                table
                    .Judge(row)
                    .ShouldBe(
                        Given(value, edge).Or(Given(edge + 1, edge)).Or(value <= edge ? Given(edge, edge) : Given(value, edge)),
                        $"from {value} beside {edge}"
                    );
                if (!Fits(value.Numerator) || !Fits(value.Denominator))
                    continue;
                foreach (var times in (long[])[1, 2, 3, 1 << 20])
                {
                    if (!Fits(value.Numerator * times) || !Fits(value.Denominator * times))
                        continue;
                    row.Set(input, (long)value.Numerator * times, (long)value.Denominator * times);
                    table.Judge(row).ShouldBe(Given(value, edge), $"{value} times {times}/{times} beside {edge}");
                }
            }
        }
    }

    [Theory]
    [Trait("Basis", "derived")]
    [MemberData(nameof(Edges))]
    public void A_total_lies_below_at_or_above_a_limit_of_any_size(string limit)
    {
        var edge = Fraction.FromString(limit, System.Globalization.CultureInfo.InvariantCulture);
        var table = Table(FactSet.TotalLift, edge, 100);
        var row = table.NewRow();
        foreach (var step in Steps)
        foreach (var growth in (Fraction[])[0, 1, new(1, 3), new(1, 10), new(1, 1L << 40), 28])
        {
            var lift = edge - growth / 2 + step;
            row.Clear();
            row.Set(table.Input(Lift), lift - 7);
            row.Set(table.Input(Other), 7);
            row.Set(table.Input(FactSet.TyreGrowth), growth);
            table.Judge(row).ShouldBe(Given(edge + step, edge), $"{lift - 7} + 7 + {growth}/2 beside {edge}");
            row.Set(table.Input(FactSet.TyreLift), growth); // stated itself, it follows from nothing
            table.Judge(row).ShouldBe(Given(edge + step + growth / 2, edge), $"{lift - 7} + 7 + {growth} beside {edge}");
            row.Set(table.Input(FactSet.TotalLift), edge);
            table.Judge(row).ShouldBe(Given(edge, edge));
            row.Forget(table.Input(FactSet.TotalLift));
            row.Forget(table.Input(FactSet.TyreLift));
            table.Judge(row).ShouldBe(Given(edge + step, edge));
            row.Forget(table.Input(Other));
            table.Judge(row).ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        }
    }

    /// <summary>
    /// Below the limit without a certificate, at it with one, above it not at all; another measure has a limit that never binds.
    /// </summary>
    private static DecisionTable Table(string measure, Fraction edge, Fraction beside)
    {
        var under = new Limit(measure, LimitKind.Bounded, new Bounds(null, new Bound(edge, false)), Mark);
        var never = new Limit("never", LimitKind.Bounded, new Bounds(new Bound(beside, true), null), Mark);
        var stated = new Stated(
            [Tier(Pathway.NoCertificate, never), Tier(Pathway.NoCertificate, under), Tier(Pathway.Certificate, AtMost(measure, edge))],
            Pathway.Prohibited
        );
        var vocabulary = Book().Vocabulary;
        foreach (var name in (string[])[Other, FactSet.TyreGrowth, FactSet.TyreLift, FactSet.TotalLift])
            vocabulary = vocabulary with { Measures = vocabulary.Measures.Add(name, MeasureOf(name)) };
        vocabulary = vocabulary with { Measures = vocabulary.Measures.Add("never", MeasureOf("never") with { IfAbsent = -1 }) };
        return DecisionTable.Of(vocabulary, Resolved(stated));
    }

    private static Outcome Given(Fraction value, Fraction edge)
    {
        var pathway = value.CompareTo(edge) switch
        {
            < 0 => Pathway.NoCertificate,
            0 => Pathway.Certificate,
            _ => Pathway.Prohibited,
        };
        return new Outcome(pathway, pathway);
    }

    private static bool Fits(BigInteger number) => number >= long.MinValue && number <= long.MaxValue;
}
