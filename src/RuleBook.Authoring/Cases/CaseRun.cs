using System.Collections.Immutable;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Cases;

/// <summary>A case that was run.</summary>
/// <param name="Case">The case.</param>
/// <param name="Failures">What differs from what is expected, each in one sentence; empty when nothing does.</param>
public sealed record CaseResult(Case Case, ImmutableArray<string> Failures)
{
    /// <summary>Whether the book gives the answer expected.</summary>
    public bool Passed => Failures.IsEmpty;
}

/// <summary>Runs cases against a book.</summary>
public static class CaseRun
{
    /// <summary>Runs one case.</summary>
    public static CaseResult Run(Book book, Case one) => new(one, [.. Failures(Assessor.Assess(book, one.Job), one.Expect)]);

    /// <summary>What differs between an assessment and what is expected.</summary>
    internal static IEnumerable<string> Failures(Assessment answer, Expectation expect)
    {
        if (expect.Between is { } between ? answer.Between != between : answer.Between.Decided)
            yield return $"expected {(expect.Between is { } range ? Wording.Of(range) : "undecided")}, got {Wording.Of(answer.Between)}";
        if (expect.Asks is { } asks && Differ(asks, answer.Undecided.Select(effect => effect.Opening.Name)) is { } asked)
            yield return $"expected to be asked for {asked}";
        if (expect.Conditions is { } conditions && Differ(conditions, answer.Findings.SelectMany(finding => finding.Conditions).Select(state => state.Condition.Name)) is { } shown)
            yield return $"expected the conditions {shown}";
        if (expect.Decides is { } measure && Deciding(answer) is var deciding && !deciding.Contains(measure))
            yield return $"expected {measure} to decide, got {Words(deciding)}";
    }

    /// <summary>
    /// The measures that decide, in the findings that give the worst that is possible: those whose limits in easier tiers are exceeded, or where
    /// none is, the one nearest to its limit.
    /// </summary>
    private static string[] Deciding(Assessment answer) =>
    [
        .. answer.Findings
            .Where(finding => finding.Outcome.Worst == answer.Between.Worst)
            .SelectMany(finding => finding.Exceeded.IsEmpty ? finding.Limits.Where(check => check.Margin is not null).OrderBy(check => check.Margin).Take(1) : finding.Exceeded)
            .Select(check => check.Measure.Name)
            .Distinct(),
    ];

    private static string? Differ(IEnumerable<string> expected, IEnumerable<string> got)
    {
        string[] left = [.. expected.Distinct().Order(StringComparer.Ordinal)], right = [.. got.Distinct().Order(StringComparer.Ordinal)];
        return left.SequenceEqual(right) ? null : $"{Words(left)}, got {Words(right)}";
    }

    private static string Words(string[] words) => words.Length == 0 ? "nothing" : string.Join(", ", words);
}
