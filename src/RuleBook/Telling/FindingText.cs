using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>What one rule gives, with the limits that decided.</summary>
internal sealed class FindingText(AnswerPage page)
{
    public void Write(Finding finding)
    {
        var version = finding.Version;
        page.Heading($"{version.Rule.Title}: {Phrases.Outcome(finding.Outcome)}");
        page.Aside($"{version.Rule.Id}, {Phrases.InForce(version)}{(finding.Certain ? "" : " (whether this or another version is in force is not known)")}", 1);
        foreach (var step in version.Adopted) page.Aside($"adopts {step.Rule} as {(step.Moving ? "amended, looked up on" : "it stood on")} {Phrases.Day(step.AsOf)}", 1);
        if (finding.Tier is { } tier) Write($"{Phrases.Pathway(tier.Pathway)}{Codes(tier)}:", finding.Limits);
        foreach (var easier in finding.Exceeded.GroupBy(check => check.Tier.Pathway)) Write($"why not {Phrases.Pathway(easier.Key)}:", easier);
        if (version.Content is NotRegulated { Why: var why }) page.Item($"not regulated: {why}");
        if (version.Content is NotEstablished) page.Item("the limits are not established", "?");
        if (finding.Indication is { } indication)
            page.Item($"As an indication only, never as the verdict: {indication.Rule} would give {Phrases.Outcome(indication.Outcome)}.");
        foreach (var note in version.Notes.Concat(finding.Tier?.Note is { } own ? [own] : []).Distinct()) page.Aside(note.Trim(), 1);
    }

    private void Write(string lead, IEnumerable<LimitCheck> checks)
    {
        var lines = checks.Select(check => (text: Phrases.Limit(check), check.Holds)).Distinct().ToArray();
        if (lines.Length == 0) return;
        page.Item(lead, "");
        foreach (var (text, holds) in lines) page.Item(text, holds switch { Truth.Yes => "ok", Truth.No => "x ", _ => "? " }, 2);
    }

    private static string Codes(Tier tier) => tier.Codes.IsEmpty ? "" : $" (codes {string.Join(", ", tier.Codes)})";
}
