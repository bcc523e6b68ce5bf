using RuleBook.Evaluation;
using RuleBook.Rules;
using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>An assessment as a signatory reads it on a phone and pastes it into an email.</summary>
internal sealed class AssessmentText(IAnsiConsole console)
{
    private readonly Page page = new(console);

    public string? Write(Assessment assessment)
    {
        page.Title($"{Phrases.Verdict(assessment)}.", Colour(assessment.Verdict));
        page.Line($"{(assessment.Job is { } job ? $"Job {job}. " : "")}Judged by the rules of {assessment.JurisdictionName} ({assessment.Jurisdiction}) as on {Phrases.Day(assessment.On)}.");
        foreach (var finding in assessment.Findings) Write(finding);
        WriteOpen(assessment);
        WriteToShow(assessment);
        WriteCertification(assessment);
        WriteSources(assessment);
        page.Heading("Bear in mind");
        foreach (var caution in assessment.Cautions) page.Item(caution);
        page.Aside($"Book {assessment.Book[..Math.Min(19, assessment.Book.Length)]}", 1);
        return null;
    }

    private void Write(Finding finding)
    {
        var version = finding.Version;
        page.Heading($"{version.Rule.Title}: {Phrases.Outcome(finding.Outcome)}");
        page.Aside($"{version.Rule.Id}, {Phrases.InForce(version)}{(finding.Certain ? "" : " (whether this or another version is in force is not known)")}", 1);
        foreach (var step in version.Adopted) page.Aside($"adopts {step.Rule} as {(step.Moving ? "amended, looked up on" : "it stood on")} {Phrases.Day(step.AsOf)}", 1);
        foreach (var check in finding.Limits) page.Item($"{Phrases.Limit(check)} ({Phrases.Pathway(check.Tier.Pathway)})", Mark(check.Holds));
        foreach (var check in finding.Exceeded) page.Item($"{Phrases.Limit(check)} ({Phrases.Pathway(check.Tier.Pathway)})", Mark(check.Holds));
        if (version.Content is NotRegulated { Why: var why }) page.Item($"not regulated: {why}");
        if (version.Content is NotEstablished) page.Item("the limits are not established", Mark(Truth.Unknown));
        if (finding.Indication is { } indication)
            page.Item($"As an indication only, never as the verdict: {indication.Rule} would give {Phrases.Outcome(indication.Outcome)}.");
        if (finding.Tier is { Codes.IsEmpty: false } tier) page.Aside($"codes {string.Join(", ", tier.Codes)}", 1);
        foreach (var note in version.Notes.Concat(finding.Tier?.Note is { } own ? [own] : []).Distinct()) page.Aside(note.Trim(), 1);
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
        foreach (var gap in assessment.Gaps.Distinct())
        {
            page.Item($"{gap.What} ({gap.Rule})", "?");
            page.Item($"ask: {gap.Ask}{(gap.Open is { } open ? $"; open: {open}" : "")}", depth: 2);
        }
    }

    private void WriteToShow(Assessment assessment)
    {
        var toShow = assessment.Findings.SelectMany(finding => finding.Conditions).Where(condition => condition.State != Truth.No).Distinct().ToArray();
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
        if (certification.Why is { } why) page.Item($"The certifier named {(certification.MayCertify == Truth.Yes ? "may certify" : "may not certify")}: {why}");
        if (!certification.Papers.IsEmpty) page.Item($"issued: {string.Join(", ", certification.Papers)}");
        foreach (var step in certification.Steps) page.Item($"{(step.BeforeWork ? "before the work: " : "")}{step.Text.Trim()}");
    }

    private void WriteSources(Assessment assessment)
    {
        var sources = assessment.Findings.SelectMany(finding => finding.Version.Sources.Concat(finding.TierSources)).Distinct().ToArray();
        if (sources.Length == 0) return;
        page.Heading("Sources");
        foreach (var cited in sources)
        {
            page.Item(Phrases.Source(cited));
            if (cited.Source.Url is { } url) page.Aside(url);
        }
    }

    private static string Mark(Truth holds) => holds switch { Truth.Yes => "ok", Truth.No => "x ", _ => "? " };

    private static Color? Colour(Pathway? verdict) => verdict switch
    {
        null => Color.Yellow,
        Pathway.NoCertificate => Color.Green,
        Pathway.Prohibited => Color.Red,
        _ => Color.Blue,
    };
}
