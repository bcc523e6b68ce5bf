using System.Collections.Immutable;
using System.Numerics;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>Finds what is not known on a row and bears on some rules: which version is in force, words, measures.</summary>
internal static class Unknowns
{
    /// <summary>A set of openings is a word of 64 bits.</summary>
    private const int Most = 64;

    /// <summary>In the order of the rules; of one rule first the vehicles that it binds, then tier by tier.</summary>
    public static ImmutableArray<Unknown> Of(DecisionTable table, Row row, IReadOnlyList<int> rules)
    {
        var found = rules.Where(rule => table.Rules[rule].VersionColumn != 0).Select(rule => OfVersions(table, rule)).ToList<Unknown>();
        var (words, asked) = (new HashSet<int>(), new HashSet<int>());
        foreach (var rule in rules)
        foreach (var input in table.Reads(rule).Words)
            if (words.Add(input.At) && row.Cells[input.At] == table.Blank[input.At])
                found.Add(OfWord(table, input));
        foreach (var rule in rules)
        foreach (var axis in table.Reads(rule).Axes)
        foreach (var slot in Open(axis.Sum, row))
            if (asked.Add(slot) && OfMeasure(table, row, slot) is { } measure)
                found.Add(measure);
        return [.. found.Take(Most)];
    }

    /// <summary>
    /// Every edge at which something could change with a measure that is not known: those of the measure, and those of sums that it is part
    /// of.
    /// </summary>
    public static IEnumerable<(string Measure, Fraction Value)> Edges(DecisionTable table, Row row) =>
        table.Axes.SelectMany(axis =>
            Open(axis.Sum, row)
                .SelectMany(slot =>
                    axis.Edges.ToArray()
                        .SelectMany(edge => Spread(axis.Sum, edge.Value, slot, row))
                        .Select(value => (table.MeasureOf(slot), value))
                )
        );

    private static UnknownBit OfVersions(DecisionTable table, int rule)
    {
        var candidates = table.InForce[rule].Candidates;
        return new UnknownBit(
            table.Rules[rule].VersionColumn,
            candidates.Length,
            () =>
                new Opening(
                    table.InForce[rule].Rule.Id,
                    OpeningKind.Version,
                    [.. candidates.Select(version => new Option(Span(version), null))]
                )
        );
    }

    private static string Span(ResolvedVersion version) =>
        (version.From, version.Until) switch
        {
            (null, null) => "in force since an unknown day",
            (null, { } until) => $"in force before {until.Words}",
            ({ } from, null) => $"in force from {from.Words}",
            ({ } from, { } until) => $"in force from {from.Words} until {until.Words}",
        };

    private static UnknownBit OfWord(DecisionTable table, Input input) =>
        new(
            input.At,
            BitOperations.PopCount(table.Blank[input.At]),
            () =>
                new Opening(
                    table.Vocabulary.Facts[input.Name].Job,
                    OpeningKind.Word,
                    [.. input.Words.Take(BitOperations.PopCount(table.Blank[input.At])).Select(word => new Option(word, null))]
                )
        );

    private static UnknownMeasure? OfMeasure(DecisionTable table, Row row, int slot)
    {
        var measure = table.Vocabulary.Measures[table.MeasureOf(slot)];
        var known = row.Stated(slot);
        if (measure.IsDerived && known is not null)
            return null;
        return known is null && !table.Sums.Any(axis => IsPart(axis.Sum, slot))
            ? table.Unknown(slot, () => Of(table.NewRow(), null))
            : Of(row, known);

        UnknownMeasure Of(Row placed, ExactRange? range)
        {
            Axis[] bearing = [.. table.Axes.Where(axis => Bears(axis.Sum, slot, placed))];
            return new UnknownMeasure(
                measure,
                slot,
                () => Cut(placed, slot, measure, bearing, range),
                [.. bearing.SelectMany(axis => Enumerable.Range(axis.Column, axis.Columns))]
            );
        }
    }

    private static ImmutableArray<Cell> Cut(Row row, int slot, Measure measure, Axis[] bearing, ExactRange? known)
    {
        var (low, high) = (known?.Low?.Value, known?.High?.Value);
        Fraction[] edges =
        [
            .. bearing
                .SelectMany(axis => axis.Edges.ToArray().SelectMany(edge => Spread(axis.Sum, edge.Value, slot, row)))
                .Concat(new[] { low, high }.OfType<Fraction>())
                .Distinct()
                .Order(),
        ];
        return
        [
            .. Cells
                .Of(measure, edges)
                .Where(cell => (low is null || cell.Lower?.Value >= low) && (high is null || cell.Upper?.Value <= high)),
        ];
    }

    /// <summary>The base measures of a sum that are not known exactly.</summary>
    private static IEnumerable<int> Open(MeasureSum sum, Row row) =>
        row.Known(sum).IsExact ? []
        : sum.Terms.Length == 0 ? [sum.Slot]
        : sum.Terms.SelectMany(term => Open(term.Part, row));

    private static bool IsPart(MeasureSum sum, int slot) => sum.Slot == slot || sum.Terms.Any(term => IsPart(term.Part, slot));

    private static bool Bears(MeasureSum sum, int slot, Row row) =>
        sum.Slot == slot || (!row.IsStated(sum) && sum.Terms.Any(term => Bears(term.Part, slot, row)));

    /// <summary>An edge of a sum falls on each part that is not known, what is known of the others taken off.</summary>
    private static IEnumerable<Fraction> Spread(MeasureSum sum, Fraction edge, int slot, Row row)
    {
        if (sum.Slot == slot)
            return [edge];
        if (sum.Terms.Length == 0 || row.IsStated(sum))
            return [];
        var rest = edge;
        foreach (var term in sum.Terms)
            if (row.Known(term.Part) is { IsExact: true } known)
                rest -= (known.Low!.Value * term.Factor).Value;
        return sum
            .Terms.Where(term => !row.Known(term.Part).IsExact)
            .SelectMany(term => Spread(term.Part, rest / term.Factor.Value, slot, row));
    }
}
