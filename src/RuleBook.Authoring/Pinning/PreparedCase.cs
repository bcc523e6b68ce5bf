using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Authoring.Cases;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Pinning;

/// <summary>A case with its question to the book opened once, so that a changed book need not be asked about what did not change.</summary>
internal sealed class PreparedCase(Book book, Case one)
{
    private readonly Judgement judged = CaseRun.Ask(book, one.Job);

    /// <summary>From which difference on the case can notice a change.</summary>
    private readonly Felt least =
        one.Expect.Decides is not null ? Felt.Bound
        : one.Expect is { Conditions: null, ConditionsOf: null, CodesOf: null, WarningOnly: null, LooksAtCertification: false }
            ? Felt.Otherwise
        : Felt.Told;

    /// <summary>Whether the case looks at nothing but what the rules that it names give or ask for.</summary>
    private readonly bool onlyNamed =
        one.Expect is { Between: null, Undecided: false, Decides: null, Asks: null, Conditions: null, LooksAtCertification: false };

    private readonly HashSet<string> named =
    [
        .. one.Expect.Findings?.Keys ?? [],
        .. one.Expect.ConditionsOf?.Keys ?? [],
        .. one.Expect.CodesOf?.Keys ?? [],
        .. one.Expect.WarningOnly?.Keys ?? [],
    ];

    public Case Case { get; } = one;

    /// <summary>What the job makes known.</summary>
    public FactSet Facts => judged.Facts;

    /// <summary>Whether the case says what one of some rules gives or asks for.</summary>
    public bool NamesAny(ImmutableArray<string> rules) => named.Count > 0 && named.Overlaps(rules);

    /// <summary>Whether the case fails on another book.</summary>
    public bool FailsOn(Book other) => Fails(other, CaseRun.Ask(other, Case.Job));

    /// <summary>Whether the case fails on a book in which only rules of modification differ.</summary>
    /// <param name="change">The change.</param>
    /// <param name="known">What was found of the other book so far, by table and days.</param>
    public bool Notices(RuleChange change, Dictionary<(DecisionTable, JobDates), RulesChanged?> known) =>
        (!onlyNamed || NamesAny(change.Reached))
        && Changed(change, known) is { } changed
        && changed.By(judged.Facts, change.Focus) >= least
        && Fails(change.Book, judged.Under(change.Book, changed.Whole));

    /// <summary>Whether the case fails on a book in which only rules of use differ.</summary>
    public bool FailsOnUse(Book other) => Fails(other, judged.Under(other, judged.Table));

    /// <summary>Whether the case fails on a book in which only schemes of certification differ.</summary>
    public bool FailsOnCertification(Book other) => Case.Expect.LooksAtCertification && Fails(other, judged);

    /// <summary>
    /// What may be in force otherwise in the changed book, on the days of this job; null where that is nothing. The same change of the same
    /// table is kept once.
    /// </summary>
    private RulesChanged? Changed(RuleChange change, Dictionary<(DecisionTable, JobDates), RulesChanged?> known)
    {
        if (known.TryGetValue((judged.Table, Case.Job.Dates), out var changed))
            return changed;
        changed = RulesChanged.Of(judged.Table, book, change.Book, change.Reached, judged.Days);
        return known[(judged.Table, Case.Job.Dates)] = changed is null
            ? null
            : known.Values.FirstOrDefault(earlier => earlier is not null && earlier.Equals(changed)) ?? changed;
    }

    private bool Fails(Book other, Judgement asked) => CaseRun.Failures(other, Case.Job, asked, Case.Expect).Any();
}
