using System.CommandLine;
using RuleBook.Authoring.Editions;
using RuleBook.Authoring.Files;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook edition NAME --since OLD</c>: gives the book as it is a name, its news drafted from what changes.</summary>
internal static class EditionCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var name = new Argument<string>("NAME") { Description = "Year, month and number within the month, such as 2026.11.1" };
        var since = new Option<string?>("--since")
        {
            Description = "The book of the edition before: a folder, a packed file or a git revision; news are drafted from what changes",
        };
        var book = Choices.Book();
        var command = new Command(
            "edition",
            "Give the book as it is a name: adds it to jurisdictions/editions.yaml, with news drafted from what changes"
        )
        {
            name,
            since,
            book,
        };
        command.SetAction(parsed =>
        {
            var folder = Inputs.BookFolder(parsed.GetValue(book), surroundings);
            var current = BookReading.Open(folder);
            var given = parsed.GetValue(name)!;
            if (current.Edition is { } known)
                throw new InputException(
                    Problem.Error(
                        "edition-exists",
                        new Mark("NAME", 1, 1),
                        $"the book as it is has a name: edition {known.Name}",
                        "change the book first, or cite that edition"
                    )
                );
            if (current.Editions.Any(edition => edition.Name == given))
                throw new InputException(
                    Problem.Error("edition-exists", new Mark("NAME", 1, 1), $"there is an edition {given}", "take the next number")
                );
            if (
                current.Editions is [.., var last]
                && last.Name.Split('.').Length == given.Split('.').Length
                && !(last with { Name = given, Day = surroundings.Today }).Follows(last)
            )
                throw new InputException(
                    Problem.Error(
                        "editions-out-of-order",
                        new Mark("NAME", 1, 1),
                        $"edition {given} of today does not come after {last.Name} of {last.Day:yyyy-MM-dd}",
                        "take a later month, or the next number"
                    )
                );
            var news = Paths.Given("--since", parsed.GetValue(since)) is { } old
                ? EditionDraft.News(
                    ChangesCommand.Between(Revision.Open(old, folder), current, surroundings.Console),
                    current.Editions.LastOrDefault()?.Day
                )
                : [];
            var file = Path.Combine(folder, EditionDraft.File);
            var text = EditionDraft.Added(
                File.Exists(file) ? YamlText.FileText(file, EditionDraft.File) : null,
                new Edition(given, surroundings.Today, current.Digest, new Mark(EditionDraft.File, 1, 1)) { News = news }
            );
            WholeFile.Write(file, text, surroundings.Stop);
            surroundings.Out.WriteLine(
                $"edition {given}: {current.Digest}, {news.Length} news drafted in {Visible.Of(file)}: edit them by hand"
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
