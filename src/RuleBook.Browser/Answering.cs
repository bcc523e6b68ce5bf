using System.Globalization;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Browser;

/// <summary>
/// Answers a job as the command does: <c>{ "headline", "json": the command's JSON as text, "blocks": the command's sentences }</c>,
/// or throws; <see cref="PageJson.Whole"/> tells the page.
/// </summary>
internal static class Answering
{
    /// <summary>A job file as <c>{ "job": its keys, each scalar as its text }</c>, read as the command reads it, or its problems.</summary>
    public static string ReadFile(string text)
    {
        var job = Read(text);
        return PageJson.Write(json =>
        {
            json.WritePropertyName("job");
            NodeJson.Write(json, job);
        });
    }

    /// <summary>By the rules of the state of registration, or of <paramref name="place"/> unless it is empty.</summary>
    public static string Assess(Book book, string job, string place)
    {
        var assessment = Assessor.Assess(book, JobReader.Read(JsonNodes.Read(job), book), place.Length == 0 ? null : place);
        var page = new PageBlocks();
        new AssessmentText(page).Write(assessment);
        return PageJson.Of(Headlines.Word(assessment.Headline), AssessmentJson.Write(assessment), page);
    }

    /// <summary>By the rules of every state of the same nation.</summary>
    public static string Across(Book book, string job)
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        var nation = book.Jurisdiction(read.RegisteredIn)?.Within;
        Assessment[] assessments =
            [.. book.Jurisdictions.Where(place => place.Registers && place.Within == nation).Select(place => Assessor.Assess(book, read, place.Id))];
        var page = new PageBlocks();
        AcrossText.Write(page, assessments, read.RegisteredIn);
        return PageJson.Of("", AssessmentJson.Write(assessments), page);
    }

    /// <summary>What is left within each pathway, and the tyre sizes that fit.</summary>
    public static string Margin(Book book, string job)
    {
        var answer = MarginFinder.Find(book, JobReader.Read(JsonNodes.Read(job), book));
        var page = new PageBlocks();
        MarginText.Write(page, answer);
        return PageJson.Of("", MarginJson.Write(answer), page);
    }

    private static Node Read(string text)
    {
        try
        {
            return YamlText.Read(text, "");
        }
        catch (InputException refused)
        {
            throw new InputException([.. refused.Problems.Select(problem => problem with { Mark = new Mark("", 0, 0), Text = $"{Place(problem.Mark)}: {problem.Text}" })]);
        }
    }

    private static string Place(Mark mark) => string.Create(CultureInfo.InvariantCulture, $"line {mark.Line}, column {mark.Column}");
}
