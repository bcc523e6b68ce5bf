using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

/// <summary>Predicates that stand outside of rules, compiled: the jobs that a scheme serves, the jobs that a caution is for.</summary>
internal sealed class PredicateTable
{
    private readonly DecisionTable table;
    private readonly Dictionary<Predicate, int> places = new(ReferenceEqualityComparer.Instance);

    public PredicateTable(Vocabulary vocabulary, IEnumerable<Predicate> predicates)
    {
        var distinct = predicates.Distinct<Predicate>(ReferenceEqualityComparer.Instance).ToArray();
        for (var i = 0; i < distinct.Length; i++)
            places[distinct[i]] = i;
        table = TableBuilder.Build(vocabulary, [.. distinct.Select(Scope)], []);
    }

    /// <summary>What is known of a job, placed.</summary>
    public Row Place(FactSet facts)
    {
        var row = table.NewRow();
        row.Set(facts);
        return row;
    }

    /// <summary>Whether all tests of a predicate pass.</summary>
    public Truth Holds(Predicate predicate, Row row) => table.Binds(places[predicate], row.Cells);

    private static RuleInForce Scope(Predicate predicate) =>
        RuleInForce.Of(
            new ResolvedVersion(
                new Rule
                {
                    Jurisdiction = "",
                    Topic = "",
                    Name = "",
                    Title = "",
                    For = new Descriptions([predicate]),
                    Mark = default,
                },
                null,
                null,
                [],
                new NotRegulated(""),
                null,
                [],
                [],
                []
            )
        );
}
