using System.CommandLine;
using RuleBook.Authoring.Resolved;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook resolved</c>: are the resolved texts fresh?</summary>
internal static class ResolvedCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var book = Choices.Book();
        var write = new Option<bool>("--write") { Description = "Write the texts that are missing or differ" };
        var command = new Command(
            "resolved",
            "Are the texts in tests/resolved, every rule as in force at every boundary day, those of the book?"
        )
        {
            book,
            write,
        };
        command.SetAction(parsed =>
        {
            var place = Inputs.BookFolder(parsed.GetValue(book), surroundings);
            var (opened, folder) = (Inputs.Book(place, surroundings), ResolvedFolder.Within(place));
            var stale = parsed.GetValue(write)
                ? ResolvedFolder.Refresh(folder, opened, surroundings.Stop)
                : ResolvedFolder.Stale(folder, opened);
            if (stale.Count == 0)
                surroundings.Out.WriteLine("fresh: tests/resolved says what the book says");
            foreach (var name in stale)
                surroundings.Out.WriteLine($"{(parsed.GetValue(write) ? "written" : "not fresh")}: tests/resolved/{name}");
            if (stale.Count > 0 && !parsed.GetValue(write))
                surroundings.Error.WriteLine("run 'rulebook resolved --write' and look at what changed");
            return stale.Count == 0 || parsed.GetValue(write) ? 0 : 1;
        });
        return command;
    }
}
