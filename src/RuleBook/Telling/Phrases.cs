using System.Globalization;
using Fractions;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The sentences of an answer, the same on the command line and in the page.</summary>
internal static class Phrases
{
    /// <summary>A day in words: <c>26 October 2018</c>.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A pathway in words.</summary>
    public static string Pathway(Pathway pathway) => Wording.Spoken(pathway);

    /// <summary>The verdict as a sentence without its full stop.</summary>
    public static string Verdict(Assessment assessment) =>
        assessment.Verdict is { } verdict ? char.ToUpperInvariant(Pathway(verdict)[0]) + Pathway(verdict)[1..]
        : assessment.JudgesNothing ? "Nothing to judge"
        : $"Undecided: from {Pathway(assessment.Between.Best)} to {Pathway(assessment.Between.Worst)}";

    /// <summary>One pathway in words, or from which to which.</summary>
    public static string Outcome(Outcome outcome) => Wording.Spoken(outcome);

    /// <summary>An amount given in base units, in <paramref name="unit"/> and with its sign.</summary>
    public static string Amount(Fraction value, Unit unit) => new Quantity(value / unit.ToBase, unit).ToString();

    /// <summary>What is known of a measure.</summary>
    public static string Interval(Interval interval, Unit unit) =>
        (interval.Exact, interval.Low, interval.High) switch
        {
            ({ } exact, _, _) => Amount(exact, unit),
            (_, { } low, { } high) => $"{Amount(low, unit)} to {Amount(high, unit)}",
            (_, { } low, null) => $"at least {Amount(low, unit)}",
            (_, null, { } high) => $"at most {Amount(high, unit)}",
            _ => "not known",
        };

    /// <summary>A limit against the job, with what is left or by how much it is passed.</summary>
    public static string Limit(LimitCheck check)
    {
        var unit = check.Measure.Unit;
        var figure = check.Value.Exact is not { } exact
            ? Interval(check.Value, unit)
            : LimitPhrases.AsWritten(
                check.Bound is null
                    ? Numbers.Show(exact / unit.ToBase, unit.Symbol is "mm" or "kg" ? 0 : 2)
                    : LimitPhrases.Figures(check).Value,
                exact,
                check
            );
        var value = $"{check.Measure.Title} {figure}";
        return check.Limit.Kind switch
        {
            LimitKind.None => $"{value}: no limit",
            LimitKind.NotEstablished => $"{value}: the limit is not established",
            _ => $"{value}, limit {LimitPhrases.Range(check)}{LimitPhrases.Standing(check)}",
        };
    }

    /// <summary>How a source is known.</summary>
    public static string ReadAs(Source source) =>
        source.ReadAs switch
        {
            Law.ReadAs.Primary => "the authority's own text",
            Law.ReadAs.Secondary => "known at second hand",
            Law.ReadAs.CommonPractice => $"common practice as at {source.Checked}, no published source",
            _ => "from memory, not verified",
        };

    /// <summary>How a figure is known, in at most three words.</summary>
    public static string Standing(Standing standing) =>
        standing.Basis switch
        {
            Law.ReadAs.Primary => "authority's text",
            Law.ReadAs.Secondary => "second hand",
            Law.ReadAs.CommonPractice => "common practice",
            Law.ReadAs.Memory => "from memory",
            _ => "no source",
        };

    /// <summary>A source in one line, with the clauses cited of it.</summary>
    public static string Source(Source source, IEnumerable<string> clauses) =>
        $"{string.Join(", ", clauses.Prepend(source.Title))} ({source.Publisher}; {ReadAs(source)}; checked {source.Checked})";

    /// <summary>The box of a condition: ticked, crossed or to tick.</summary>
    public static string Box(Truth state) =>
        state switch
        {
            Truth.Yes => "[x]",
            Truth.No => "x ",
            _ => "[ ]",
        };

    /// <summary>Only the first letter made large.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Since when, and until when; of a day for which nothing is recorded, that.</summary>
    public static string InForce(ResolvedVersion version) =>
        (version.From, version.Until) switch
        {
            (_, null) when version.Evidence == Evidence.None => "nothing in the book for this day",
            (_, { } until) when version.Evidence == Evidence.None => $"nothing in the book until {until.Words}",
            (null, var until) => $"in force{Words("by", version.InForceBy)}{Words("until", until)}, start not established",
            ({ } from, null) => $"in force from {from.Words}",
            ({ } from, { } until) => $"in force from {from.Words} until {until.Words}",
        } + (version.WarningOnly ? ", a breach brings a warning only" : "");

    private static string Words(string before, PartialDate? day) => day is null ? "" : $" {before} {day.Words}";
}
