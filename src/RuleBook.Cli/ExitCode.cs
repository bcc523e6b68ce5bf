using RuleBook.Law;

namespace RuleBook.Cli;

/// <summary>What the command's exit code says.</summary>
internal static class ExitCode
{
    public const int Permitted = 0;
    public const int Prohibited = 1;
    public const int BadInput = 2;
    public const int Undecided = 3;

    public static int Of(Pathway? verdict) => verdict switch
    {
        null => Undecided,
        Pathway.Prohibited => Prohibited,
        _ => Permitted,
    };
}
