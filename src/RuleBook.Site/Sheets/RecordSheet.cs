using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Site.Templating;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Site.Sheets;

/// <summary>
/// An answer as a sheet to print, tick, sign and file: one or two pages of A4 that need no other file. It is no certificate and looks like none.
/// </summary>
public static class RecordSheet
{
    private const int Brief = 28;

    /// <summary>The sheet as HTML.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="assessment">Its answer.</param>
    /// <param name="remedies">What would mend the job.</param>
    /// <param name="tool">Version of the command.</param>
    /// <param name="made">Today.</param>
    public static string Of(Book book, Job job, Assessment assessment, IReadOnlyCollection<Remedy> remedies, string tool, DateOnly made) => Templates.Render(
        "sheet",
        ("title", assessment.Job ?? "without a name"),
        ("place", $"{assessment.JurisdictionName} ({assessment.Jurisdiction})"),
        ("on", Phrases.Day(assessment.On)),
        ("made", Phrases.Day(made)),
        ("tool", tool),
        ("edition", EditionWords.Called(assessment.Edition, assessment.Book)),
        ("digest", assessment.Book),
        ("decision", FirstLines.Of(assessment, made).ToArray()),
        ("comply", RemedyText.Line(assessment, remedies)),
        ("inputs", job.Written is { } written ? Paired([.. Typed(written, "")]).ToArray() : []),
        ("measures", assessment.Measures.Where(known => !known.IsAssumed).Select(Measured).ToArray()),
        ("assumed", assessment.Measures.Where(known => known.IsAssumed).Select(known => $"{known.Measure.Title} {Phrases.Interval(known.Value, known.Measure.Unit)}").ToArray()),
        ("mass_state", MassStates(assessment)),
        ("limits", assessment.Findings.Concat(assessment.OfUse).SelectMany(Limits).ToArray()),
        ("loads", assessment.Masses is { } masses ? Loads(masses.Loaded ?? masses.Unladen, masses.Loaded is null ? "unladen" : "loaded").ToArray() : []),
        ("conditions", assessment.Findings.Concat(assessment.OfUse).SelectMany(finding => finding.Conditions).DistinctBy(condition => condition.Condition.Name).Select(Condition).ToArray()),
        ("certifies", Certifier(assessment)),
        ("steps", Steps(assessment)),
        ("held", assessment.Held.Select(Held).ToArray()),
        ("unjudged", assessment.NotJudged.Select(each => $"{Phrases.Sentence(each.What)}: no rule in the book speaks of it. Ask {each.Ask}.").Concat(assessment.Gaps.Select(gap => $"{Phrases.Sentence(gap.What)}. Ask {gap.Ask.TrimEnd('.')}.")).Distinct().ToArray()),
        ("questions", assessment.Undecided.Select(effect => Questions.Of(effect, book.Vocabulary)).ToArray()),
        ("cautions", assessment.Cautions.ToArray())).Text;

    /// <summary>Every value that was typed, by its path.</summary>
    private static IEnumerable<InputRow> Typed(Node node, string path) => node switch
    {
        Mapping map => map.Entries.SelectMany(entry => Typed(entry.Value, path.Length == 0 ? entry.Key.Text : $"{path}.{entry.Key.Text}")),
        Sequence { Items: var items } when items.All(item => item is Scalar) => [new InputRow(Visible.Of(Spaced(path)), string.Join(", ", items.OfType<Scalar>().Select(item => Visible.Of(item.Text))))],
        Sequence list => [new InputRow(Visible.Of(Spaced(path)), string.Join("; ", list.Items.Select(Flat)))],
        Scalar scalar => [new InputRow(Visible.Of(Spaced(path)), Visible.Of(scalar.Text))],
        _ => [],
    };

    /// <summary>A path as words: <c>vehicle: ratings, front axle</c>.</summary>
    private static string Spaced(string path)
    {
        var words = path.Replace('-', ' ').Split('.');
        return words.Length == 1 ? words[0] : $"{words[0]}: {string.Join(", ", words[1..])}";
    }

    /// <summary>Short ones side by side, so that the sheet stays short.</summary>
    private static IEnumerable<InputPair> Paired(IReadOnlyList<InputRow> rows)
    {
        InputRow[] brief = [.. rows.Where(row => row.Value.Length <= Brief)];
        for (var i = 0; i < brief.Length; i += 2) yield return new InputPair(brief[i], i + 1 < brief.Length ? brief[i + 1] : null);
        foreach (var row in rows.Where(row => row.Value.Length > Brief)) yield return new InputPair(row, null);
    }

