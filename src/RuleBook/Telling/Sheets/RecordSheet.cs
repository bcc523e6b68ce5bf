using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Telling.Sheets;

/// <summary>
/// An answer as a sheet to print, tick, sign and file: one or two pages of A4 that need no other file. It is no certificate and looks like
/// none.
/// </summary>
internal static class RecordSheet
{
    private const int Brief = 28;

    /// <summary>The sheet as HTML, to stand in a page whose style sheet is that of the site's templates.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="assessment">Its answer.</param>
    /// <param name="remedies">What would mend the job.</param>
    /// <param name="tool">What made it: the command with its version, or the page.</param>
    /// <param name="made">Today.</param>
    public static string Of(Book book, Job job, Assessment assessment, IReadOnlyCollection<Remedy> remedies, string tool, DateOnly made)
    {
        var sheet = new Markup()
            .Raw("<header>")
            .Raw("<div>")
            .Element("h1", $"Record of an answer: {Title(assessment)}")
            .Element("p", $"{assessment.JurisdictionName} ({assessment.Jurisdiction}), as on {Phrases.Day(assessment.On)}")
            .Raw("</div>")
            .Raw(
                $"<p class=\"small\">{Markup.Written("span", $"Made {Phrases.Day(made)}")}<br>{Markup.Written("span", tool)}<br>"
                    + $"{Markup.Written("span", EditionWords.Called(assessment.Edition, assessment.Book))}</p>"
            )
            .Raw("</header>")
            .Raw(
                "<p><strong>This is no certificate and no approval.</strong> It records what the limits in the book give for what "
                    + "was typed below. The authority of the state of registration and the licensed certifier decide.</p>"
            );
        Decision(sheet, book, assessment, remedies, made);
        Inputs(sheet, job);
        Compared(sheet, assessment);
        ToDo(sheet, assessment);
        return sheet
            .Element("h2", "Bear in mind")
            .List(assessment.Cautions, "ul class=\"small\"")
            .Raw("<div class=\"sign\">")
            .Raw("<span>Name</span><span>Appointment or licence number</span><span>Day</span><span>Signature</span>")
            .Raw("</div>")
            .Raw(
                $"<footer><p class=\"small\">Book: {Markup.Written("code", assessment.Book)}. The same answer can be made again "
                    + "from a record in JSON: rulebook assess JOB --format record, rulebook replay RECORD.</p></footer>"
            )
            .ToString();
    }

    /// <summary>What the sheet is called.</summary>
    public static string Title(Assessment assessment) => assessment.Job ?? "without a name";

    private static void Decision(Markup sheet, Book book, Assessment assessment, IReadOnlyCollection<Remedy> remedies, DateOnly made)
    {
        sheet.Raw("<div class=\"decision\">");
        foreach (var line in FirstLines.Of(assessment, made))
            sheet.Element("p", line);
        if (RemedyText.Line(assessment, remedies) is { Length: > 0 } comply)
            sheet.Element("p", $"To comply: {comply}.");
        sheet.Raw("</div>");
        string[] unjudged =
        [
            .. assessment
                .NotJudged.Select(each => $"{Phrases.Sentence(each.What)}: no rule in the book speaks of it. Ask {each.Ask}.")
                .Concat(assessment.Gaps.Select(gap => $"{Phrases.Sentence(gap.What)}. Ask {gap.Ask.TrimEnd('.')}."))
                .Distinct(),
        ];
        if (unjudged.Length > 0)
            sheet.Element("h2", "Not judged, not established").List(unjudged);
        if (!assessment.Undecided.IsEmpty)
            sheet.Element("h2", "What would decide").List(assessment.Undecided.Select(effect => Questions.Of(effect, book.Vocabulary)));
    }

    private static void Inputs(Markup sheet, Job job)
    {
        if (job.Written is not { } written)
            return;
        sheet
            .Element("h2", "What was typed")
            .Table(
                "table class=\"typed\"",
                ["Input", "As typed", "Input", "As typed"],
                Paired([.. Typed(written, "")]).Select(pair => ("tr", pair))
            );
    }

