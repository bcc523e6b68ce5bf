using RuleBook.Answers;
using RuleBook.Text;

namespace RuleBook.Telling;

/// <summary>The smallest changes that mend a job.</summary>
public static class RemedyText
{
    /// <summary>All of them, goal by goal.</summary>
    public static void Write(AnswerPage page, Assessment now, IReadOnlyCollection<Remedy> remedies)
    {
        foreach (var line in FirstLines.Of(now))
            page.Line(line);
        foreach (var goal in remedies.GroupBy(remedy => remedy.Goal))
        {
            page.Heading(Goal(goal.Key));
            foreach (var remedy in goal)
                Write(page, now, remedy);
        }

        if (Nothing(now, remedies) is { } nothing)
            page.Line(nothing);
        page.Heading("Bear in mind");
        page.Item(
            "Each was tried by itself, the rest of the job unchanged. The authority and the licensed certifier decide; this is not "
                + "legal advice."
        );
    }

    /// <summary>In one line for the first screen, at most three; empty where there is nothing to mend.</summary>
    public static string Line(Assessment now, IReadOnlyCollection<Remedy> remedies)
    {
        var goal = remedies
            .Select(remedy => remedy.Goal)
            .OrderBy(goal => goal.Within is not null)
            .ThenByDescending(goal => goal.Within)
            .Take(1)
            .ToArray();
        if (goal.Length == 0)
            return RemedyGoal.Mendable(now).Any() ? "no change was found that mends it" : "";
        Remedy[] told = [.. remedies.Where(remedy => remedy.Goal == goal[0]).Take(3)];
        if (told.All(LeavesUndecided) && remedies.FirstOrDefault(Permits) is { } permits)
            told = [.. told.Take(2), permits];
        string[] always = [.. Unjudged(now).Where(what => told.All(remedy => Unjudged(remedy.After).Contains(what)))];
        return string.Join(", or ", told.Select(One))
            + (told.Any(remedy => ShortAnswer.LeavesOpen(remedy.After)) ? "; what is left open above stays so" : "")
            + (always.Length > 0 ? $"; still not judged: {string.Join(", ", always)}" : "");

        string One(Remedy remedy) =>
            $"{Changes(remedy)}: {Short(remedy)}{string.Concat(Unjudged(remedy.After).Except(always).Select(what => $", {what} unjudged"))}"
            + (ToldThen(now, remedy).Any() ? ", with more to be told then" : "");
    }

    /// <summary>
    /// What comes first in the answer to the changed job and not in that to the job as it is: what ends, what could turn it.
    /// </summary>
    private static IEnumerable<string> ToldThen(Assessment now, Remedy remedy) => remedy.After.Foremost.Except(now.Foremost);

    private static IEnumerable<string> Unjudged(Assessment answer) => answer.NotJudged.Select(each => each.What);

    /// <summary>Whether the job may still be forbidden once nothing else stands in its way.</summary>
    private static bool LeavesUndecided(Remedy remedy) =>
        !IsBlocked(remedy) && remedy.After is { Verdict: null, Between.Worst: Law.Pathway.Prohibited };

    private static bool Permits(Remedy remedy) => !IsBlocked(remedy) && remedy.After.Between.Worst < Law.Pathway.Prohibited;

    private static bool IsBlocked(Remedy remedy) => RemedyGoal.Mendable(remedy.After).Any();

    /// <summary>What a goal is, as a heading.</summary>
    internal static string Goal(RemedyGoal goal) =>
        goal.Within is { } pathway ? $"To be {Phrases.Pathway(pathway)}" : "So that nothing stands in the way";

