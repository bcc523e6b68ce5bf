using CsCheck;
using Fractions;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Made;

namespace RuleBook.Tests.Tables;

/// <summary>
/// What is answered while facts lack is what all their values together give: no less, and where they are tried no more (supervaluation, B.
/// van Fraassen, Singular Terms, Truth-Value Gaps, and Free Logic, 1966). Derived, on random limits of a scenario of our own.
/// </summary>
public sealed class CompletionProperties
{
    private const int Most = 4;
    private static readonly string[] Names = [Lift, "body-lift", "track-increase"];

    /// <summary>All edges are whole numbers from 1 to 4, so halves from 0.5 to 4.5 lie in every cell.</summary>
    private static readonly Fraction[] Values = [.. Enumerable.Range(1, 2 * Most + 1).Select(i => new Fraction(i, 2))];

    private static readonly Gen<Limit> Limits = Gen.Select(
        Gen.Int[0, 2],
        Gen.Int[1, Most],
        Gen.Bool,
        Gen.Bool,
        (measure, edge, closed, upper) =>
            new Limit(
                Names[measure],
                LimitKind.Bounded,
                upper ? new Bounds(null, new Bound(edge, closed)) : new Bounds(new Bound(edge, closed), null),
                Mark
            )
    );

    private static readonly Gen<Tier> Tiers = Gen.Select(
        Gen.Int[0, 3],
        Limits.Array[0, 3],
        Gen.Int[0, 2],
        (pathway, limits, word) =>
            Tier((Pathway)pathway, [.. limits]) with
            {
                When = word == 2 ? Predicate.Always : When("stability-control", word == 0 ? "yes" : "no"),
            }
    );

    private static readonly Gen<Stated> Contents = Gen.Select(
        Tiers.Array[0, 5],
        Gen.Int[0, 4],
        (tiers, beyond) => new Stated([.. tiers.OrderBy(tier => tier.Pathway)], beyond == 4 ? null : (Pathway)beyond)
    );

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_not_known_gives_what_all_its_values_together_give() =>
        Gen.Select(Contents, Gen.Int[0, 15])
            .Sample(
                (content, unknown) =>
                {
                    var table = Table(content);
                    var row = table.NewRow();
                    foreach (var name in Names.Where(name => table.Find(name) is not null))
                        row.Set(table.Input(name), 2);
                    if ((unknown & 8) == 0 && table.Find("stability-control") is { } known)
                        row.Set(known, "yes");
                    var open = Names.Where((name, i) => (unknown >> i & 1) == 1 && table.Find(name) is not null).ToArray();
                    foreach (var name in open)
                        row.Forget(table.Input(name));

                    var complete = table.Complete(row);
                    var three = table.Judge(row);
                    (three.Best <= complete.Best && three.Worst >= complete.Worst).ShouldBeTrue("three-valued logic is never narrower");
                    var all = All(table, row, open, (unknown & 8) != 0).Aggregate((left, right) => left.Or(right));
                    complete.ShouldBe(all);
                },
                iter: 2000
            );

    [Fact]
    [Trait("Basis", "derived")]
    public void Taking_a_fact_away_only_widens_the_answer() =>
        Gen.Select(Contents, Gen.Int[0, 8].Array[3], Gen.Int[0, 2])
            .Sample(
                (content, at, less) =>
                {
                    var table = Table(content);
                    var row = table.NewRow();
                    for (var i = 0; i < Names.Length; i++)
                        if (table.Find(Names[i]) is { } input)
                            row.Set(input, Values[at[i]]);
                    var (known, told) = (table.Judge(row), table.Complete(row));
                    if (table.Find(Names[less]) is { } forgotten)
                        row.Forget(forgotten);
                    var (wider, open) = (table.Judge(row), table.Complete(row));
                    (wider.Best <= known.Best && wider.Worst >= known.Worst).ShouldBeTrue();
                    (open.Best <= told.Best && open.Worst >= told.Worst).ShouldBeTrue();
                },
                iter: 2000
            );

    private static IEnumerable<Outcome> All(DecisionTable table, Row row, string[] open, bool word)
    {
        if (word && table.Find("stability-control") is { } fact)
        {
            foreach (var value in fact.Words)
            {
                row.Set(fact, value);
                foreach (var outcome in All(table, row, open, false))
                    yield return outcome;
            }

            yield break;
        }

        if (open.Length == 0)
        {
            yield return table.Judge(row);
            yield break;
        }

        foreach (var value in Values)
        {
            row.Set(table.Input(open[0]), value);
            foreach (var outcome in All(table, row, open[1..], false))
                yield return outcome;
        }
    }

    private static DecisionTable Table(Stated content)
    {
        var words = Book().Vocabulary;
        foreach (var name in Names.Skip(1))
            words = words with { Measures = words.Measures.Add(name, MeasureOf(name)) };
        return DecisionTable.Of(words, Resolved(content));
    }
}
