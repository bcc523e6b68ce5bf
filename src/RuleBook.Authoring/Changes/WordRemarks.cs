using Fractions;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Units;

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
                            ? [$"not met where {fails.Measure} is over {Numbers.Show(fails.Percent)} %"]
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
                        .. measure.Step is { } step ? [$"in steps of {Shown(step, measure)}"] : Array.Empty<string>(),
                        .. Within("plausible", measure.Plausible, measure),
                        .. Within("possible", measure.Possible, measure),
                        measure.IsDerived ? "derived" : "stated",
                        $"{(measure.IfAbsent is { } absent ? Shown(absent, measure) : "unknown")} where it is absent",
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
            .. book
                .Vocabulary.CategoryGvms.OrderBy(pair => pair.Key, StringComparer.Ordinal)
                .Select(pair => $"a GVM of {pair.Key}{End(" over ", pair.Value.Over)}{End(" up to ", pair.Value.AtMost)} kg"),
            .. book.Reference.Categories.Select(bounds => $"category {bounds.Category}: {bounds.GvmWords}, {bounds.SeatWords}"),
            .. book.Reference.Fluids.Values.Select(fluid =>
                $"{fluid.Name}{End(" ", fluid.DensityKgPerL)} kg/L{End(", from ", fluid.AtLeastKgPerL)}{End(" to ", fluid.AtMostKgPerL)}"
            ),
            .. book.Reference.Uncertainties.Values.Select(one => $"uncertainty of {one.Measure} {Numbers.Show(one.Expanded)}"),
            $"guard band {Numbers.Show(book.Reference.GuardFactor)}",
            .. book.Reference.TareFuelL is { } fuel ? [$"fuel in tare {Numbers.Show(fuel)} L"] : Array.Empty<string>(),
            .. book.Reference.LeftRightWarningMm is { } apart ? [$"left and right {Numbers.Show(apart)} mm"] : Array.Empty<string>(),
            .. book.Reference.Clearance is { } clearance
                ?
                [
                    $"clearance in {Where(clearance.Jurisdiction)} {Numbers.Show(clearance.MidwayMmPerMetre)} mm a metre midway, "
                        + $"{Numbers.Show(clearance.RunningMm)} mm anywhere",
                ]
                : Array.Empty<string>(),
            .. book.Reference.Towing.Select(towing =>
                $"towing without a maker's figure in {towing.Jurisdiction}: {Numbers.Show(towing.Braked)} times the vehicle's mass with "
                + $"brakes, {Numbers.Show(towing.Unbraked)} without"
            ),
            .. book.Reference.TyreSpeeds.SelectMany(rule =>
                rule.Kinds.Select(kind =>
                    $"{rule.Condition} in {Where(rule.Jurisdiction)} of "
                    + (kind.Categories.IsEmpty ? "any other category" : string.Join(" and ", kind.Categories))
                    + $": {Numbers.Show(kind.KilometresPerHour)} km/h"
                )
            ),
            .. book.Reference.Speedometer.Select(period =>
                $"speedometer in {Where(period.Jurisdiction)}{Since(" from ", period.From)}{Since(" before ", period.Before)}: "
                + (period.Rules.IsEmpty ? "no accuracy asked for" : string.Join(" or ", period.Rules.Select(Accuracy)))
            ),
        ];

    private static string Accuracy(NamedSpeedometerRule named)
    {
        var rule = named.Rule;
        return $"{named.Name}, {Numbers.Show(rule.UnderPercent)} % under to {Numbers.Show(rule.OverPercent)} % and "
            + $"{Numbers.Show(rule.OverConstant)} km/h over{End(", above ", rule.AboveTrueSpeed)}";
    }

    private static IEnumerable<string> Within(string word, Interval values, Measure measure) =>
        values.Low is null && values.High is null
            ? []
            :
            [
                word
                    + (values.Low is { } low ? $" from {Shown(low, measure)}" : "")
                    + (values.High is { } high ? $" to {Shown(high, measure)}" : ""),
            ];

    private static string Shown(Fraction value, Measure measure) => new Quantity(value / measure.Unit.ToBase, measure.Unit).ToString();

    private static string End(string word, Fraction? value) => value is { } known ? word + Numbers.Show(known) : "";

    private static string Since(string word, DateOnly? day) => day is { } known ? word + Phrases.Day(known) : "";

    private static string Where(string? jurisdiction) => jurisdiction ?? "every place";

    private static Remark Told(string about, Said said, Mark mark) =>
        new(RemarkKind.Other, null, "The words of the book", about, said.From, said.Text, mark);
}
