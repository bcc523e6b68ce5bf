using System.Collections.Immutable;

namespace RuleBook.Tables;

/// <summary>What the versions of a rule ask for, in the order in which they do.</summary>
/// <param name="Words">The words that they test, each once.</param>
/// <param name="Axes">The measures that they bound, each once.</param>
internal sealed record RuleReads(ImmutableArray<Input> Words, ImmutableArray<Axis> Axes)
{
    public static RuleReads Of(DecisionTable table, RuleInForce rule) =>
        new(
            [
                .. rule
                    .Candidates.SelectMany(version => version.WordTests())
                    .Select(test => test.Fact)
                    .Distinct()
                    .Select(table.Find)
                    .OfType<Input>(),
            ],
            [
                .. rule
                    .Candidates.SelectMany(version => version.Bounded().Select(pair => table.AxisOf(pair.Measure, version.Parts)))
                    .Distinct(),
            ]
        );
}
