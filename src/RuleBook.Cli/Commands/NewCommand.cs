using System.CommandLine;
using RuleBook.Authoring.Skeletons;
using RuleBook.Law;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook new</c>: commented files for a jurisdiction or a rule that the book has not got yet.</summary>
internal static class NewCommand
{
    public static Command Build(Surroundings surroundings) =>
        new("new", "Commented files to start from: a jurisdiction, a rule") { Jurisdiction(surroundings), Rule(surroundings) };

    private static Command Jurisdiction(Surroundings surroundings)
    {
        var id = new Argument<string>("ID") { Description = "Its id: a nation as nz, a part of one as au-qld" };
        var name = new Option<string>("--name") { Description = "Its name for a reader", Required = true };
        var authority = new Option<string>("--ask") { Description = "The authority to ask", Required = true };
        var within = new Option<string?>("--within") { Description = "The nation that it is part of" };
        var book = Choices.Book();
        var command = new Command("jurisdiction", "A jurisdiction: what it is, whom to ask, what the book has of it, its sources")
        {
            id,
            name,
            authority,
            within,
            book,
        };
        command.SetAction(parsed =>
            Written(
                surroundings,
                parsed.GetValue(book),
                (folder, opened) =>
                    Skeleton.Jurisdiction(
                        folder,
                        opened,
                        parsed.GetValue(id)!,
                        parsed.GetValue(name)!,
                        parsed.GetValue(authority)!,
                        parsed.GetValue(within),
                        surroundings.Today
                    )
            )
        );
        return command;
    }

    private static Command Rule(Surroundings surroundings)
    {
        var id = new Argument<string>("ID") { Description = "PLACE/TOPIC/NAME, such as au-qld/ride-height/raise-four-wheel-drive" };
        var title = new Option<string>("--title") { Description = "Its title for a reader", Required = true };
        var source = new Option<string>("--source")
        {
            Description = "The source that tells of it, as listed in the jurisdiction's sources.yaml",
            Required = true,
        };
        var book = Choices.Book();
        var command = new Command("rule", "A rule at the end of its topic's file, not established yet, and a case where the topic has none")
        {
            id,
            title,
            source,
            book,
        };
        command.SetAction(parsed =>
            Written(
                surroundings,
                parsed.GetValue(book),
                (folder, opened) =>
                    Skeleton.Rule(
                        folder,
                        opened,
                        parsed.GetValue(id)!,
                        parsed.GetValue(title)!,
                        parsed.GetValue(source)!,
                        surroundings.Today
                    )
            )
        );
        return command;
    }

    private static int Written(Surroundings surroundings, string? given, Func<string, Book, string[]> write)
    {
        var folder = Inputs.BookFolder(given, surroundings);
        foreach (var file in write(folder, Skeleton.Open(folder)))
            surroundings.Out.WriteLine(file);
        return ExitCode.Permitted;
    }
}