    private static string Flat(Node node) => node switch
    {
        Scalar scalar => Visible.Of(scalar.Text),
        Sequence list => string.Join(", ", list.Items.Select(Flat)),
        Mapping map => string.Join(", ", map.Entries.Select(entry => $"{Visible.Of(entry.Key.Text)} {Flat(entry.Value)}")),
        _ => "",
    };

    private static MeasureRow Measured(KnownMeasure known) =>
        new(Phrases.Sentence(known.Measure.Title), Phrases.Interval(known.Value, known.Measure.Unit), known.Derivation ?? "");

    private static string MassStates(Assessment assessment) => string.Join("; ", assessment.Findings
        .Select(finding => finding.Version.Measured)
        .OfType<Measured>()
        .Select(measured => measured.MassState is { } state and not "not-established" ? $"mass state {state}" : "at which mass is not established")
        .Distinct());

    private static IEnumerable<LimitRow> Limits(Finding finding) => finding.Limits.Concat(finding.Exceeded).Select(check =>
    {
        var standing = finding.Version.Evidence.Of(check.Tier, check.Limit);
        var clause = standing.Cited is { } cited ? $"{cited.Source.Title}{(cited.Citation.Clause is { } at ? $", {at}" : "")}" : "no source";
        return new LimitRow(Phrases.Sentence(Phrases.Limit(check)), finding.Version.Rule.Title, clause, Phrases.Standing(standing), check.Holds == Truth.No);
    });

    private static IEnumerable<LoadRow> Loads(MassBudget budget, string state) => budget.Left.Select(check =>
    {
        var gives = MassAnswer.IsRerated(check, budget.Left);
        return new LoadRow(
            Phrases.Sentence(check.What), state, $"{Numbers.Show(check.ValueKg, 1)} kg", $"{Numbers.Show(check.LimitKg, 1)} kg",
            (check.Holds ? $"{Numbers.Show(check.MarginKg, 1)} kg left" : $"{Numbers.Show(-check.MarginKg, 1)} kg too much") + (gives ? "; gives way to the re-rating" : ""),
            !check.Holds && !gives);
    });

    private static ConditionRow Condition(ConditionState condition) => new(
        Phrases.Sentence(condition.Condition.Title),
        condition.State switch { Truth.Yes => "the job says that it is met", Truth.No => "the job says that it is NOT met", _ => "to be shown" });

    private static string Certifier(Assessment assessment)
    {
        if (!assessment.IsCertified) return assessment is { Verdict: Pathway.NoCertificate, NotJudged.IsEmpty: true } ? "Nobody: no certificate is needed." : "";
        var version = assessment.Certification!.Version;
        return $"{assessment.Certification.Scheme}: {version.Certifier ?? "who certifies is not established"}{(version.AppointedBy is { } by ? $", appointed by {by}" : "")}."
            + (assessment.Certification.Papers.IsEmpty ? "" : $" Issued: {string.Join(", ", assessment.Certification.Papers)}.");
    }

    private static string Held(PaperHeld held) =>
        $"{held.Paper.Name}{(held.Paper.Number is { } number ? $" {number}" : "")}, {held.IssuedIn}{(held.Paper.Day is { } day ? $", {day}" : "")}: {held.Says}."
            + (held.Ask is { } ask ? $" Ask {ask}." : "");

    private static string[] Steps(Assessment assessment) => assessment.IsCertified
        ? [.. assessment.Certification!.Steps.OrderByDescending(step => step.BeforeWork).Select(step => $"{(step.BeforeWork ? "Before the work: " : "")}{step.Text.Trim()}")]
        : [];
}

/// <summary>A value that was typed.</summary>
internal sealed record InputRow(string Path, string Value);

/// <summary>One value that was typed, or two side by side.</summary>
internal sealed record InputPair(InputRow First, InputRow? Second);

/// <summary>A measure and how it came about.</summary>
internal sealed record MeasureRow(string Title, string Value, string Derivation);

/// <summary>A limit that was compared.</summary>
internal sealed record LimitRow(string Says, string Rule, string Clause, string Standing, bool Passed);

/// <summary>A mass against a rating.</summary>
internal sealed record LoadRow(string What, string State, string Value, string Limit, string Left, bool Passed);

/// <summary>A condition with a box.</summary>
internal sealed record ConditionRow(string Title, string State);
