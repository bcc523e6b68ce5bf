using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The answer that one acts on: at most twelve lines of eighty columns, the decision first.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="vocabulary">The words of the book.</param>
/// <param name="whole">Whether every row is written with all of its parts, where lines do not count.</param>
internal sealed class FirstScreen(AnswerPage page, Vocabulary vocabulary, bool whole = false)
{
    private const int Most = 12;
    private const int LineWidth = 80;
    private const int RowWidth = 67;

    /// <summary>What goes first where the screen is too small; the rest of the answer has it.</summary>
    private static readonly ImmutableArray<string> Dispensable =
    [
        "Combination",
        "Ratings",
        "Tyres",
        "On the road",
        "Rests on",
        "Masses",
        "To show",
    ];

    /// <summary>Writes it.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="job">The job that was asked about.</param>
    /// <param name="today">The day on which it is asked; null where that is not known.</param>
    /// <param name="more">How a reader gets to the rest.</param>
    /// <param name="remedies">What would mend the job; null where nobody looked.</param>
    public void Write(Assessment assessment, Job job, DateOnly? today, string more, IReadOnlyCollection<Remedy>? remedies = null)
    {
        var lines = FirstLines.Of(assessment, today).ToArray();
        var last = $"This is not legal advice: the authority and the certifier decide.{(more.Length > 0 ? $" {more}" : "")}";
        var jobLine = Fitting(JobLine.Of(job).Split(", "), 2 * LineWidth - 10, ", ");
        var rows = Rows(assessment, remedies).Where(row => row.Text.Length > 0).ToList();
        var left = Most - Wrapping.Lines([.. lines, jobLine, last], LineWidth);
        foreach (var label in Dispensable.Where(_ => !whole && Wrapping.Lines(rows.Select(row => row.Text), RowWidth) > left).ToArray())
            if (Wrapping.Lines(rows.Select(row => row.Text), RowWidth) > left)
                rows.RemoveAll(row => row.Label == label);
        page.Title(lines[0], Colour(assessment.Headline));
        foreach (var line in lines.Skip(1))
            page.Line(line);
        page.Line(jobLine);
        foreach (var (label, text) in rows)
            page.Row(label, text);
        page.Line(last);
    }

    private IEnumerable<(string Label, string Text)> Rows(Assessment assessment, IReadOnlyCollection<Remedy>? remedies)
    {
        foreach (var (label, parts) in SubjectRows.Of(assessment))
            yield return (label, Fit(parts));
        yield return ("To comply", remedies is null ? "" : RemedyText.Line(assessment, remedies));
        yield return ("To show", Fit([.. ToShow(assessment)]));
        yield return ("Certifies", Certifies(assessment) ?? "");
        yield return ("Held", Fit([.. assessment.Held.Select(HeldText.Short)]));
        yield return ("Open", Fit([.. Deciding(assessment.Undecided).Select(effect => Questions.Of(effect, vocabulary)).Distinct()]));
        yield return ("Rests on", RestsOn(assessment));
    }

    /// <summary>The colour that stands beside the words of a headline.</summary>
    public static VerdictColour Colour(Headline headline) =>
        headline switch
        {
            Headline.NoCertificate => VerdictColour.Free,
            Headline.Certificate or Headline.Approval => VerdictColour.Certified,
            Headline.Prohibited or Headline.Blocked => VerdictColour.Prohibited,
            _ => VerdictColour.Open,
        };

    /// <summary>The questions whose answers differ; all of them where no answer changes anything by itself.</summary>
    private static IReadOnlyCollection<Effect> Deciding(ImmutableArray<Effect> undecided) =>
        undecided.Where(effect => effect.DecidesAlone).ToArray() is [_, ..] deciding ? deciding : undecided;

    private string Fit(IReadOnlyList<string> parts) => whole ? string.Join("; ", parts) : Fitting(parts);

    /// <summary>As many parts as fit, at least one, and how many more there are.</summary>
    internal static string Fitting(IReadOnlyList<string> parts, int width = RowWidth, string between = "; ")
    {
        if (parts.Count == 0)
            return "";
        var (text, told) = (parts[0], 1);
        while (told < parts.Count && text.Length + between.Length + parts[told].Length + (told + 1 < parts.Count ? 8 : 0) <= width)
            text += between + parts[told++];
        return told == parts.Count ? text : $"{text}{between}{parts.Count - told} more";
    }

    /// <summary>The conditions that are to be shown, each once.</summary>
    public static IEnumerable<string> ToShow(Assessment assessment) =>
        assessment
            .Findings.SelectMany(finding => finding.Conditions)
            .Where(condition => condition.State == Truth.Unknown)
            .Select(condition => condition.Condition.Title)
            .Distinct();

    /// <summary>Only where something is certified.</summary>
    private static string? Certifies(Assessment assessment)
    {
        if (!assessment.IsCertified)
            return assessment is { Verdict: Pathway.NoCertificate, NotJudged.IsEmpty: true } ? "nobody: no certificate is needed" : null;
        var certification = assessment.Certification!;
        var certifier = certification.Version.Certifier ?? "not established";
        var first = certification.Steps.Any(step => step.BeforeWork) ? "; steps before the work" : "";
        return certification.MayCertify switch
            {
                Truth.No => $"{certifier}; not the one named",
                Truth.Unknown => $"{certifier}; open whether the one named is accepted",
                _ => certifier,
            } + first;
    }

    private string RestsOn(Assessment assessment)
    {
        var edition = EditionWords.Called(assessment.Edition, assessment.Book);
        return assessment.WeakestEvidence is { } weakest
            ? $"{vocabulary.Topics.GetValueOrDefault(weakest.Rule.Topic)?.Title ?? weakest.Rule.Topic}: "
                + $"{Phrases.Standing(weakest.Standing)}; {edition}"
            : edition;
    }
}
