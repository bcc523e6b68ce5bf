using System.CommandLine;
using RuleBook.Authoring.Records;
using RuleBook.Cli.Answers;
using RuleBook.Telling;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook replay RECORD</c>: is a kept answer the one that the book gives, and what differs?</summary>
internal static class ReplayCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var record = new Argument<string>("RECORD") { Description = "A record that 'assess --format record' wrote" };
        var (book, output) = (Choices.Book(), Choices.Output());
        var command = new Command("replay", "Is a kept answer the one that the book gives for the same job and day? What differs?")
        {
            record,
            book,
            output,
        };
        command.SetAction(parsed =>
        {
            var kept = Inputs.Record(parsed.GetValue(record)!);
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var comparison = AnswerComparison.Of(kept.Answer, AssessmentJson.Write(kept.Ask(opened)).TrimEnd('\n'));
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                console => Page.Write(console, page => RecordText.Replayed(page, kept, opened, comparison, Surroundings.Version))
            );
            return comparison.Same || comparison.OnlyWords ? ExitCode.Permitted : ExitCode.Differs;
        });
        return command;
    }
}
