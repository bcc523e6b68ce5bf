using System.CommandLine;
using RuleBook.Cli.Answers;
using RuleBook.InForce;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook timeline TOPIC</c>: how each jurisdiction's limit came about, adoption by adoption.</summary>
internal static class TimelineCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var topic = new Argument<string>("TOPIC") { Description = "The topic, such as ride-height" };
        var (book, on, format, output) = (Choices.Book(), Choices.On(), Choices.Format("text", "json"), Choices.Output());
        var command = new Command("timeline", "How each jurisdiction's limit came about, one line a change, oldest first")
        {
            topic,
            book,
            on,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var wanted = parsed.GetValue(topic)!;
            if (!opened.Vocabulary.Topics.ContainsKey(wanted))
                throw new InputException(
                    Problem.Error(
                        "unknown-topic",
                        new Mark("TOPIC", 1, 1),
                        $"'{wanted}' is not a topic",
                        Spelling.Tip(wanted, [.. opened.Vocabulary.Topics.Keys])
                    )
                );
            var day = Choices.Day("--on", parsed.GetValue(on)) ?? surroundings.Today;
            var changes = History.Of(opened, wanted);
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) == "json"
                    ? _ => TimelineJson.Write(opened, wanted, day, changes)
                    : console => TimelineText.Write(console, opened, wanted, day, changes)
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
