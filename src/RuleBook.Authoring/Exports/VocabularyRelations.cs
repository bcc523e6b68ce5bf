using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Authoring.Exports;

/// <summary>The words of the book as plain tables: what may be stated of a vehicle, in which unit, and what it can be.</summary>
internal static class VocabularyRelations
{
    public static IEnumerable<Relation> Of(Vocabulary vocabulary)
    {
        yield return new Relation(
            "pathways",
            [new("pathway", ColumnType.Whole), new("name", ColumnType.Text)],
            [.. Enum.GetValues<Pathway>().Select(pathway => Row($"{(int)pathway}", Wording.Of(pathway)))]
        );
        yield return new Relation(
            "facts",
            [
                new("fact", ColumnType.Text),
                new("kind", ColumnType.Text),
                new("unit", ColumnType.Text),
                new("title", ColumnType.Text),
                new("job", ColumnType.Text),
            ],
            [
                .. vocabulary
                    .Facts.Values.Select(fact => Row(fact.Name, "word", null, fact.Title, fact.Job))
                    .Concat(
                        vocabulary.Measures.Values.Select(measure =>
                            Row(
                                measure.Name,
                                measure.IsDate ? "day" : "measure",
                                measure.IsDate ? "yyyymmdd" : Unit(measure),
                                measure.Title,
                                measure.IsDerived ? null : measure.Job
                            )
                        )
                    )
                    .Concat(vocabulary.Conditions.Values.Select(condition => Row(condition.Name, "condition", null, condition.Title, null)))
                    .OrderBy(row => row[1], StringComparer.Ordinal)
                    .ThenBy(row => row[0], StringComparer.Ordinal),
            ]
        );
        yield return new Relation(
            "words",
            [new("fact", ColumnType.Text), new("word", ColumnType.Text)],
            [
                .. vocabulary
                    .Facts.Values.SelectMany(fact => fact.Values.Select(word => Row(fact.Name, word)))
                    .Concat(vocabulary.Conditions.Keys.SelectMany(condition => new[] { Row(condition, "met"), Row(condition, "not met") }))
                    .OrderBy(row => row[0], StringComparer.Ordinal),
            ]
        );
        yield return new Relation(
            "implied",
            [
                new("fact", ColumnType.Text),
                new("word", ColumnType.Text),
                new("measure", ColumnType.Text),
                new("low", ColumnType.Decimal),
                new("high", ColumnType.Decimal),
            ],
            [
                .. vocabulary
                    .CategoryGvms.OrderBy(pair => pair.Key, StringComparer.Ordinal)
                    .Select(pair =>
                        Row(
                            KnownWords.Category,
                            pair.Key,
                            KnownWords.Gvm,
                            pair.Value.Over is { } over ? Decimals.Of(over + 1) : null, // a rating is whole kilograms
                            pair.Value.AtMost is { } most ? Decimals.Of(most) : null
                        )
                    ),
            ]
        );
    }

    /// <summary>The unit in which a measure is exported.</summary>
    public static string Unit(Measure measure) =>
        measure.Unit.ToBase == 1 ? measure.Unit.Symbol : Units.Unit.Base(measure.Unit.Dimension).Symbol;

    private static ImmutableArray<string?> Row(params ImmutableArray<string?> cells) => cells;
}
