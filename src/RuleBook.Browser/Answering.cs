using System.Globalization;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Telling.Sheets;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Browser;

/// <summary>
/// Answers a job as the command does, with its sentences as <c>"blocks"</c>, or throws; <see cref="PageJson.Whole"/> tells the page.
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

    /// <summary>
    /// By the rules of the state of registration: the first screen, without what would mend the job, for which many jobs are tried.
    /// </summary>
    public static string Assess(Book book, string job, string today)
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        return PageJson.Write(json => CardJson.Write(json, book, read, Assessor.Assess(book, read), Day(today)));
    }

    /// <summary>The same with what would mend the job, the command's JSON as text, and the sheet to print.</summary>
    public static string Record(Book book, string job, string today)
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        var assessment = Assessor.Assess(book, read);
        var remedies = Remedies.Find(book, read, null, assessment);
        return PageJson.Write(json =>
        {
            CardJson.Write(json, book, read, assessment, Day(today), remedies);
            json.WriteString("json", AssessmentJson.Write(assessment, remedies));
            json.WriteString("sheet", RecordSheet.Of(book, read, assessment, remedies, "the check page", Day(today) ?? assessment.On));
        });
    }

    /// <summary>Everything behind the first screen.</summary>
    public static string Reasons(Book book, string job)
    {
        var page = new PageBlocks();
        new AssessmentText(page).Write(Assessor.Assess(book, JobReader.Read(JsonNodes.Read(job), book)), headed: false);
        return PageJson.Of(page);
    }

    /// <summary>The first screen by the rules of each of some places, their ids parted by spaces: <c>{ "answers": [...] }</c>.</summary>
    public static string Beside(Book book, string job, string places, string today)
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        return PageJson.Write(json =>
        {
            json.WriteStartArray("answers");
            foreach (var place in places.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                json.WriteStartObject();
                CardJson.Write(json, book, read, Assessor.Assess(book, read, place), Day(today));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
    }

    /// <summary>By the rules of every state of the same nation.</summary>
    public static string Across(Book book, string job)
    {
        var read = JobReader.Read(JsonNodes.Read(job), book);
        var nation = book.Jurisdiction(read.RegisteredIn)?.Within;
        Assessment[] assessments =
        [
            .. book
                .Jurisdictions.Where(place => place.Registers && place.Within == nation)
                .Select(place => Assessor.Assess(book, read, place.Id)),
        ];
        var page = new PageBlocks();
        AcrossText.Write(page, assessments, read.RegisteredIn);
        return PageJson.Of(page);
    }

    /// <summary>What is left within each pathway, and the tyre sizes that fit.</summary>
    public static string Margin(Book book, string job)
    {
        var page = new PageBlocks();
        MarginText.Write(page, MarginFinder.Find(book, JobReader.Read(JsonNodes.Read(job), book)));
        return PageJson.Of(page);
    }

    private static DateOnly? Day(string text) => CalendarDay.TryParse(text, out var day) ? day : null;

    private static Node Read(string text)
    {
        try
        {
            return YamlText.Read(text, "");
        }
        catch (InputException refused)
        {
            throw new InputException([
                .. refused.Problems.Select(problem =>
                    problem with
                    {
                        Mark = new Mark("", 0, 0),
                        Text = $"{Place(problem.Mark)}: {problem.Text}",
                    }
                ),
            ]);
        }
    }

    private static string Place(Mark mark) => string.Create(CultureInfo.InvariantCulture, $"line {mark.Line}, column {mark.Column}");
}
