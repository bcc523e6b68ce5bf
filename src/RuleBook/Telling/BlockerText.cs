using Fractions;
using RuleBook.Answers;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>A blocker as a sentence without its full stop: how much, over what, when.</summary>
public static class BlockerText
{
    /// <summary>The sentence.</summary>
    public static string Sentence(Blocker blocker) => blocker.Kind switch
    {
        BlockerKind.OverRating => $"{Over(blocker)} over {blocker.What}{When(blocker)} ({OfLimit(blocker)})",
        BlockerKind.RefusedRating => $"{Over(blocker)} over {blocker.What} as it is now{When(blocker)} ({OfLimit(blocker)}); the higher one asked for does not count",
        BlockerKind.NotCertifiable => $"{blocker.What} not certifiable: {Over(blocker)} over what the axles carry together ({OfLimit(blocker)})",
        BlockerKind.RuleOfUse => $"forbidden by a rule of use: {blocker.What}",
        BlockerKind.NotJudged => $"not judged: no rule in the book speaks of the {blocker.What}",
        _ => blocker.Why ?? blocker.What,
    };

    private static string Over(Blocker blocker) => $"{(blocker.AtLeast ? "at least " : "")}{Amount(blocker.Over, blocker)} {blocker.Unit!.Symbol}";

    private static string OfLimit(Blocker blocker) => $"{Amount(blocker.Value, blocker)} of {Amount(blocker.Limit, blocker)} {blocker.Unit!.Symbol}";

    private static string Amount(Fraction? value, Blocker blocker) => Numbers.Show(value!.Value / blocker.Unit!.ToBase, 1);

    private static string When(Blocker blocker) => blocker.State switch
    {
        null => "",
        "unladen" => " before anybody gets in",
        "planned" => " when hitched",
        "weighed" => " as weighed",
        var state => $" when {state}",
    };
}
