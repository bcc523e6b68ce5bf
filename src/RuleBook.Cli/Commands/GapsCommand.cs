using System.CommandLine;
using RuleBook.Authoring.Gaps;
using RuleBook.Cli.Answers;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook gaps</c>: which document would settle most of what is undecided.</summary>
internal static class GapsCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "A jurisdiction, for all that is open there (default: the first document of each)",
            Arity = ArgumentArity.ZeroOrOne,
            HelpName = "ID",
        };
        id.CompletionSources.Add(CompletionsCommand.Places(surroundings));
        var (book, on, format, output) = (Choices.Book(), Choices.On(), Choices.Format("text", "json"), Choices.Output());
        var command = new Command("gaps", "The documents that nobody has read, by how many undecided answers each could decide")
        {
            id,
            book,
            on,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var place = AssessCommand.Place(parsed.GetValue(id), opened, "ID");
            var day = Choices.Day("--on", parsed.GetValue(on)) ?? surroundings.Today;
            var found = TypicalJobs.Rank(
                opened,
                day,
                opened.Jurisdictions.Where(each => place is null || each.Id == opened.Jurisdiction(place)!.Id)
            );
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                console =>
                    parsed.GetValue(format) == "json"
                        ? GapsText.Json(opened, day, found)
                        : Page.Write(console, page => GapsText.Write(page, day, found, whole: place is not null))
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
