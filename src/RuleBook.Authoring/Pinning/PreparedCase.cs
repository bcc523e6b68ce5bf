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
    /// <param name="tables">The tables of the other book that were made so far.</param>
    public bool FailsOn(Book other, ImmutableArray<string> rules, Dictionary<(DecisionTable, JobDates), DecisionTable?> tables) =>
        judged.Under(other, rules, tables) is { } under
        && (Case.Expect.Decides is not null || !judged.GivesTheSame(under, rules))
        && Fails(other, under);

    /// <summary>Whether the case fails on a book in which only schemes of certification differ.</summary>
    public bool FailsOnCertification(Book other) => Case.Expect.LooksAtCertification && Fails(other, judged);

    private bool Fails(Book other, Judgement asked) => CaseRun.Failures(other, Case.Job, asked, Case.Expect).Any();
}
