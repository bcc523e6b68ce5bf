using System.CommandLine;
using RuleBook.Cli.Answers;
using RuleBook.InForce;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook limits ID</c>: the limits in force, with sources.</summary>
internal static class LimitsCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "The jurisdiction, such as au-qld",
            Arity = ArgumentArity.ZeroOrOne,
            HelpName = "ID",
        };
        id.CompletionSources.Add(CompletionsCommand.Places(surroundings));
        var coverage = new Option<bool>("--coverage")
        {
            Description = "What the book holds of each jurisdiction, or of the topics of the one named, and how it is known",
        };
        var write = new Option<bool>("--write") { Description = "With --coverage: write its lines into the README beside the book" };
        var topic = new Option<string?>("--topic") { Description = "Only this topic, such as ride-height" };
        var (book, on, format, output) = (Choices.Book(), Choices.On(), Choices.Format("text", "json"), Choices.Output());
        var command = new Command("limits", "The limits in force, with sources") { id, book, on, topic, coverage, write, format, output };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            if (parsed.GetValue(write))
            {
                if (!parsed.GetValue(coverage) || parsed.GetValue(id) is not null)
                    throw new InputException(
                        Problem.Error(
                            "one-content",
                            new Mark("--write", 1, 1),
                            "only the coverage of all jurisdictions is written into the README",
                            "say 'limits --coverage --write'"
                        )
                    );
                var readme = Path.Combine(Inputs.BookFolder(parsed.GetValue(book), surroundings), "README.md");
                surroundings.Out.WriteLine(
                    CoverageReadme.Write(readme, opened, surroundings.Stop)
                        ? "written: README.md"
                        : "fresh: README.md says what the book holds"
                );
                return ExitCode.Permitted;
            }

            if (parsed.GetValue(coverage))
            {
                if (parsed.GetValue(format) == "json")
                    throw new InputException(
                        Problem.Error(
                            "one-content",
                            new Mark("--format", 1, 1),
                            "the coverage is told as text",
                            "ask for the limits of a jurisdiction, or leave --format out"
                        )
                    );
                Answer.Give(
                    surroundings,
                    parsed.GetValue(output),
                    _ =>
                        parsed.GetValue(id) is { } one
                            ? CoverageText.Write(opened, opened.Jurisdiction(AssessCommand.Place(one, opened, "ID")!)!)
                            : CoverageText.Write(opened)
                );
                return ExitCode.Permitted;
            }

            if (parsed.GetValue(id) is null)
                throw new InputException(
                    Problem.Error(
                        "missing-key",
                        new Mark("ID", 1, 1),
                        "no jurisdiction is named",
                        "name one, such as au-qld, or ask for --coverage"
                    )
                );
            var place = opened.Jurisdiction(AssessCommand.Place(parsed.GetValue(id), opened, "ID")!)!;
            var day = Choices.Day("--on", parsed.GetValue(on)) ?? surroundings.Today;
            var wanted = parsed.GetValue(topic);
            if (wanted is not null && !opened.Vocabulary.Topics.ContainsKey(wanted))
                throw new InputException(
                    Problem.Error(
                        "unknown-topic",
                        new Mark("--topic", 1, 1),
                        $"'{wanted}' is not a topic",
                        Spelling.Tip(wanted, [.. opened.Vocabulary.Topics.Keys])
                    )
                );
            var versions = place
                .Rules.Where(rule => wanted is null || rule.Topic == wanted)
                .Select(rule => (rule, versions: Resolver.Resolve(opened, rule, day)));
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                console =>
                    parsed.GetValue(format) == "json"
                        ? LimitsJson.Write(opened, place, day, versions.SelectMany(rule => rule.versions))
                        : LimitsText.Write(console, opened, place, day, versions)
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
