using System.Collections.Immutable;
using RuleBook.Authoring.Cases;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>A case with its question to the book opened once, so that a changed book need not be asked about what did not change.</summary>
internal sealed class PreparedCase(Book book, Case one)
{
    private readonly Inquiry inquiry = CaseRun.Ask(book, one.Job);

    public Case Case { get; } = one;

    /// <summary>Whether the case fails on a book in which some rules of a topic differ.</summary>
    public bool Notices(Book changed, Topic topic, ImmutableArray<string> rules) =>
        (topic.OfUse ? CaseRun.Ask(changed, Case.Job) : inquiry.Under(changed, Case.Job, rules)) is { } other
        && CaseRun.Failures(changed, Case.Job, other, Case.Expect).Any();
}
