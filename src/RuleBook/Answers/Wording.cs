using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>The words of the data for what the code enumerates.</summary>
internal static class Wording
{
    /// <summary>As written in data.</summary>
    public static string Of(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "no-certificate",
            Pathway.Certificate => "certificate",
            Pathway.Approval => "approval",
            _ => "prohibited",
        };

    /// <summary>What the pathway gives, as a noun.</summary>
    public static string Noun(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "doing without a certificate",
            Pathway.Certificate => "a certificate",
            Pathway.Approval => "an approval",
            _ => "a prohibition",
        };

    /// <summary>A title inside a sentence: its first letter small, unless it is that of an abbreviation.</summary>
    public static string WithinSentence(string title) =>
        title is [var first, var second, ..] && !char.IsUpper(second) ? char.ToLowerInvariant(first) + title[1..] : title;

    /// <summary>In two words at most, for a list.</summary>
    public static string Short(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "no certificate",
            Pathway.Certificate => "certificate",
            Pathway.Approval => "approval first",
            _ => "not allowed",
        };

    /// <summary>As written in data.</summary>
    public static string Of(ReadAs readAs) =>
        readAs switch
        {
            ReadAs.Primary => "primary",
            ReadAs.Secondary => "secondary",
            ReadAs.CommonPractice => "common-practice",
            _ => "memory",
        };

    /// <summary>As written in data; <c>no-source</c> where no citation carries it.</summary>
    public static string Of(Standing standing) => standing.Basis is { } basis ? Of(basis) : "no-source";

    /// <summary>One pathway, or from the best to the worst.</summary>
    public static string Of(Outcome outcome) => outcome.Decided ? Of(outcome.Best) : $"{Of(outcome.Best)} to {Of(outcome.Worst)}";

    /// <summary>For a reader.</summary>
    public static string Spoken(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "allowed without a certificate",
            Pathway.Certificate => "allowed with a certificate",
            Pathway.Approval => "allowed with the authority's approval first",
            _ => "not allowed",
        };

    /// <summary>For a reader: one pathway, or from which to which.</summary>
    public static string Spoken(Outcome outcome) =>
        outcome.Decided ? Spoken(outcome.Best) : $"from {Spoken(outcome.Best)} to {Spoken(outcome.Worst)}";

    /// <summary>What a measurement says about a limit.</summary>
    public static string Of(Conformity conformity) =>
        conformity switch
        {
            Conformity.Within => "within",
            Conformity.Beyond => "beyond",
            _ => "too-close-to-call",
        };

    /// <summary>For a condition: met, not met or to show.</summary>
    public static string Condition(Truth state) =>
        state switch
        {
            Truth.Yes => "met",
            Truth.No => "not-met",
            _ => "to-show",
        };
}
