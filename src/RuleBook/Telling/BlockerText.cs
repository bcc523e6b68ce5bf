using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>A blocker as a sentence without its full stop: how much, over what, when.</summary>
internal static class BlockerText
{
    /// <summary>The sentence.</summary>
    public static string Sentence(Blocker blocker) =>
        blocker.Kind switch
        {
            BlockerKind.OverRating => $"{Over(blocker)} over {blocker.What}{When(blocker)} ({OfLimit(blocker)})",
            BlockerKind.RefusedRating =>
                $"{Over(blocker)} over {blocker.What} as it is now{When(blocker)} ({OfLimit(blocker)}); the higher one asked for "
                    + "does not count",
            BlockerKind.NotCertifiable =>
                $"{blocker.What} not certifiable: {Over(blocker)} over what the {blocker.LimitWhat} carry together ({OfLimit(blocker)})",
            BlockerKind.RuleOfUse when blocker.Past.IsEmpty => $"forbidden by a rule of use: {blocker.What}",
            BlockerKind.RuleOfUse => $"past a rule of use, {Wording.WithinSentence(blocker.What)}: {Lacking(blocker.Past)}",
            BlockerKind.NotJudged => $"not judged: no rule in the book speaks of the {blocker.What}",
            _ => blocker.Why ?? blocker.What,
        };

    /// <summary>All that nobody judged in one sentence; none where there is nothing.</summary>
    public static IEnumerable<string> NotJudged(IReadOnlyCollection<Blocker> blockers) =>
        blockers.Count == 0
            ? []
            : [$"not judged, no rule in the book speaks of it: {string.Join(", ", blockers.Select(blocker => blocker.What))}"];

    /// <summary>The same where the subject was named just before: how much, when.</summary>
    public static string Short(Blocker blocker) =>
        blocker.Kind is BlockerKind.OverRating or BlockerKind.RefusedRating ? $"{Over(blocker)} over{When(blocker)}" : Sentence(blocker);

    /// <summary>What each way lacks, and what all of them lack once.</summary>
    private static string Lacking(ImmutableArray<ClosedTier> ways)
    {
        var everywhere =
            ways.Length == 1
                ? []
                : ways.Select(way => way.Conditions.AsEnumerable()).Aggregate((all, each) => all.Intersect(each)).ToArray();
        var own = string.Join(
            "; or ",
            ways.Select(way => string.Join(", ", way.Limits.Select(Phrases.Limit).Concat(NotMet(way.Conditions.Except(everywhere)))))
                .Where(text => text.Length > 0)
        );
        return string.Join("; also ", NotMet(everywhere).Prepend(own).Where(text => text.Length > 0));
    }

    private static IEnumerable<string> NotMet(IEnumerable<Term> conditions) =>
        conditions.Select(condition => $"not met: {condition.Title}");

    private static string Over(Blocker blocker) => $"{(blocker.AtLeast ? "at least " : "")}{Figures(blocker).Apart} {blocker.Unit!.Symbol}";

    /// <summary>A mass of its limit.</summary>
    internal static string OfLimit(LoadCheck check)
    {
        var figures = Precisely.Of(check.ValueKg, check.LimitKg);
        return $"{figures.Value} of {figures.Limit} kg";
    }

    private static string OfLimit(Blocker blocker) =>
        $"{Figures(blocker).Value} of {Figures(blocker).Limit} {blocker.Unit!.Symbol}{Close(blocker)}";

    private static string Close(Blocker blocker) =>
        blocker.TooCloseWithin is { } band
            ? $", too close to call: weighed to within {Numbers.Show(band / blocker.Unit!.ToBase)} {blocker.Unit.Symbol}"
            : "";

    private static Precisely Figures(Blocker blocker) =>
        Precisely.Of(blocker.Value!.Value / blocker.Unit!.ToBase, blocker.Limit!.Value / blocker.Unit.ToBase);

    private static string When(Blocker blocker) =>
        blocker.State switch
        {
            null => "",
            "unladen" => " before anybody gets in",
            "planned" => " when hitched",
            "weighed" => " as weighed, hitched",
            "weighed-alone" => " as weighed",
            var state => $" when {state}",
        };
}
