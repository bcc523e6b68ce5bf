using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Authoring.Cases;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Pinning;

/// <summary>A case with its question to the book opened once, so that a changed book need not be asked about what did not change.</summary>
internal sealed class PreparedCase(Book book, Case one)
{
    private readonly Judgement judged = CaseRun.Ask(book, one.Job);

    public Case Case { get; } = one;

    /// <summary>Whether the case fails on another book.</summary>
    public bool FailsOn(Book other) => Fails(other, CaseRun.Ask(other, Case.Job));

    /// <summary>Whether the case fails on a book in which only some rules differ.</summary>
    /// <param name="other">The other book.</param>
    /// <param name="rules">Full ids of the rules that may differ.</param>
    /// <param name="known">What was found of the other book so far, by table and days.</param>
    public bool FailsOn(Book other, ImmutableArray<string> rules, Dictionary<(DecisionTable, JobDates), RulesChanged?> known) =>
        judged.Changed(other, rules, known) is { } changed
        && changed.By(judged.Facts) >= (Case.Expect.Decides is null ? Felt.Otherwise : Felt.Bound)
        && Fails(other, judged.Under(other, changed));

    /// <summary>Whether the case fails on a book in which only schemes of certification differ.</summary>
    public bool FailsOnCertification(Book other) => Case.Expect.LooksAtCertification && Fails(other, judged);

    private bool Fails(Book other, Judgement asked) => CaseRun.Failures(other, Case.Job, asked, Case.Expect).Any();
}
