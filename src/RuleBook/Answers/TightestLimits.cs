namespace RuleBook.Answers;

/// <summary>The limits that a job comes nearest to.</summary>
internal static class TightestLimits
{
    /// <summary>The limits kept that the job uses, the one with the least left in proportion first.</summary>
    public static IEnumerable<LimitCheck> Of(Assessment assessment) => Of(assessment.Findings.SelectMany(finding => finding.Limits));

    /// <summary>The same of some limits.</summary>
    public static IEnumerable<LimitCheck> Of(IEnumerable<LimitCheck> limits) =>
        limits
            .Where(check => check is { Margin: not null, Value.Exact: { IsZero: false }, Measure.IsDate: false } && !IsAway(check))
            .OrderBy(check => check.Margin / (check.Bound!.Value.IsZero ? 1 : check.Bound.Value.Abs()));

    /// <summary>Whether the limit is on the other side of zero than the value: what is left to it tells nobody anything.</summary>
    public static bool IsAway(LimitCheck check) =>
        check.Limit.Bounds is { Upper: null, Lower.Value.IsNegative: true } && check.Value.Exact is { IsNegative: false };
}