    /// <summary>Said where something is to be mended and nothing was found; null otherwise.</summary>
    internal static string? Nothing(Assessment now, IReadOnlyCollection<Remedy> remedies) =>
        now.Headline is Headline.NothingToJudge ? $"There is nothing to mend: no {FirstLines.NoChange}."
        : now is { Headline: Headline.NoCertificate } ? "There is nothing to mend: it is allowed as planned, without a certificate."
        : remedies.Count > 0 ? null
        : now is { Verdict: not null and not Law.Pathway.Prohibited, NotJudged: [var unjudged, ..] }
            ? $"No change mends it: nobody's rule in the book speaks of the {unjudged.What}. Ask {unjudged.Ask}."
        : now.Gaps is [var gap, ..] ? $"No change mends it, for what holds is not known: {gap.What}. Ask {gap.Ask.TrimEnd('.')}."
        : FirstLines.Reason(now) is { } reason ? $"No change was found that mends it. In the way stands: {reason}."
        : "No change was found that mends it.";

    /// <summary>The changes of a remedy: what one would do.</summary>
    public static string Changes(Remedy remedy) => string.Join(" and ", remedy.Changes.Select(Change));

    private static void Write(AnswerPage page, Assessment now, Remedy remedy)
    {
        page.Item(
            Changes(remedy)
                + (
                    remedy.Changes is [{ Cost: { } cost, Unit: { } unit, From: not null, To: not "0 mm" } one]
                        ? $" ({Phrases.Amount(cost, unit)} {(one.Lever == RemedyLever.Gvm ? "apart" : "less")})"
                        : ""
                )
        );
        page.Aside($"then: {After(remedy)}{(ShortAnswer.LeavesOpen(remedy.After) ? "; what the answer leaves open stays so" : "")}");
        foreach (var broken in remedy.Breaks)
            page.Aside($"but then: {BlockerText.Sentence(broken)}");
        foreach (var line in ToldThen(now, remedy))
            page.Aside($"but then: {line}");
        if (!remedy.ToShow.IsEmpty)
            page.Aside($"to show then: {string.Join("; ", remedy.ToShow)}");
    }

    private static string Outcome(Remedy remedy) =>
        (remedy.After.JudgesNothing ? "nothing that was judged stands in the way" : Phrases.Outcome(remedy.After.Between))
        + (IsBlocked(remedy) ? ", still not as planned" : "");

    private static string After(Remedy remedy) =>
        Outcome(remedy)
        + (remedy.After.NotJudged.IsEmpty ? "" : $"; not judged: {string.Join(", ", remedy.After.NotJudged.Select(each => each.What))}");

    /// <summary>The pathway in a word or two; what nobody judged is said at the end of the line.</summary>
    private static string Short(Remedy remedy) =>
        (remedy.After.Verdict, IsBlocked(remedy)) switch
        {
            ({ } pathway and not Law.Pathway.Prohibited, false) => Wording.Short(pathway),
            _ when LeavesUndecided(remedy) => "still undecided",
            _ => Outcome(remedy),
        };

    private static string Change(RemedyChange change) =>
        change.Lever switch
        {
            RemedyLever.SuspensionLift => Lift("suspension lift", change),
            RemedyLever.BodyLift => Lift("body lift", change),
            RemedyLever.Tyres when change.Path == "modification.tyres" => $"tyres {change.To}",
            RemedyLever.Tyres => Lift("growth in tyre diameter", change),
            RemedyLever.ConstantLoad => $"{change.To} of constant load over the {string.Join(", ", change.Names)}",
            RemedyLever.Gvm => $"re-rate the GVM to {change.To}",
            RemedyLever.Accessories =>
                $"leave off {string.Join(" and ", change.Names)} ({Phrases.Amount(change.Cost!.Value, change.Unit!)})",
            RemedyLever.Trailer => $"trailer of at most {change.To}",
            RemedyLever.BallLoad => $"ball load of at most {change.To}",
            _ => $"wait until {(CalendarDay.TryParse(change.To!, out var day) ? Phrases.Day(day) : change.To)}",
        };

    private static string Lift(string what, RemedyChange change) => change.To is "0 mm" ? $"no {what}" : $"{what} {change.To}";
}
