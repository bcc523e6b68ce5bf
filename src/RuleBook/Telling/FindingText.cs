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
        if (finding.Tier is { } tier)
            Write($"{Phrases.Pathway(tier.Pathway)}{Codes(tier)}", Alternatives.Of(finding, tier), finding.Limits.Select(Line));
        foreach (var closed in finding.Closed.Where(closed => closed.Facts.IsEmpty))
            Write($"why not {Phrases.Pathway(closed.Tier.Pathway)}", Alternatives.Of(finding, closed.Tier), Closed(closed));
        if (version.Content is NotRegulated { Why: var why })
            page.Item($"not regulated: {why.Trim()}");
        if (version.Content is NotEstablished)
            page.Item("nobody has established the limits", "?");
        if (finding.Indication is { } indication)
            page.Item(
                $"As an indication only, never as the verdict: the national rule would give: {Phrases.Outcome(indication.Outcome)} "
                    + $"({indication.Rule})."
            );
        if (version.Measured is { } measured && MeasuredWords.Of(measured, Title) is { Length: > 0 } words)
            page.Aside(words, 1);
        foreach (var note in NoteWords.Of(version).Concat(finding.Tier?.Note is { } own ? [own] : []).Distinct())
            page.Aside(note.Trim(), 1);
        foreach (var step in version.Adopted)
            page.Aside($"adopts {step.Rule} as {(step.Moving ? "amended, looked up on" : "it stood on")} {Phrases.Day(step.AsOf)}", 1);
        page.Aside(
            $"{version.Rule.Id}, "
                + $"{Phrases.InForce(version)}{(finding.Certain ? "" : " (whether this or another version is in force is not known)")}",
            1
        );

        string Title(string measure) => finding.Judged.Table.Vocabulary.Measures[measure].Title;
    }

    /// <summary>A rule of use, whole: what it gives, on which condition, by which source.</summary>
    public void WriteOfUse(Finding finding)
    {
        Write(finding);
        foreach (var condition in finding.Conditions)
            page.Item(condition.Condition.Title, Phrases.Box(condition.State));
        foreach (var source in finding.Version.Sources.Concat(finding.TierSources).GroupBy(cited => cited.Source))
            page.Aside(Phrases.Source(source.Key, source.Select(cited => cited.Citation.Clause).OfType<string>().Distinct()), 1);
    }

    private static IEnumerable<(string Text, string Mark)> Closed(ClosedTier closed) =>
        closed.Limits.Select(Line).Concat(closed.Conditions.Select(condition => ($"condition not met: {condition.Title}", "x ")));

    private static (string Text, string Mark) Line(LimitCheck check) =>
        (
            Phrases.Limit(check),
            check.Holds switch
            {
                Truth.Yes => "ok",
                Truth.No => "x ",
                _ => "? ",
            }
        );

    private void Write(string lead, string alternative, IEnumerable<(string Text, string Mark)> lines)
    {
        var all = lines.Distinct().ToArray();
        if (all.Length == 0)
            return;
        page.Item($"{lead}{(alternative.Length > 0 ? $", {alternative}" : "")}:", "");
        foreach (var (text, mark) in all)
            page.Item(text, mark, 2);
    }

    private static string Codes(Tier tier) => tier.Codes.IsEmpty ? "" : $" (codes {string.Join(", ", tier.Codes)})";
}
