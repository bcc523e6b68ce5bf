using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Authoring.AllCores;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

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
    public static CaseResult Run(Book book, Case one) => new(one, [.. Failures(book, one.Job, Ask(book, one.Job), one.Expect)]);

    /// <summary>Runs cases on all cores; the results stand in their order.</summary>
    public static CaseResult[] Run(Book book, ImmutableArray<Case> cases) => InOrder.Each(cases, one => Run(book, one));

    /// <summary>The evaluator's verdict on a job, and no more of an assessment than the pathways.</summary>
    internal static Outcome Verdict(Book book, Job job) => Ask(book, job).Outcome;

    internal static Judgement Ask(Book book, Job job) => new(book, job, book.Jurisdiction(job.RegisteredIn)!, DiameterBasis.Handbook);

    /// <summary>What differs from what is expected; the findings, which cost most, are read only where the case looks at them.</summary>
    internal static IEnumerable<string> Failures(Book book, Job job, Judgement judged, Expectation expect)
    {
        var outcome = judged.Outcome;
        if (expect.Between is { } between ? outcome != between : expect.Undecided && outcome.Decided)
            yield return $"expected {(expect.Between is { } range ? Wording.Of(range) : "undecided")}, got {Wording.Of(outcome)}";
        if (expect.Asks is { } asks && Differ(asks, judged.Effects.Select(effect => effect.Opening.Name)) is { } asked)
            yield return $"expected to be asked for {asked}";
        if (expect.LooksAtCertification)
        {
            var certification = Certifying.Of(book, book.Jurisdiction(job.RegisteredIn)!, job, judged.Facts, outcome, judged.Findings());
            if (expect.Issued is { } issued && Differ(issued, certification?.Papers ?? []) is { } papers)
                yield return $"expected to be issued {papers}";
            if (
                expect.Certifier is { } certifier
                && (certification?.Version.Certifier ?? Expectation.Nobody) is var named
                && named != certifier
            )
                yield return $"expected {certifier} to certify, got {named}";
            if (
                expect.BeforeWork is { } steps
                && (certification?.Steps.Count(step => step.BeforeWork) ?? 0) is var first
                && (steps == Expectation.Some ? first == 0 : first != steps)
            )
                yield return $"expected {(steps == Expectation.Some ? "some" : steps)} steps before the work, got {first}";
            if (expect.MayCertify is { } may && certification?.MayCertify != may)
                yield return $"expected that the certifier may certify: {May(may)}, got: {May(certification?.MayCertify)} "
                    + $"({certification?.Why ?? "nothing"})";
        }

        foreach (var (rule, outcomes) in ByRule(expect.Findings))
            if (Given(judged.Findings(rule)) is var given && given != outcomes)
                yield return $"expected {rule} to give {Words(outcomes)}, got {Words(given)}";
        if (expect.Conditions is { } conditions && Differ(conditions, ConditionsOf(judged.Findings())) is { } shown)
            yield return $"expected the conditions {shown}";
        foreach (var (rule, told) in ByRule(expect.ConditionsOf))
            if (Differ(told, ConditionsOf(judged.Findings(rule))) is { } differ)
                yield return $"expected of {rule} the conditions {differ}";
        foreach (var (rule, told) in ByRule(expect.CodesOf))
            if (Differ(told, judged.Findings(rule).SelectMany(finding => finding.Tier?.Codes ?? [])) is { } differ)
                yield return $"expected of {rule} the codes {differ}";
        foreach (var (rule, expected) in ByRule(expect.WarningOnly))
            if (WarningOnly(judged.Findings(rule)) is var warned && warned != expected)
                yield return $"expected of {rule} that a breach brings a warning only: {May(expected)}, got {May(warned)}";
        if (expect.Decides is { } measure && Deciding(judged.Findings(), outcome) is var deciding && !deciding.Contains(measure))
            yield return $"expected {measure} to decide, got {Words(deciding)}";
    }

    /// <summary>
    /// The measures that decide, in the findings that give the worst that is possible: those whose limits in easier tiers are exceeded, or
    /// where none is, the one nearest to its limit.
    /// </summary>
    private static string[] Deciding(ImmutableArray<Finding> findings, Outcome outcome) =>
        [
            .. findings
                .Where(finding => finding.Outcome.Worst == outcome.Worst)
                .SelectMany(finding =>
                    finding.Exceeded.IsEmpty
                        ? finding.Limits.Where(check => check.Margin is not null).OrderBy(check => check.Margin).Take(1)
                        : finding.Exceeded
                )
                .Select(check => check.Measure.Name)
                .Distinct(),
        ];

    private static IEnumerable<KeyValuePair<string, T>> ByRule<T>(ImmutableDictionary<string, T>? expected) =>
        (expected ?? []).OrderBy(pair => pair.Key, StringComparer.Ordinal);

    private static IEnumerable<string> ConditionsOf(IEnumerable<Finding> findings) =>
        findings.SelectMany(finding => finding.Conditions).Select(state => state.Condition.Name);

    /// <summary>The pathways that a rule gives, over all versions that may be in force; null where it does not bind.</summary>
    private static Outcome? Given(IEnumerable<Finding> findings) =>
        findings.Select(finding => (Outcome?)finding.Outcome).Aggregate((Outcome?)null, (all, one) => all?.Or(one!.Value) ?? one);

    /// <summary>Whether all versions that may be in force say so, or some.</summary>
    private static Truth WarningOnly(IEnumerable<Finding> findings) =>
        findings.Select(finding => finding.Version.WarningOnly).Distinct().ToArray() switch
        {
            [var one] => one ? Truth.Yes : Truth.No,
            [] => Truth.No,
            _ => Truth.Unknown,
        };

    private static string May(Truth? may) =>
        may switch
        {
            Truth.Yes => "yes",
            Truth.No => "no",
            null => "nobody is named",
            _ => "open",
        };

    private static string Words(Outcome? outcome) => outcome is { } known ? Wording.Of(known) : "nothing";

    private static string? Differ(IEnumerable<string> expected, IEnumerable<string> got)
    {
        string[] left = [.. expected.Distinct().Order(StringComparer.Ordinal)],
            right = [.. got.Distinct().Order(StringComparer.Ordinal)];
        return left.SequenceEqual(right) ? null : $"{Words(left)}, got {Words(right)}";
    }

    private static string Words(string[] words) => words.Length == 0 ? "nothing" : string.Join(", ", words);
}
