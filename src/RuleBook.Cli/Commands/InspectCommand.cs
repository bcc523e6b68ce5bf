using System.CommandLine;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook inspect</c>: is the book sound?</summary>
internal static class InspectCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var command = new Command("inspect", "Is the book sound?");
        command.SetAction(_ => surroundings.Error.WriteLine("not wired yet"));
        return command;
    }
}
