using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The first lines of an answer: what stands in the way, then the verdict, place and day.</summary>
internal static class FirstLines
{
    /// <summary>Accessories may be stated, and are judged by their mass alone.</summary>
    internal const string NoChange = "change to the vehicle is stated that a rule in the book could judge";

    private const int BlockersTold = 3;

    /// <summary>In order; the first never permits while a blocker stands.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="today">The day on which it is asked, where that is known: a day of the job after it is told.</param>
    public static IEnumerable<string> Of(Assessment assessment, DateOnly? today = null)
    {
        var place = $"{assessment.JurisdictionName}, {Phrases.Day(assessment.On)}";
        var blockers = assessment.Blockers.IsEmpty ? null : $"NOT AS PLANNED: {Blockers(assessment)}.";
        if (blockers is not null && assessment.Headline != Headline.Prohibited)
            yield return blockers;
        yield return assessment.Headline switch
        {
            Headline.NothingToJudge => $"Nothing to judge: no {NoChange}{Weighed(assessment)}. {place}.",
            Headline.Blocked when assessment.JudgesNothing => $"No {NoChange}{Weighed(assessment)}. {place}.",
            Headline.Blocked => $"The modification itself: {Pathway(assessment)}{Weighed(assessment)}. {place}.",
            _ => $"{Phrases.Sentence(Pathway(assessment))}{Weighed(assessment)}. {place}.",
        };
        if (blockers is not null && assessment.Headline == Headline.Prohibited)
            yield return blockers;
        foreach (var warning in assessment.Warnings.Take(2))
            yield return $"Check the job: {warning.Text} ({warning.Mark}).";
        foreach (var line in Beside(assessment, today))
            yield return line;
    }

    /// <summary>What one has to know beside the verdict: another category, what is left open, what nobody judged.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="today">The day on which it is asked, where that is known.</param>
    public static IEnumerable<string> Beside(Assessment assessment, DateOnly? today = null)
    {
        if (assessment.Category is { } change)
            yield return $"{Phrases.Sentence(Category(change))}.";
        foreach (var caution in assessment.Foremost)
            yield return caution;
        if (Underrated(assessment) is { Length: > 0 } tyres)
            yield return $"Tyres fitted carry less than the vehicle is rated for: {string.Join(", ", tyres)}; "
                + "load no further than they carry.";
        if (TooLow(assessment) is { Length: > 0 } low)
            yield return $"Too little clearance: {string.Join("; ", low)}.";
        if (assessment.Tyres is { NotCompared: { IsEmpty: false } lacking })
            yield return assessment.Tyres.Fitted is null
                ? "Width, load and speed of the tyres fitted not judged: their size is not stated."
                : $"Tyres not held against the placard's by {string.Join(" and ", lacking)}: not stated of each.";
        if (assessment.Tyres is { LacksWheelbase: true })
            yield return "Clearance midway between the axles not judged: the wheelbase is not stated.";
        if (Speedometer(assessment) is { } speedometer)
            yield return speedometer;
        if (Known(assessment, today) is { } known)
            yield return known;
        if (!assessment.OfUseOpen.IsEmpty)
        {
            var open = assessment.OfUseOpen.Select(finding => Wording.WithinSentence(finding.Version.Rule.Title)).Distinct();
            yield return $"Rules of use left open: {string.Join("; ", open)}.";
        }

        if (!assessment.LoadsNotJudged.IsEmpty)
            yield return $"Loads not judged against {string.Join(", ", assessment.LoadsNotJudged.Select(LoadSubjects.Noun))}: not "
                + "all of it is stated.";
    }

    /// <summary>That the speedometer is outside a rule with the tyres fitted; null where it is within each that may hold.</summary>
    private static string? Speedometer(Assessment assessment)
    {
        if (assessment.Tyres?.Speedometer is not { } after)
            return null;
        var outside = after.Findings.Where(check => check.Finding is SpeedometerFinding.ReadsLow or SpeedometerFinding.ReadsHigh).ToArray();
        if (outside.Length == 0)
            return null;
        var low = outside[0].Finding == SpeedometerFinding.ReadsLow;
        return $"Speedometer {(after.Assumed ? "would read" : "reads")} {(low ? "low" : "too high")}"
            + $"{(after.Assumed ? " if exact before" : " with these tyres")} "
            + $"({string.Join(", ", outside.Select(check => check.Rule.Name))}): have it checked.";
    }

    /// <summary>The pathway with the reason why it is no easier one, or with what is left; what would decide where it is open.</summary>
    private static string Pathway(Assessment assessment) =>
        assessment.Verdict switch
        {
            null => $"undecided: {Opening(assessment)}",
            Law.Pathway.Prohibited => $"not allowed{Because(assessment, "")}",
            var verdict when TooClose(assessment) is { } close => $"{Phrases.Pathway(verdict.Value)}, but too close to call: {close}",
            Law.Pathway.NoCertificate => $"allowed without a certificate{Left(assessment)}",
            var verdict => Phrases.Pathway(verdict.Value)
                + Because(assessment, verdict == Law.Pathway.Certificate ? "without one: " : "without it: "),
        };

    /// <summary>What closed the last pathway that was open, of the rule that decides.</summary>
    public static string? Reason(Assessment assessment) =>
        assessment
            .Findings.Where(finding => finding.Outcome.Worst == assessment.Between.Worst)
            .Select(finding => Reasons(finding).FirstOrDefault())
            .OfType<string>()
            .FirstOrDefault();

    /// <summary>What closed the last pathway that was open, a sentence for each thing.</summary>
    internal static IEnumerable<string> Reasons(Finding finding) =>
        finding.Reason.SelectMany(closed =>
            closed
                .Conditions.Select(condition => $"condition not met: {condition.Title}")
                .Concat(closed.Limits.Select(Phrases.Limit))
                .Concat(closed.Facts.Select(fact => $"{fact.Title}: {fact.Is}"))
        );

