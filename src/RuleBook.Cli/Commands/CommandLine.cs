using System.CommandLine;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>The command <c>rulebook</c>.</summary>
internal static class CommandLine
{
    public static async Task<int> RunAsync(string[] args, Surroundings surroundings)
    {
        var root = new RootCommand("Limits on modified vehicles, by jurisdiction and day: is it allowed, measured how, certified by whom, and by which clause?")
        {
            AssessCommand.Build(surroundings),
            AcrossCommand.Build(surroundings),
            MarginCommand.Build(surroundings),
            LimitsCommand.Build(surroundings),
            TimelineCommand.Build(surroundings),
            InspectCommand.Build(surroundings),
            SiteCommand.Build(surroundings),
            CasesCommand.Build(surroundings),
            ResolvedCommand.Build(surroundings),
            ChangesCommand.Build(surroundings),
            PackCommand.Build(surroundings),
        };
        var parsed = root.Parse(args);
        var settings = new InvocationConfiguration { Output = surroundings.Out, Error = surroundings.Error, EnableDefaultExceptionHandler = false };
        try
        {
            var code = await parsed.InvokeAsync(settings).ConfigureAwait(false);
            return parsed.Errors.Count > 0 ? ExitCode.BadInput : code;
        }
        catch (InputException refused)
        {
            foreach (var problem in refused.Problems) await surroundings.Error.WriteLineAsync(problem.ToString()).ConfigureAwait(false);
            return ExitCode.BadInput;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await surroundings.Error.WriteLineAsync($"error: {failure.Message}").ConfigureAwait(false);
            return ExitCode.BadInput;
        }
    }
}
