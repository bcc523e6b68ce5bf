using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Changes;

/// <summary>What the words of the book mean, and the figures of no single place; these hold wherever a rule uses them.</summary>
internal static class WordRemarks
{
    public static IEnumerable<Remark> Of(Book before, Book after) =>
        [
            .. Differing(
                before.Vocabulary,
                after.Vocabulary,
                "condition",
                Plain,
                term => term.Mark,
                term =>
                    [
                        term.Title,
                        term.Definition.Trim(),
                        .. term.DecidedBy is { } by ? [$"decided by {by}"] : Array.Empty<string>(),
                        .. term.FailsOver is { } fails
                            ? [$"not met where {fails.Measure} is over {fails.Percent} %"]
                            : Array.Empty<string>(),
                    ]
            ),
            .. Differing(
                before.Vocabulary,
                after.Vocabulary,
                "condition",
                words => words.Figured,
                one => one.Pattern.Mark,
                one => [one.Pattern.Title, one.Pattern.Definition.Trim(), $"{one.Dimension}"]
            ),
            .. Differing(
                before.Vocabulary,
                after.Vocabulary,
                "measure",
                words => words.Measures.Where(pair => pair.Value.Share is null).ToDictionary(),
                measure => measure.Mark,
                measure =>
                    [
                        measure.Definition.Trim(),
                        $"stated at {measure.Job}",
                        $"in {measure.Unit.Symbol}",
                        $"below zero: {measure.BelowZero}",
                        $"step {measure.Step}",
                        $"plausible {measure.Plausible}",
                        $"possible {measure.Possible}",
                        measure.IsDerived ? "derived" : "stated",
                        $"{(measure.IfAbsent is null ? "unknown" : measure.IfAbsent.ToString())} where it is absent",
                        $"touches {string.Join(' ', measure.Topics.Order(StringComparer.Ordinal))}",
                        measure.NeedsOwnRule ? "asks for a rule of its own" : "is allowed by silence",
                    ]
            ),
            .. Differing(
                before.Vocabulary,
                after.Vocabulary,
                "fact",
                words => words.Facts,
                fact => fact.Mark,
                fact =>
                    [
                        fact.Definition.Trim(),
                        $"stated at {fact.Job}",
                        $"one of {string.Join(", ", fact.Values.Except(fact.WhereNamed))}",
                        fact.WhereNamed.IsEmpty
                            ? "any of them whether named or not"
                            : $"where a rule names it {string.Join(", ", fact.WhereNamed)}",
                    ]
            ),
            .. Differing(
                before.Vocabulary,
                after.Vocabulary,
                "topic",
                words => words.Topics,
                topic => topic.Mark,
                topic => [topic.Definition.Trim(), topic.OfUse ? "of use" : "of modification"]
            ),
            .. Figures(before, after),
        ];

    private static IEnumerable<Remark> Differing<T>(
        Vocabulary before,
        Vocabulary after,
        string kind,
        Func<Vocabulary, IReadOnlyDictionary<string, T>> words,
        Func<T, Mark> mark,
        Func<T, IEnumerable<string>> means
    )
        where T : class =>
        from name in words(before).Keys.Union(words(after).Keys).Order(StringComparer.Ordinal)
        let was = words(before).GetValueOrDefault(name)
        let now = words(after).GetValueOrDefault(name)
        let said = Said.Differently(was is null ? [] : means(was), now is null ? [] : means(now))
        where said is not null
        select Told($"{kind} {name}", said, mark(now ?? was!));

    /// <summary>The vocabulary's own conditions; what a rule makes out of them is told by the rule.</summary>
    private static Dictionary<string, Term> Plain(Vocabulary vocabulary) =>
        vocabulary.Conditions.Where(pair => !pair.Value.IsMade).ToDictionary();

    private static IEnumerable<Remark> Figures(Book before, Book after) =>
        Said.Differently(Of(before), Of(after)) is { } said
            ? [Told("figures of no single place", said, new Mark("schema/reference", 1, 1))]
            : [];

    private static IEnumerable<string> Of(Book book) =>
        [
            .. book.Cautions.Select(caution => $"caution: {caution.Trim()}"),
            .. book.Vocabulary.CategoryGvms.Select(pair => $"a GVM of {pair.Key} over {pair.Value.Over} up to {pair.Value.AtMost} kg"),
            .. book.Reference.Categories.Select(bounds => $"category {bounds.Category}: {bounds.GvmWords}, {bounds.SeatWords}"),
            .. book.Reference.Fluids.Values.Select(fluid =>
                $"{fluid.Name} {fluid.DensityKgPerL} ({fluid.AtLeastKgPerL} to {fluid.AtMostKgPerL}) kg/L"
            ),
            .. book.Reference.Uncertainties.Values.Select(one => $"uncertainty of {one.Measure} {one.Expanded}"),
            $"guard band {book.Reference.GuardFactor}",
            $"fuel in tare {book.Reference.TareFuelL} L",
            $"left and right {book.Reference.LeftRightWarningMm} mm",
            $"clearance in {Where(book.Reference.Clearance?.Jurisdiction)} {book.Reference.Clearance?.MidwayMmPerMetre} mm a metre "
                + $"midway, {book.Reference.Clearance?.RunningMm} mm",
            .. book.Reference.Towing.Select(towing =>
                $"towing without a maker's figure in {towing.Jurisdiction}: {towing.Braked} braked, {towing.Unbraked} unbraked"
            ),
            .. book.Reference.TyreSpeeds.SelectMany(rule =>
                rule.Kinds.Select(kind =>
                    $"{rule.Condition} in {Where(rule.Jurisdiction)} of {string.Join(", ", kind.Categories)}: {kind.KilometresPerHour} km/h"
                )
            ),
            .. book.Reference.Speedometer.Select(period =>
                $"speedometer in {Where(period.Jurisdiction)} {period.From} to {period.Before}: {string.Join(" or ", period.Rules)}"
            ),
        ];

    private static string Where(string? jurisdiction) => jurisdiction ?? "every place";

    private static Remark Told(string about, Said said, Mark mark) =>
        new(RemarkKind.Other, null, "The words of the book", about, said.From, said.Text, mark);
}
