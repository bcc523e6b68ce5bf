using System.Globalization;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Browser;

/// <summary>
/// Answers a job as the command does: <c>{ "verdict", "json": the command's JSON as text, "blocks": the command's sentences }</c>,
/// or <c>{ "problems": [ ... ] }</c>.
/// </summary>
internal static class Answering
{
    /// <summary>A job file as <c>{ "job": its keys, each scalar as its text }</c>, read as the command reads it, or its problems.</summary>
    public static string ReadFile(string text)
    {
        try
        {
            var job = YamlText.Read(text, "");
            return PageJson.Write(json =>
            {
                json.WritePropertyName("job");
                NodeJson.Write(json, job);
            });
        }
        catch (InputException refused)
        {
            return PageJson.Problems(refused.Problems.Select(problem => problem with { Text = $"{Place(problem.Mark)}: {problem.Text}" }));
        }
    }

    /// <summary>By the rules of the state of registration, or of <paramref name="place"/> unless it is empty.</summary>
    public static string Assess(Book book, string job, string place) => PageJson.Whole(() =>
    {
        var assessment = Assessor.Assess(book, JobReader.Read(JsonNodes.Read(job), book), place.Length == 0 ? null : place);
        var page = new PageBlocks();
        new AssessmentText(page).Write(assessment);
        return PageJson.Of(assessment.Verdict is { } verdict ? Wording.Of(verdict) : "undecided", AssessmentJson.Write(assessment), page);
    });

    /// <summary>By the rules of every state of the same nation.</summary>
    public static string Across(Book book, string job) => PageJson.Whole(() =>
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        var nation = book.Jurisdiction(read.RegisteredIn)?.Within;
        Assessment[] assessments =
            [.. book.Jurisdictions.Where(place => place.Registers && place.Within == nation).Select(place => Assessor.Assess(book, read, place.Id))];
        var page = new PageBlocks();
        AcrossText.Write(page, assessments, read.RegisteredIn);
        return PageJson.Of("", AssessmentJson.Write(assessments), page);
    });

    /// <summary>What is left within each pathway, and the tyre sizes that fit.</summary>
    public static string Margin(Book book, string job) => PageJson.Whole(() =>
    {
        var answer = MarginFinder.Find(book, JobReader.Read(JsonNodes.Read(job), book));
        var page = new PageBlocks();
        MarginText.Write(page, answer);
        return PageJson.Of("", MarginJson.Write(answer), page);
    });

    private static string Place(Mark mark) => string.Create(CultureInfo.InvariantCulture, $"line {mark.Line}, column {mark.Column}");
}
