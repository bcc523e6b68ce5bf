using System.Collections.Immutable;

namespace RuleBook.Authoring.Records;

/// <summary>How a kept answer and one made now compare.</summary>
/// <param name="Same">To the byte, but for the name of the book.</param>
/// <param name="Decision">The decision before and now; null where it is the same.</param>
/// <param name="Differences">What differs in what decides, each with its kind; empty where only words differ.</param>
public sealed record AnswerComparison(bool Same, (string Before, string Now)? Decision, ImmutableArray<AnswerDifference> Differences)
{
    /// <summary>The same facts in other words.</summary>
    public bool OnlyWords => !Same && Decision is null && Differences.IsEmpty;

    /// <summary>Compares two answers as JSON.</summary>
    /// <param name="before">The one kept.</param>
    /// <param name="now">The one made now.</param>
    public static AnswerComparison Of(string before, string now)
    {
        if (before == now)
            return new AnswerComparison(true, null, []);
        var (then, today) = (AnswerFacts.Of(before), AnswerFacts.Of(now));
        var moved = then
            .Rules.Keys.Union(today.Rules.Keys)
            .Where(rule => then.Rules.GetValueOrDefault(rule).From != today.Rules.GetValueOrDefault(rule).From)
            .ToHashSet();
        return new AnswerComparison(
            false,
            then.Decision == today.Decision ? null : (then.Decision, today.Decision),
            [
                .. moved.Order(StringComparer.Ordinal).Select(rule => Moved(rule, then.Rules, today.Rules)),
                .. Both(then.Figures, today.Figures)
                    .Where(each => !moved.Contains(each.Key.Rule))
                    .Select(each => new AnswerDifference(
                        DifferenceKind.FigureCorrected,
                        each.Key.Rule,
                        $"{each.Key.Measure} ({each.Key.Tier})",
                        each.Before,
                        each.Now,
                        null
                    )),
                .. Both(then.Conditions, today.Conditions)
                    .Where(each => !moved.Contains(each.Key.Rule))
                    .Select(each => new AnswerDifference(
                        DifferenceKind.Condition,
                        each.Key.Rule,
                        each.Key.Condition,
                        each.Before,
                        each.Now,
                        null
                    )),
                .. Both(then.Measures, today.Measures)
                    .Select(each => new AnswerDifference(DifferenceKind.Reckoned, "", each.Key, each.Before, each.Now, null)),
                .. Both(then.Blockers, today.Blockers)
                    .Select(each => new AnswerDifference(DifferenceKind.Blocker, "", each.Key, each.Before, each.Now, null)),
            ]
        );
    }

    private static AnswerDifference Moved(
        string rule,
        IReadOnlyDictionary<string, (string From, string Gives)> then,
        IReadOnlyDictionary<string, (string From, string Gives)> today
    ) =>
        new(
            DifferenceKind.RuleChanged,
            rule,
            "version in force",
            Version(rule, then),
            Version(rule, today),
            today.TryGetValue(rule, out var now) ? now.From : null
        );

    private static string? Version(string rule, IReadOnlyDictionary<string, (string From, string Gives)> rules) =>
        rules.TryGetValue(rule, out var found) ? $"since {(found.From.Length > 0 ? found.From : "an unknown day")}: {found.Gives}" : null;

    private static IEnumerable<(TKey Key, string? Before, string? Now)> Both<TKey>(
        IReadOnlyDictionary<TKey, string> before,
        IReadOnlyDictionary<TKey, string> now
    )
        where TKey : notnull =>
        before
            .Keys.Union(now.Keys)
            .Select(key => (key, Before: before.GetValueOrDefault(key), Now: now.GetValueOrDefault(key)))
            .Where(each => each.Before != each.Now)
            .OrderBy(each => each.key.ToString(), StringComparer.Ordinal);
}

/// <summary>One thing in which two answers differ.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Rule">Full id of the rule; empty where it is no matter of a rule.</param>
/// <param name="What">What differs.</param>
/// <param name="Before">How it was; null where it was not there.</param>
/// <param name="Now">How it is; null where it is no longer there.</param>
/// <param name="Since">From which day the rule is as it is now, as written in the book; null where that is not what differs.</param>
public sealed record AnswerDifference(DifferenceKind Kind, string Rule, string What, string? Before, string? Now, string? Since);

/// <summary>Kinds of differences between two answers.</summary>
public enum DifferenceKind
{
    /// <summary>Another version of the rule is in force, or another rule binds.</summary>
    RuleChanged,

    /// <summary>A figure of the same version is another one: the book was corrected, or more is known.</summary>
    FigureCorrected,

    /// <summary>A condition of the same version is another one, or stands otherwise.</summary>
    Condition,

    /// <summary>The tool reckons a measure differently.</summary>
    Reckoned,

    /// <summary>What stands in the way is another thing.</summary>
    Blocker,
}
