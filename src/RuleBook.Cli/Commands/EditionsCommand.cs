using System.CommandLine;
using RuleBook.Cli.Answers;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook editions</c>: the states of the book that have a name, what each brings, how to cite this one.</summary>
internal static class EditionsCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var (book, format, output) = (Choices.Book(), Choices.Format("text", "markdown", "json"), Choices.Output());
        var command = new Command("editions", "The editions of the book, what each brings, and how to cite this one")
        {
            book,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) switch
                {
                    "json" => _ => EditionsJson.Write(opened),
                    "markdown" => _ => EditionsText.Markdown(opened),
                    _ => console => Page.Write(console, page => EditionsText.Write(page, opened)),
                }
            );
            return ExitCode.Permitted;
        });
        return command;
    }
}
