using System.CommandLine;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Telling;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook across JOB</c>: the same job in every jurisdiction that registers vehicles.</summary>
internal static class AcrossCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var (job, book, on, set) = (Choices.Job(), Choices.Book(), Choices.On(), Choices.Set());
        var (format, output) = (Choices.Format("text", "json"), Choices.Output());
        var command = new Command("across", "The same job in every jurisdiction, side by side") { job, book, on, set, format, output };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var read = Inputs.Job(parsed.GetValue(job)!, opened, parsed.GetValue(on), parsed.GetValue(set) ?? [], surroundings);
            var nation = opened.Jurisdiction(read.RegisteredIn)?.Within;
            Assessment[] assessments =
            [
                .. opened
                    .Jurisdictions.Where(place => place.Registers && place.Within == nation)
                    .Select(place => Assessor.Assess(opened, read, place.Id)),
            ];
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) == "json"
                    ? _ => AssessmentJson.Write(assessments, opened.Jurisdiction(read.RegisteredIn)!.Id)
                    : console => Page.Write(console, page => AcrossText.Write(page, assessments, read.RegisteredIn))
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
