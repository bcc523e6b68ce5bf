using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>A figure against its limit, to be drawn as a bar up to a line.</summary>
/// <param name="Subject">What it is, for a reader: <c>total lift</c>, <c>GVM</c>.</param>
/// <param name="State">
/// In which state: <c>unladen</c>, <c>loaded</c>, <c>planned</c> (hitched), <c>weighed</c>; empty where there is only one.
/// </param>
/// <param name="Value">How long the bar is, rounded for drawing; nothing is decided by it.</param>
/// <param name="Limit">Where the line stands, in the same unit.</param>
/// <param name="Says">The same exactly, in words: <c>59 of 75 mm</c>.</param>
/// <param name="Left">What is left, or how much it is over: <c>16 mm left</c>.</param>
/// <param name="Over">Whether the limit is passed.</param>
/// <param name="Known">Whether the figure is known, or only that it is no less or no more.</param>
internal sealed record DrawnFigure(
    string Subject,
    string State,
    double Value,
    double Limit,
    string Says,
    string Left,
    bool Over,
    Known Known
)
{
    /// <summary>
    /// The limit that the job comes nearest to, or where nothing permits it the one that it passes; null where that is no plain upper
    /// limit, and while the verdict is open: what is left of a limit that may not hold would comfort falsely.
    /// </summary>
    public static DrawnFigure? Margin(Assessment assessment)
    {
        if (assessment.Verdict is null)
            return null;
        var passed = assessment
            .Findings.Where(finding => finding.Outcome.Worst == Law.Pathway.Prohibited)
            .SelectMany(finding => finding.Reason)
            .SelectMany(closed => closed.Limits);
        var checks = assessment.Verdict == Law.Pathway.Prohibited ? passed : TightestLimits.Of(assessment);
        return
            checks.FirstOrDefault(check => check is { IsUpper: true, Bound.Value.IsPositive: true, Value.Exact: { IsPositive: true } })
                is { } nearest
            ? Of(nearest)
            : null;
    }

    /// <summary>Every load against the rating that will apply, subject by subject, from the lightest state to the heaviest.</summary>
    public static IEnumerable<DrawnFigure> Loads(MassAnswer masses) =>
        masses.Standing.Where(each => each.Check.LimitKg.IsPositive).Select(each => Of(each.Check, each.State));

    private static DrawnFigure Of(LimitCheck check)
    {
        var (shown, unit) = (LimitPhrases.Figures(check), check.Measure.Unit);
        var over = check.Holds == Truth.No;
        return new DrawnFigure(
            check.Measure.Title,
            "",
            (double)(check.Value.Exact!.Value / unit.ToBase).ToDecimal(),
            (double)(check.Bound!.Value / unit.ToBase).ToDecimal(),
            $"{shown.Value} of {shown.Limit} {unit.Symbol}",
            $"{shown.Apart} {unit.Symbol} {(over ? "too much" : "left")}",
            over,
            Known.Exactly
        );
    }

    private static DrawnFigure Of(LoadCheck check, string state)
    {
        var shown = Precisely.Of(check.ValueKg, check.LimitKg);
        var least = check.Known switch
        {
            Known.AtLeast => "at least ",
            Known.AtMost => "at most ",
            _ => "",
        };
        var most = check.Known switch
        {
            Known.AtLeast when check.Holds => "at most ",
            Known.AtLeast or Known.AtMost => "at least ",
            _ => "",
        };
        return new DrawnFigure(
            LoadSubjects.Noun(check.Subject),
            state,
            (double)check.ValueKg.ToDecimal(),
            (double)check.LimitKg.ToDecimal(),
            $"{least}{shown.Value} of {shown.Limit} kg",
            $"{most}{shown.Apart} kg {(check.Holds ? "left" : "over")}",
            !check.Holds,
            check.Known
        );
    }
}
