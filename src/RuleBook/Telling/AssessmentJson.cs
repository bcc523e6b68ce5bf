using System.Globalization;
using System.Text.Json;
using Fractions;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>Writes an assessment as JSON: the same bytes for the same book, job and day, on the command line and in the page.</summary>
/// <remarks>
/// The shape is described by <c>schema/assessment.schema.json</c>. Numbers are rounded to six decimals for the reader; they decide nothing.
/// </remarks>
public static class AssessmentJson
{
    private static void Category(Utf8JsonWriter json, CategoryChange change)
    {
        json.WriteStartObject();
        json.WriteString("stated", change.Stated);
        json.Texts("judged-as", change.Judged.Select(each => each.Category));
        json.Number("gvm", (Fraction?)change.GvmKg, Unit.Base(Dimension.Mass));
        json.List("sources", change.Judged.SelectMany(each => each.Sources).Distinct(), json.Source);
        json.WriteEndObject();
    }

    /// <summary>One assessment, indented, ending with a line feed.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="remedies">What would mend the job; null where nobody looked.</param>
    public static string Write(Assessment assessment, IReadOnlyCollection<Remedy>? remedies = null) =>
        JsonText.Write(json => Write(json, assessment, remedies));

    /// <summary>The same job in several jurisdictions; the shape is described by <c>schema/across.schema.json</c>.</summary>
    /// <param name="assessments">An answer each.</param>
    /// <param name="registeredIn">Id of the jurisdiction whose rules decide.</param>
    public static string Write(IEnumerable<Assessment> assessments, string registeredIn) =>
        JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString("registered-in", registeredIn);
            json.List("answers", assessments, each => Write(json, each, null));
            json.WriteEndObject();
        });

    private static void Write(Utf8JsonWriter json, Assessment assessment, IReadOnlyCollection<Remedy>? remedies)
    {
        json.WriteStartObject();
        json.WriteString("job", assessment.Job);
        json.WriteString("headline", Headlines.Word(assessment.Headline));
        json.List("blockers", assessment.Blockers, blocker => BlockerJson.Write(json, blocker));
        json.WriteString(
            "verdict",
            assessment.Verdict is { } verdict ? Wording.Of(verdict)
                : assessment.JudgesNothing ? "nothing-to-judge"
                : "undecided"
        );
        if (assessment.JudgesNothing)
            json.Texts("between", []);
        else
            json.Between(assessment.Between);
        json.Texts("loads-not-judged", assessment.LoadsNotJudged);
        json.List("not-judged", assessment.NotJudged, each => Write(json, each));
        json.WriteString("jurisdiction", assessment.Jurisdiction);
        json.WriteString("registered-in", assessment.RegisteredIn);
        json.WriteString("on", Day(assessment.On));
        json.WriteString("known-to", assessment.KnownTo is { } day ? Day(day) : null);
        json.WriteString("book", assessment.Book);
        json.WriteString("edition", assessment.Edition);
        json.List("measures", assessment.Measures, known => Write(json, known));
        json.List("findings", assessment.Findings, finding => FindingJson.Write(json, finding));
        json.List("of-use", assessment.OfUse, finding => FindingJson.Write(json, finding));
        json.List("roads", assessment.Roads, road => Write(json, road));
        json.List("undecided", assessment.Undecided, effect => Write(json, effect));
        json.List("not-established", assessment.Gaps, gap => Write(json, gap));
        json.List(
            "warnings",
            assessment.Warnings,
            warning =>
            {
                json.WriteStartObject();
                json.WriteString("code", warning.Code);
                json.WriteString("at", warning.Mark.ToString());
                json.WriteString("what", warning.Text);
                json.WriteString("tip", warning.Tip);
                json.WriteEndObject();
            }
        );
        Part(json, "category", assessment.Category, Category);
        Part(json, "masses", assessment.Masses, MassJson.Write);
        Part(json, "heights", assessment.Heights, HeightJson.Write);
        Part(json, "tyres", assessment.Tyres, TyreJson.Write);
        json.WritePropertyName("certification");
        if (assessment.Certification is { } certification)
            Write(json, certification);
        else
            json.WriteNullValue();
        if (!assessment.Held.IsEmpty)
            json.List("held", assessment.Held, paper => HeldText.Write(json, paper));
        json.WritePropertyName("weakest-evidence");
        if (assessment.WeakestEvidence is { } weakest)
            Write(json, weakest);
        else
            json.WriteNullValue();
        if (remedies is not null)
            json.List("remedies", remedies, remedy => RemedyJson.Write(json, remedy));
        json.Texts("cautions", assessment.Cautions);
        json.WriteEndObject();
    }

    private static void Part<T>(Utf8JsonWriter json, string name, T? part, Action<Utf8JsonWriter, T> write)
        where T : class
    {
        json.WritePropertyName(name);
        if (part is null)
            json.WriteNullValue();
        else
            write(json, part);
    }

    private static void Write(Utf8JsonWriter json, KnownMeasure known)
    {
        json.WriteStartObject();
        json.WriteString("measure", known.Measure.Name);
        json.Range(known.Value, known.Measure.Unit);
        json.WriteString("unit", known.Measure.Unit.Symbol);
        json.WriteString("derivation", known.Derivation);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, RoadElsewhere road)
    {
        json.WriteStartObject();
        json.WriteString("jurisdiction", road.Jurisdiction);
        json.WriteBoolean("looked-for", road.Looked);
        json.Texts("rules", road.Rules.Select(rule => rule.Id));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, NotJudged each)
    {
        json.WriteStartObject();
        json.WriteString("fact", each.Fact);
        json.WriteString("what", each.What);
        json.WriteString("ask", each.Ask);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Effect effect)
    {
        json.WriteStartObject();
        json.WriteString("fact", effect.Opening.Name);
        json.WriteString("kind", effect.Opening.Kind.ToString().ToLowerInvariant());
        json.WriteStartObject("gives");
        foreach (var (label, outcome) in effect.Merged())
            json.WriteString(label, Wording.Of(outcome));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Gap gap)
    {
        json.WriteStartObject();
        json.WriteString("rule", gap.Rule);
        json.WriteString("what", gap.What);
        json.WriteString("ask", gap.Ask);
        json.WriteString("open", gap.Open);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Certification certification)
    {
        var version = certification.Version;
        json.WriteStartObject();
        json.WriteString("scheme", certification.Scheme);
        json.WriteString("certifier", version.Certifier);
        json.WriteString("appointed-by", version.AppointedBy);
        json.WriteString("decides", version.Decides);
        json.Texts("issued", certification.Papers);
        json.Texts("before-work", certification.Steps.Where(step => step.BeforeWork).Select(step => step.Text));
        json.Texts("steps", certification.Steps.Select(step => step.Text));
        json.WriteString(
            "may-certify",
            certification.MayCertify switch
            {
                null => null,
                Truth.Yes => "yes",
                Truth.No => "no",
                _ => "not-established",
            }
        );
        json.WriteString("why", certification.Why);
        json.WriteString("reregistering", version.Reregistering);
        json.Texts("not-established", version.NotEstablished);
        json.List("sources", certification.Sources, source => json.Source(source));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WeakestEvidence weakest)
    {
        json.WriteStartObject();
        json.WriteString("rule", weakest.Rule.Id);
        json.WriteString("part", weakest.Part.ToString());
        json.Standing(weakest.Standing);
        json.WriteEndObject();
    }

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static string Number(Fraction value, Unit unit) => Numbers.Show(value / unit.ToBase, 6);
}
