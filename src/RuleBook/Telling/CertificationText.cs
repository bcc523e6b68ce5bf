using RuleBook.Answers;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Who certifies, what is issued and what comes first; only where something is certified.</summary>
internal sealed class CertificationText(AnswerPage page)
{
    public void Write(Assessment assessment)
    {
        if (!assessment.IsCertified)
            return;
        var certification = assessment.Certification!;
        page.Heading($"Who certifies: {certification.Scheme}");
        var version = certification.Version;
        if (version.Certifier is { } certifier)
            page.Item($"{certifier}{(version.AppointedBy is { } by ? $", appointed by {by}" : "")}");
        if (version.Decides == "authority")
            page.Item("the authority has the last word, not the certifier");
        if (certification.Why is { } why)
            page.Item($"The certifier named {May(certification.MayCertify)}: {why}");
        if (!certification.Papers.IsEmpty)
            page.Item($"issued: {string.Join(", ", certification.Papers)}");
        foreach (var step in certification.Steps)
            page.Item($"{(step.BeforeWork ? "before the work: " : "")}{step.Text.Trim()}");
    }

    private static string May(Truth? may) =>
        may switch
        {
            Truth.Yes => "may certify",
            Truth.No => "may not certify",
            _ => "may or may not be accepted",
        };
}
