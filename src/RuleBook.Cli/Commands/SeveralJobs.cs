using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>Several jobs at once: a line a job, then how many came out how. The exit code is the worst of them.</summary>
internal static class SeveralJobs
{
    /// <summary>Exit codes from the worst to the best.</summary>
    private static readonly int[] WorstFirst =
    [
        ExitCode.BadInput,
        ExitCode.Prohibited,
        ExitCode.Blocked,
        ExitCode.Undecided,
        ExitCode.NothingToJudge,
        ExitCode.Permitted,
    ];

    /// <summary>The files meant: a folder stands for the YAML and JSON files in it, in the order of their names.</summary>
    public static string[] Files(IEnumerable<string> given) =>
        [
            .. given.SelectMany(path =>
                Directory.Exists(path)
                    ? Directory
                        .EnumerateFiles(path)
                        .Where(file => Path.GetExtension(file) is ".yaml" or ".yml" or ".json")
                        .Order(StringComparer.Ordinal)
                    : Enumerable.Repeat(path, 1)
            ),
        ];

    /// <summary>Answers each; one that cannot be read is told with its place and keeps nobody from the others.</summary>
    /// <exception cref="InputException">There is no job among them.</exception>
    public static int Assess(
        IReadOnlyList<string> files,
        Func<string, Mapping> read,
        Book book,
        string? place,
        string? output,
        Surroundings surroundings
    )
    {
        if (files.Count == 0)
            throw new InputException(
                Problem.Error(
                    "no-file",
                    new Mark("JOB", 1, 1),
                    "the folder holds no job",
                    "name one with files that end in .yaml, .yml or .json"
                )
            );
        (string File, string Says, int Code)[] answers = [.. files.Select(file => Answered(file, read, book, place))];
        var code = WorstFirst.FirstOrDefault(worst => answers.Any(answer => answer.Code == worst));
        Answer.Give(surroundings, output, console => Page.Write(console, page => Write(page, answers)));
        return code;
    }

    private static (string File, string Says, int Code) Answered(string file, Func<string, Mapping> read, Book book, string? place)
    {
        var name = Path.GetFileName(file);
        try
        {
            var assessment = Assessor.Assess(book, JobReader.Read(read(file), book), place);
            return (name, ShortAnswer.Of(assessment), ExitCode.Of(assessment.Headline));
        }
        catch (InputException refused)
        {
            var first = refused.Problems[0];
            return (
                name,
                $"not read: {first.Mark}: {first.Text}{(refused.Problems.Count > 1 ? $"; and {refused.Problems.Count - 1} more" : "")}",
                ExitCode.BadInput
            );
        }
    }

    private static void Write(AnswerPage page, (string File, string Says, int Code)[] answers)
    {
        var width = Math.Min(30, answers.Max(answer => answer.File.Length)) + 2;
        foreach (var (file, says, _) in answers)
            page.Row(file, says, width);
        var counts = WorstFirst
            .Select(code => (code, count: answers.Count(answer => answer.Code == code)))
            .Where(each => each.count > 0)
            .Select(each => $"{each.count} {Word(each.code)}");
        page.Line($"{answers.Length} jobs: {string.Join(", ", counts)}.");
        page.Line("This is not legal advice: the authority and the certifier decide. Each in full: assess FILE.");
    }

    private static string Word(int code) =>
        code switch
        {
            ExitCode.BadInput => "not read",
            ExitCode.Prohibited => "not allowed",
            ExitCode.Blocked => "not as planned",
            ExitCode.Undecided => "undecided",
            ExitCode.NothingToJudge => "with nothing to judge",
            _ => "allowed",
        };
}
