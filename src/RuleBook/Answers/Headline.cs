namespace RuleBook.Answers;

/// <summary>What the first line of an answer says: a closed set, from which the exit code of <c>assess</c> follows.</summary>
/// <remarks>
/// The first that holds is told, in the order here: a job that changes nothing is nothing to judge; what no pathway permits is prohibited;
/// a blocker comes before the pathway, decided or not.
/// </remarks>
public enum Headline
{
    /// <summary>The job states no change and no load that is over a limit.</summary>
    NothingToJudge,

    /// <summary>No pathway permits it, whatever else stands in the way.</summary>
    Prohibited,

    /// <summary>A blocker stands: not to be driven or done as planned, whatever the pathway.</summary>
    Blocked,

    /// <summary>What is known does not decide the pathway.</summary>
    Undecided,

    /// <summary>Allowed once the authority has approved it.</summary>
    Approval,

    /// <summary>Allowed with a certificate.</summary>
    Certificate,

    /// <summary>Allowed without a certificate.</summary>
    NoCertificate,
}
