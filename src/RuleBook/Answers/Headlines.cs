using RuleBook.Law;

namespace RuleBook.Answers;

/// <summary>What the first line of an answer says.</summary>
internal static class Headlines
{
    /// <summary>Of an assessment with its blockers.</summary>
    public static Headline Of(Assessment assessment) =>
        assessment switch
        {
            { JudgesNothing: true, Blockers.IsEmpty: true } => Headline.NothingToJudge,
            { Verdict: Pathway.Prohibited } => Headline.Prohibited,
            { Blockers.IsEmpty: false } => Headline.Blocked,
            { Verdict: Pathway.NoCertificate } => Headline.NoCertificate,
            { Verdict: Pathway.Certificate } => Headline.Certificate,
            { Verdict: Pathway.Approval } => Headline.Approval,
            _ => Headline.Undecided,
        };

    /// <summary>As written in JSON.</summary>
    public static string Word(Headline headline) =>
        headline switch
        {
            Headline.NothingToJudge => "nothing-to-judge",
            Headline.Blocked => "blocked",
            Headline.Prohibited => "prohibited",
            Headline.Undecided => "undecided",
            Headline.Approval => "approval",
            Headline.Certificate => "certificate",
            _ => "no-certificate",
        };
}
