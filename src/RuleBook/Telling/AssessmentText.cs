using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>An assessment as a signatory reads it on a phone and pastes it into an email.</summary>
public sealed class AssessmentText(AnswerPage page)
{
    /// <summary>Writes all of it.</summary>
    public void Write(Assessment assessment)
    {
        Finding[] findings = [.. assessment.Findings.Where(Tells)];
        page.Title($"{Phrases.Verdict(assessment)}.", Colour(assessment.Verdict));
        page.Line($"{(assessment.Job is { } job ? $"Job {job}. " : "")}Judged by the rules of {assessment.JurisdictionName} ({assessment.Jurisdiction}) as on {Phrases.Day(assessment.On)}.");
        foreach (var warning in assessment.Warnings) page.Item($"{warning.Mark}: {warning.Text} ({warning.Tip})", "! ");
        if (assessment.Category is { } change) page.Item(Category(change), "! ");
        foreach (var finding in findings) new FindingText(page).Write(finding);
        WriteTooClose(findings);
        WriteOpen(assessment);
        if (assessment.Masses is { } masses) new MassText(page).Write(masses);
        if (assessment.Heights is { } heights) new HeightText(page).Write(heights);
        if (assessment.Tyres is { } tyres) new TyreText(page).Write(tyres);
        WriteOfUse(assessment);
        WriteToShow(findings);
        WriteCertification(assessment);
        WriteDerivations(assessment);
        WriteSources(findings);
        page.Heading("Bear in mind");
        foreach (var caution in assessment.Cautions) page.Item(caution);
        page.Aside($"Book {assessment.Book[..Math.Min(19, assessment.Book.Length)]}", 1);
    }

    /// <summary>A rule all of whose measures the job leaves at zero tells a reader nothing.</summary>
    private static bool Tells(Finding finding) => !finding.Outcome.Decided
        || finding.Outcome.Best > Pathway.NoCertificate
        || finding.Limits.Any(check => check.Value.Exact is not { IsZero: true });

    private void WriteTooClose(IEnumerable<Finding> findings)
    {
        var close = findings
            .SelectMany(finding => finding.Limits.Concat(finding.Exceeded))
            .Where(check => check.Guarded is { Conformity: Conformity.TooCloseToCall })
            .DistinctBy(check => (check.Measure.Name, check.Bound!.Value, check.Tier.Pathway))
            .ToArray();
        if (close.Length == 0) return;
        page.Heading("Too close to call: the measurement cannot tell which side of the limit it is");
        foreach (var check in close)
            page.Item($"{Phrases.Limit(check)} ({Phrases.Pathway(check.Tier.Pathway)}); measured to within {Phrases.Amount(check.Guarded!.GuardBand, check.Measure.Unit)}", "! ");
    }

    private void WriteOpen(Assessment assessment)
    {
        if (assessment.Undecided.Length > 0)
        {
            page.Heading("What is missing, and what it would change");
            foreach (var effect in assessment.Undecided)
            {
                page.Item(effect.Opening.Kind == OpeningKind.Version ? $"which version of {effect.Opening.Name} is in force that day" : effect.Opening.Name, "?");
                foreach (var (label, outcome) in effect.Merged()) page.Item($"{label}: {Phrases.Outcome(outcome)}", depth: 2);
            }
        }

        if (assessment.Gaps.Length == 0) return;
        page.Heading("What nobody has established, and whom to ask");
        foreach (var gap in assessment.Gaps)
        {
            page.Item($"{gap.What} ({gap.Rule})", "?");
            page.Item($"ask: {gap.Ask}{(gap.Open is { } open ? $"; open: {open}" : "")}", depth: 2);
        }
    }

    private void WriteOfUse(Assessment assessment)
    {
        if (assessment.OfUse.IsEmpty) return;
        page.Heading("Rules of use, beside the verdict");
        foreach (var finding in assessment.OfUse) new FindingText(page).Write(finding);
    }

    private void WriteToShow(IEnumerable<Finding> findings)
    {
        var toShow = findings.SelectMany(finding => finding.Conditions).Where(condition => condition.State != Truth.No).Distinct().ToArray();
        if (toShow.Length == 0) return;
        page.Heading("To be shown at the inspection");
        foreach (var condition in toShow) page.Item(condition.Condition.Title, condition.State == Truth.Yes ? "[x]" : "[ ]");
    }

    private void WriteCertification(Assessment assessment)
    {
        if (assessment.Certification is not { } certification) return;
        page.Heading($"Who certifies: {certification.Scheme}");
        var version = certification.Version;
        if (version.Certifier is { } certifier) page.Item($"{certifier}{(version.AppointedBy is { } by ? $", appointed by {by}" : "")}");
        if (version.Decides == "authority") page.Item("the authority has the last word, not the certifier");
        if (certification.Why is { } why) page.Item($"The certifier named {(certification.MayCertify == Truth.Yes ? "may certify" : "may not certify")}: {why}");
        if (!certification.Papers.IsEmpty) page.Item($"issued: {string.Join(", ", certification.Papers)}");
        foreach (var step in certification.Steps) page.Item($"{(step.BeforeWork ? "before the work: " : "")}{step.Text.Trim()}");
    }

    private void WriteDerivations(Assessment assessment)
    {
        var derived = assessment.Measures.Where(known => known.Value.Exact is not { IsZero: true } && known.Derivation.Length > 0).ToArray();
        if (derived.Length == 0) return;
        page.Heading("How the figures follow");
        foreach (var known in derived) page.Item($"{known.Measure.Title} {Phrases.Interval(known.Value, known.Measure.Unit)}: {known.Derivation}");
    }

    private void WriteSources(IEnumerable<Finding> findings)
    {
        var sources = findings.SelectMany(finding => finding.Version.Sources.Concat(finding.TierSources)).GroupBy(cited => cited.Source).ToArray();
        if (sources.Length == 0) return;
        page.Heading("Sources");
        foreach (var source in sources)
        {
            page.Item(Phrases.Source(source.Key, source.Select(cited => cited.Citation.Clause).OfType<string>().Distinct()));
            if (source.Key.Url is { } url) page.Aside(url);
        }
    }

    private static string Category(CategoryChange change) => change.Judged is [var one]
        ? $"re-rated to {MassText.Kg(change.GvmKg)} kg the vehicle is no longer {change.Stated} but {one.Category} ({one.GvmWords}): judged as {one.Category}"
        : $"re-rated to {MassText.Kg(change.GvmKg)} kg the vehicle is no longer {change.Stated} but {string.Join(" or ", change.Judged.Select(each => each.Category))}: "
            + "the seats would tell which";

    private static VerdictColour Colour(Pathway? verdict) => verdict switch
    {
        null => VerdictColour.Open,
        Pathway.NoCertificate => VerdictColour.Free,
        Pathway.Prohibited => VerdictColour.Prohibited,
        _ => VerdictColour.Certified,
    };
}
