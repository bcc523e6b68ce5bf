using System.CommandLine;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Telling;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook remedy JOB</c>: the smallest changes after which it is allowed, or nothing stands in the way.</summary>
internal static class RemedyCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var (job, book, place, on) = (Choices.Job(), Choices.Book(), Choices.In(surroundings), Choices.On());
        var (set, format, output) = (Choices.Set(), Choices.Format("text", "json"), Choices.Output());
        var command = new Command("remedy", "The smallest changes after which the job is allowed more easily, or nothing stands in its way")
        {
            job,
            book,
            place,
            on,
            set,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var read = Inputs.Job(parsed.GetValue(job)!, opened, parsed.GetValue(on), parsed.GetValue(set) ?? [], surroundings);
            var elsewhere = AssessCommand.Place(parsed.GetValue(place), opened);
            var now = Assessor.Assess(opened, read, elsewhere);
            var remedies = Remedies.Find(opened, read, elsewhere, now);
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) == "json"
                    ? _ => RemedyJson.Write(now, remedies)
                    : console => Page.Write(console, page => RemedyText.Write(page, now, remedies))
            );
            return ExitCode.Of(now.Headline);
        });
        return command;
    }
}