    private static string Because(Assessment assessment, string without) => Reason(assessment) is { } reason ? $" ({without}{reason})" : "";

    /// <summary>The limit with the least left of those that the job uses.</summary>
    private static string Left(Assessment assessment) =>
        TightestLimits
            .Of(assessment)
            .Select(check => $", {LimitPhrases.Figures(check).Apart} {check.Measure.Unit.Symbol} left ({check.Measure.Title})")
            .FirstOrDefault("");

    private static string? TooClose(Assessment assessment) =>
        assessment
            .Findings.SelectMany(finding => finding.Limits.Concat(finding.Exceeded))
            .Where(check => check.Guarded is { Conformity: Conformity.TooCloseToCall })
            .Select(check => $"{Phrases.Limit(check)}, measured to within {Phrases.Amount(check.Guarded!.GuardBand, check.Measure.Unit)}")
            .FirstOrDefault();

    /// <summary>The weighed mass that is nearest to a rating that it may have passed unseen; one that has passed it is a blocker.</summary>
    private static string Weighed(Assessment assessment) =>
        (assessment.Masses?.TooClose ?? [])
            .Where(close => close.Check.Holds)
            .OrderBy(close => close.Check.MarginKg)
            .Select(close =>
                $"; too close to call: {BlockerText.OfLimit(close.Check)} for {LoadSubjects.Noun(close.Check.Subject)}, weighed to "
                + $"within {MassText.Kg(close.Check.GuardKg)} kg"
            )
            .FirstOrDefault("");

    private static string Opening(Assessment assessment) =>
        assessment switch
        {
            _ when assessment.Undecided.Any(effect => effect.Gives.Any(outcome => outcome.Decided)) =>
                $"{Range(assessment)}, the {(assessment.Undecided.Length == 1 ? "question below decides" : "questions below decide")}",
            _ when (
                    assessment.Gaps.FirstOrDefault(gap => !MayBeForOthers(assessment, gap))
                    ?? (assessment.Undecided.IsEmpty ? assessment.Gaps.FirstOrDefault() : null)
                )
                    is { } gap => $"{gap.What}. Ask {gap.Ask.TrimEnd('.')}",
            { Gaps.IsEmpty: false } =>
                $"{Range(assessment)}, the {(assessment.Undecided.Length == 1 ? "question below narrows" : "questions below narrow")} it",
            _ => Range(assessment),
        };

    /// <summary>Whether what nobody has established is of a rule that may be none for this vehicle.</summary>
    private static bool MayBeForOthers(Assessment assessment, Gap gap) =>
        assessment.Findings.Any(finding => finding.Version.Rule.Id == gap.Rule && finding.Binds != Truth.Yes);

    private static string Range(Assessment assessment) =>
        $"{Phrases.Pathway(assessment.Between.Best)} or {Phrases.Pathway(assessment.Between.Worst)}";

    /// <summary>The worst of each subject first; what stands on the same subject in another state is told in short.</summary>
    private static string Blockers(Assessment assessment)
    {
        string[] told =
        [
            .. assessment
                .Blockers.GroupBy(blocker => (blocker.Kind, blocker.Subject))
                .Where(same => same.Key.Kind != BlockerKind.NotJudged)
                .SelectMany(same =>
                    same.OrderByDescending(blocker => blocker.Over)
                        .Select((blocker, i) => i == 0 ? BlockerText.Sentence(blocker) : BlockerText.Short(blocker))
                ),
            .. BlockerText.NotJudged([.. assessment.Blockers.Where(blocker => blocker.Kind == BlockerKind.NotJudged)]),
        ];
        return string.Join("; ", told.Take(BlockersTold)) + (told.Length > BlockersTold ? $"; and {told.Length - BlockersTold} more" : "");
    }

    /// <summary>The axles, or the GVM, whose rating is above what their tyres carry.</summary>
    private static string[] Underrated(Assessment assessment) =>
        [
            .. from check in assessment.Tyres?.Loads ?? []
            where !check.Holds
            let shown = Precisely.Of(check.LimitKg, check.ValueKg)
            select $"{(check.Subject == "gvm-tyres" ? "all together" : check.Subject.Split('-')[0])} {shown.Value} of {shown.Limit} kg",
        ];

    private static string[] TooLow(Assessment assessment) =>
        assessment.Tyres?.Road is { } road
            ?
            [
                .. from each in ((string Where, LengthCheck? Check)[])[("midway between the axles", road.Midway), ("running", road.Running)]
                where each.Check is { Holds: false }
                let shown = Precisely.Of(each.Check.ValueMm, each.Check.LeastMm)
                select $"{each.Where} {shown.Value} of at least {shown.Limit} mm",
            ]
            : [];

    private static string Category(CategoryChange change) =>
        change.Judged is [var one]
            ? $"re-rated to {MassText.Kg(change.GvmKg)} kg the vehicle is no longer {change.Stated} but {one.Category} "
                + $"({one.GvmWords}): judged as {one.Category}"
            : $"re-rated to {MassText.Kg(change.GvmKg)} kg the vehicle is no longer {change.Stated} but "
                + $"{string.Join(" or ", change.Judged.Select(each => each.Category))}: "
                + "the seats would tell which";

    private static string? Known(Assessment assessment, DateOnly? today) =>
        assessment.KnownTo is { } known && (assessment.On > known.AddYears(1) || (today is { } day && assessment.On > day))
            ? $"Known only to {Phrases.Day(known)}: what changes after that is not in the book."
            : null;
}
