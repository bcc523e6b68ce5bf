using RuleBook.Answers;

namespace RuleBook.Cli;

/// <summary>What the command's exit code says; of <c>assess</c> it follows from the headline of the answer.</summary>
internal static class ExitCode
{
    public const int Permitted = 0;
    public const int Prohibited = 1;
    public const int Differs = 1;
    public const int BadInput = 2;
    public const int Undecided = 3;
    public const int Blocked = 4;
    public const int NothingToJudge = 5;

    /// <summary>The fault is the program's: EX_SOFTWARE of sysexits.h.</summary>
    public const int Fault = 70;

    /// <summary>128 and the number of the signal, as shells say it.</summary>
    public const int Interrupted = 130;

    /// <inheritdoc cref="Interrupted"/>
    public const int Terminated = 143;

    public static int Of(Headline headline) =>
        headline switch
        {
            Headline.NothingToJudge => NothingToJudge,
            Headline.Prohibited => Prohibited,
            Headline.Blocked => Blocked,
            Headline.Undecided => Undecided,
            _ => Permitted,
        };
}
