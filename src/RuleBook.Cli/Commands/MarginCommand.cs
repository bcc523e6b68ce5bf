using System.CommandLine;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Telling;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook margin JOB</c>: what is left within each pathway, and the tyre sizes that fit.</summary>
internal static class MarginCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var (job, book, place, on) = (Choices.Job(), Choices.Book(), Choices.In(surroundings), Choices.On());
        var (set, format, output) = (Choices.Set(), Choices.Format("text", "json"), Choices.Output());
        var command = new Command(
            "margin",
            "What is left within each pathway: lift, tyre growth, payload, trailer; and the tyre sizes that fit"
        )
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
            var answer = MarginFinder.Find(opened, read, AssessCommand.Place(parsed.GetValue(place), opened));
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) == "json"
                    ? _ => MarginJson.Write(answer)
                    : console => Page.Write(console, page => MarginText.Write(page, answer))
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
