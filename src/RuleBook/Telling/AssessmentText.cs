using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>
/// Everything there is to an assessment, for whoever asks why: the decision first, then findings, masses, steps, workings, sources.
/// </summary>
public sealed class AssessmentText(AnswerPage page)
{
    /// <summary>Writes all of it.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="headed">False where the first lines stand above it already.</param>
    public void Write(Assessment assessment, bool headed = true)
    {
        Finding[] findings = [.. assessment.Findings.Where(Tells)];
        if (headed)
            WriteHead(assessment);
        foreach (var warning in assessment.Warnings)
            page.Item($"{warning.Mark}: {warning.Text} ({warning.Tip})", "! ");
        WriteBlockers(assessment);
        WriteOpen(assessment);
        foreach (var finding in findings)
            new FindingText(page).Write(finding);
        WriteTooClose(findings);
        WriteOfUse(assessment);
        WriteToShow(findings);
        new CertificationText(page).Write(assessment);
        HeldText.Write(page, assessment);
        if (assessment.Masses is { } masses)
            new MassText(page).Write(masses);
        if (assessment.Heights is { } heights)
            new HeightText(page).Write(heights);
        if (assessment.Tyres is { } tyres)
            new TyreText(page).Write(tyres);
        WriteDerivations(assessment);
        WriteSources(findings);
        page.Heading("Bear in mind");
        foreach (var caution in assessment.Cautions)
            page.Item(caution);
        page.Aside($"Book {assessment.Book[..Math.Min(19, assessment.Book.Length)]}", 1);
    }

    private void WriteHead(Assessment assessment)
    {
        var lines = FirstLines.Of(assessment).ToArray();
        page.Title(lines[0], FirstScreen.Colour(assessment.Headline));
        foreach (var line in lines.Skip(1))
            page.Line(line);
        page.Line(
            $"{(assessment.Job is { } job ? $"Job {job}. " : "")}Judged by the rules of {assessment.JurisdictionName} "
                + $"({assessment.Jurisdiction}) as on {Phrases.Day(assessment.On)}."
        );
    }

    private void WriteBlockers(Assessment assessment)
    {
        if (assessment.Blockers.IsEmpty)
            return;
        page.Heading("What stands in the way, whatever the pathway");
        foreach (var blocker in assessment.Blockers)
        {
            page.Item(BlockerText.Sentence(blocker), "x ");
            if (blocker.Why is { } why && why != BlockerText.Sentence(blocker))
                page.Item(why, depth: 2);
            if (blocker.Ask is { } ask)
                page.Item($"ask: {ask}", depth: 2);
        }
    }

    /// <summary>
    /// A rule all of whose measures the job leaves at zero, and that asks for nothing to be shown, tells a reader nothing.
    /// </summary>
    private static bool Tells(Finding finding) =>
        !finding.Outcome.Decided
        || finding.Outcome.Best > Pathway.NoCertificate
        || finding.Version.Content is NotRegulated
        || finding.Limits.Any(check => check.Value.Exact is not { IsZero: true })
        || finding.Conditions.Any(condition => condition.State == Truth.Unknown);

    private void WriteTooClose(IEnumerable<Finding> findings)
    {
        var close = findings
            .SelectMany(finding => finding.Limits.Concat(finding.Exceeded))
            .Where(check => check.Guarded is { Conformity: Conformity.TooCloseToCall })
            .DistinctBy(check => (check.Measure.Name, check.Bound!.Value, check.Tier.Pathway))
            .ToArray();
        if (close.Length == 0)
            return;
        page.Heading("Too close to call: the measurement cannot tell which side of the limit it is");
        foreach (var check in close)
            page.Item(
                $"{Phrases.Limit(check)} ({Phrases.Pathway(check.Tier.Pathway)}); measured to within "
                    + $"{Phrases.Amount(check.Guarded!.GuardBand, check.Measure.Unit)}",
                "! "
            );
    }

    private void WriteOpen(Assessment assessment)
    {
        if (assessment.Undecided.Length > 0)
        {
            page.Heading("What is missing, and what it would change");
            foreach (var effect in assessment.Undecided.DistinctBy(each => (each.DecidesAlone ? each : null, Asked(each))))
            {
                page.Item(Asked(effect), "?");
                if (!effect.DecidesAlone)
                    page.Item(Questions.NothingAlone, depth: 2);
                else
                    foreach (var (label, outcome) in effect.Merged())
                        page.Item($"{label}: {Phrases.Outcome(outcome)}", depth: 2);
            }
        }

        if (assessment.Gaps.Length == 0)
            return;
        page.Heading("What nobody has established, and whom to ask");
        foreach (var gap in assessment.Gaps)
        {
            page.Item($"{gap.What} ({gap.Rule})", "?");
            page.Item($"ask: {gap.Ask}{(gap.Open is { } open ? $"; open: {open}" : "")}", depth: 2);
        }
    }

    private static string Asked(Effect effect) =>
        effect.Opening.Kind == OpeningKind.Version
            ? $"which version of {effect.Opening.Name} is in force that day"
            : effect.Opening.Name + (Questions.FollowsFrom(effect) is { } follows ? $", for the {follows.Title}" : "");

    private void WriteOfUse(Assessment assessment)
    {
        if (assessment.OfUse.IsEmpty && assessment.Roads.IsEmpty)
            return;
        page.Heading("Rules of use, beside the verdict");
        foreach (var road in assessment.Roads)
            page.Item(SubjectRows.Road(road));
        foreach (var finding in assessment.OfUse)
            new FindingText(page).WriteOfUse(finding);
    }

    private void WriteToShow(IEnumerable<Finding> findings)
    {
        var toShow = findings
            .SelectMany(finding => finding.Conditions)
            .Where(condition => condition.State != Truth.No)
            .Distinct()
            .ToArray();
        if (toShow.Length == 0)
            return;
        page.Heading("To be shown at the inspection");
        foreach (var condition in toShow)
            page.Item(condition.Condition.Title, Phrases.Box(condition.State));
    }

    private void WriteDerivations(Assessment assessment)
    {
        var derived = assessment
            .Measures.Where(known => known.Value.Exact is not { IsZero: true } && known.Derivation.Length > 0)
            .ToArray();
        if (derived.Length == 0)
            return;
        page.Heading("How the figures follow");
        foreach (var known in derived)
            page.Item($"{known.Measure.Title} {Phrases.Interval(known.Value, known.Measure.Unit)}: {known.Derivation}");
    }

    private void WriteSources(IEnumerable<Finding> findings)
    {
        var sources = findings
            .SelectMany(finding => finding.Version.Sources.Concat(finding.TierSources))
            .GroupBy(cited => cited.Source)
            .ToArray();
        if (sources.Length == 0)
            return;
        page.Heading("Sources");
        foreach (var source in sources)
        {
            page.Item(Phrases.Source(source.Key, source.Select(cited => cited.Citation.Clause).OfType<string>().Distinct()));
            if (source.Key.Url is { } url)
                page.Aside(url);
        }
    }
}