    private static void Compared(Markup sheet, Assessment assessment)
    {
        var states = MassStates(assessment);
        KnownMeasure[] measured = [.. assessment.Measures.Where(known => !known.IsAssumed)];
        if (measured.Length > 0)
            sheet
                .Element("h2", $"Measured and reckoned{(states.Length > 0 ? $": {states}" : "")}")
                .Table("table", ["Measure", "Value", "How it came about", "Instrument, uncertainty"], measured.Select(Measured));
        string[] assumed =
        [
            .. assessment
                .Measures.Where(known => known.IsAssumed)
                .Select(known => $"{known.Measure.Title} {Phrases.Interval(known.Value, known.Measure.Unit)}"),
        ];
        if (assumed.Length > 0)
            sheet.Element("p", $"Assumed, for nothing is stated to change it: {string.Join("; ", assumed)}.");
        (string, string[])[] limits = [.. assessment.Findings.Concat(assessment.OfUse).SelectMany(Limits)];
        if (limits.Length > 0)
            sheet.Element("h2", "Limits that were compared").Table("table", ["Limit", "Rule", "Source and clause", "Known"], limits);
        if (assessment.Masses is { } masses && (masses.Loaded ?? masses.Unladen) is { Left.IsEmpty: false } budget)
            sheet
                .Element("h2", "Masses against ratings")
                .Table(
                    "table",
                    ["Compared", "State", "Mass", "Rating", "Left"],
                    Loads(budget, masses.Loaded is null ? "unladen" : "loaded")
                );
    }

    private static void ToDo(Markup sheet, Assessment assessment)
    {
        ConditionState[] conditions =
        [
            .. assessment
                .Findings.Concat(assessment.OfUse)
                .SelectMany(finding => finding.Conditions)
                .DistinctBy(condition => condition.Condition.Name),
        ];
        if (conditions.Length > 0)
        {
            sheet.Element("h2", "Conditions").Raw("<ul class=\"boxes\">");
            foreach (var condition in conditions)
                sheet.Raw(
                    "<li><span class=\"box\"></span><div "
                        + $"class=\"evidence\">{Markup.Written("span", $"{Condition(condition)}. Evidence:")}<span "
                        + "class=\"line\"></span></div></li>"
                );
            sheet.Raw("</ul>");
        }

        if (Certifier(assessment) is { Length: > 0 } certifier)
            sheet.Element("h2", "Who certifies").Element("p", certifier);
        Boxes(sheet, Steps(assessment));
        if (!assessment.Held.IsEmpty)
            Boxes(sheet.Element("h2", "Papers held"), [.. assessment.Held.Select(Held)]);
    }

    private static void Boxes(Markup sheet, string[] items)
    {
        if (items.Length == 0)
            return;
        sheet.Raw("<ul class=\"boxes\">");
        foreach (var item in items)
            sheet.Raw($"<li><span class=\"box\"></span>{Markup.Written("div", item)}</li>");
        sheet.Raw("</ul>");
    }

