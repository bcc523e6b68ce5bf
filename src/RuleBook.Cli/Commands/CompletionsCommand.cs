using System.CommandLine;
using System.CommandLine.Completions;

namespace RuleBook.Cli.Commands;

/// <summary>
/// <c>rulebook completions SHELL</c>: a script that lets a shell ask the command how a line may go on, by the directive <c>[suggest]</c> of
/// its parser, which answers with commands, options, formats and jurisdictions.
/// </summary>
internal static class CompletionsCommand
{
    private const string Bash = """
        _rulebook() {
            local IFS=$'\n'
            COMPREPLY=( $(compgen -W "$(rulebook "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}") )
        }
        complete -o default -F _rulebook rulebook

        """;

    private const string Zsh = """
        #compdef rulebook
        _rulebook() {
            local -a found
            found=("${(@f)$(rulebook "[suggest:${#LBUFFER}]" "${BUFFER}" 2>/dev/null)}")
            compadd -a found
            _files
        }
        compdef _rulebook rulebook

        """;

    private const string Fish = """
        complete -c rulebook -a '(rulebook "[suggest:"(string length -- (commandline -cp))"]" (commandline -cp) 2>/dev/null)'

        """;

    public static Command Build(Surroundings surroundings)
    {
        var shell = new Argument<string>("SHELL") { Description = "The shell: bash, zsh or fish" };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish");
        var command = new Command(
            "completions",
            "A script that completes commands, options and jurisdictions: source <(rulebook completions bash)"
        )
        {
            shell,
        };
        command.SetAction(parsed =>
        {
            surroundings.Out.Write(
                parsed.GetValue(shell) switch
                {
                    "bash" => Bash,
                    "zsh" => Zsh,
                    _ => Fish,
                }
            );
            return ExitCode.Permitted;
        });
        return command;
    }

    /// <summary>The ids of the jurisdictions of the book that the command would use; none where it has none that can be read.</summary>
    public static Func<CompletionContext, IEnumerable<CompletionItem>> Places(Surroundings surroundings) =>
        _ =>
        {
            try
            {
                return Inputs
                    .Book(null, surroundings)
                    .Jurisdictions.Select(place => new CompletionItem(place.Id, detail: place.Name))
                    .ToArray();
            }
            catch (Text.InputException)
            {
                return [];
            }
        };
}