    /// <summary>Every value that was typed, by its path.</summary>
    private static IEnumerable<InputRow> Typed(Node node, string path) =>
        node switch
        {
            Mapping map => map.Entries.SelectMany(entry =>
                Typed(entry.Value, path.Length == 0 ? entry.Key.Text : $"{path}.{entry.Key.Text}")
            ),
            Sequence { Items: var items } when items.All(item => item is Scalar) =>
            [
                new InputRow(Visible.Of(Spaced(path)), string.Join(", ", items.OfType<Scalar>().Select(item => Visible.Of(item.Text)))),
            ],
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
    private static IEnumerable<string[]> Paired(IReadOnlyList<InputRow> rows)
    {
        InputRow[] brief = [.. rows.Where(row => row.Value.Length <= Brief)];
        for (var i = 0; i < brief.Length; i += 2)
            yield return i + 1 < brief.Length
                ? [Cell(brief[i].Path), Cell(brief[i].Value), Cell(brief[i + 1].Path), Cell(brief[i + 1].Value)]
                : [Cell(brief[i].Path), Cell(brief[i].Value, " colspan=\"3\"")];
        foreach (var row in rows.Where(row => row.Value.Length > Brief))
            yield return [Cell(row.Path), Cell(row.Value, " colspan=\"3\"")];
    }

    private static string Cell(string text, string attributes = "") => Markup.Written($"td{attributes}", text);

    private static string Flat(Node node) =>
        node switch
        {
            Scalar scalar => Visible.Of(scalar.Text),
            Sequence list => string.Join(", ", list.Items.Select(Flat)),
            Mapping map => string.Join(", ", map.Entries.Select(entry => $"{Visible.Of(entry.Key.Text)} {Flat(entry.Value)}")),
            _ => "",
        };

    private static (string, string[]) Measured(KnownMeasure known) =>
        (
            "tr",
            [
                Cell(Phrases.Sentence(known.Measure.Title)),
                Cell(Phrases.Interval(known.Value, known.Measure.Unit), " class=\"value\""),
                Cell(known.Derivation ?? ""),
                Cell("", " class=\"fill\""),
            ]
        );

    private static string MassStates(Assessment assessment) =>
        string.Join(
            "; ",
            assessment
                .Findings.Select(finding => finding.Version.Measured)
                .OfType<Measured>()
                .Select(measured =>
                    measured.MassState is { } state and not "not-established" ? $"mass state {state}" : "at which mass is not established"
                )
                .Distinct()
        );

    private static IEnumerable<(string Row, string[] Cells)> Limits(Finding finding) =>
        finding
            .Limits.Concat(finding.Exceeded)
            .Select(check =>
            {
                var standing = finding.Version.Evidence.Of(check.Tier, check.Limit);
                var clause = standing.Cited is { } cited
                    ? $"{cited.Source.Title}{(cited.Citation.Clause is { } at ? $", {at}" : "")}"
                    : "no source";
                return (
                    Row(check.Holds == Truth.No),
                    (string[])
                        [
                            Cell(Phrases.Sentence(Phrases.Limit(check))),
                            Cell(finding.Version.Rule.Title),
                            Cell(clause),
                            Cell(Phrases.Standing(standing)),
                        ]
                );
            });

    private static string Row(bool passed) => passed ? "tr class=\"passed\"" : "tr";

    private static IEnumerable<(string Row, string[] Cells)> Loads(MassBudget budget, string state) =>
        budget.Left.Select(check =>
        {
            var gives = MassAnswer.IsRerated(check, budget.Left);
            return (
                Row(!check.Holds && !gives),
                (string[])
                    [
                        Cell(Phrases.Sentence(check.What)),
                        Cell(state),
                        Cell($"{Numbers.Show(check.ValueKg, 1)} kg"),
                        Cell($"{Numbers.Show(check.LimitKg, 1)} kg"),
                        Cell(
                            (check.Holds ? $"{Numbers.Show(check.MarginKg, 1)} kg left" : $"{Numbers.Show(-check.MarginKg, 1)} kg too much")
                                + (gives ? "; gives way to the re-rating" : "")
                        ),
                    ]
            );
        });

    private static string Condition(ConditionState condition) =>
        Phrases.Sentence(condition.Condition.Title)
        + condition.State switch
        {
            Truth.Yes => " (the job says that it is met)",
            Truth.No => " (the job says that it is NOT met)",
            _ => " (to be shown)",
        };

    private static string Certifier(Assessment assessment)
    {
        if (!assessment.IsCertified)
            return assessment is { Verdict: Pathway.NoCertificate, NotJudged.IsEmpty: true } ? "Nobody: no certificate is needed." : "";
        var version = assessment.Certification!.Version;
        return $"{assessment.Certification.Scheme}: "
            + $"{version.Certifier ?? "who certifies is not established"}{(version.AppointedBy is { } by ? $", appointed by {by}" : "")}."
            + (assessment.Certification.Papers.IsEmpty ? "" : $" Issued: {string.Join(", ", assessment.Certification.Papers)}.");
    }

    private static string Held(PaperHeld held) =>
        $"{held.Paper.Name}{(held.Paper.Number is { } number ? $" {number}" : "")}, "
        + $"{held.IssuedIn}{(held.Paper.Day is { } day ? $", {day}" : "")}: {held.Says}."
        + (held.Ask is { } ask ? $" Ask {ask}." : "");

    private static string[] Steps(Assessment assessment) =>
        assessment.IsCertified
            ?
            [
                .. assessment
                    .Certification!.Steps.OrderByDescending(step => step.BeforeWork)
                    .Select(step => $"{(step.BeforeWork ? "Before the work: " : "")}{step.Text.Trim()}"),
            ]
            : [];
}

/// <summary>A value that was typed.</summary>
internal sealed record InputRow(string Path, string Value);
