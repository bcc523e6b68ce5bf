using System.CommandLine;
using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>The command <c>rulebook</c>.</summary>
internal static class CommandLine
{
    /// <summary>Carries out a command and returns its exit code; never throws.</summary>
    public static async Task<int> RunAsync(string[] args, Surroundings surroundings)
    {
        try
        {
            var root = Root(surroundings);
            // An argument that begins with @ is a file's name, not a file of further arguments.
            var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            var settings = new InvocationConfiguration
            {
                Output = surroundings.Out,
                Error = surroundings.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            };
            if (args.Length == 0)
            {
                await root.Parse(["--help"]).InvokeAsync(settings, surroundings.Stop).ConfigureAwait(false);
                return ExitCode.BadInput;
            }

            if (UsageError.Of(parsed, args) is { } error)
            {
                foreach (var line in error.Lines)
                    Say(surroundings, line);
                return ExitCode.BadInput;
            }

            return await parsed.InvokeAsync(settings, surroundings.Stop).ConfigureAwait(false);
        }
        catch (InputException refused)
        {
            foreach (var problem in refused.Problems.Take(Surroundings.MostProblems))
                Say(surroundings, problem.ToString());
            if (refused.Problems.Count is var count and > Surroundings.MostProblems)
                Say(
                    surroundings,
                    string.Create(CultureInfo.InvariantCulture, $"and {count - Surroundings.MostProblems} more problems, not printed")
                );
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException) when (surroundings.Stop.IsCancellationRequested)
        {
            return ExitCode.Interrupted;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            Say(surroundings, $"error: {Visible.Of(failure.Message)}");
            return ExitCode.BadInput;
        }
        catch (Exception fault)
        {
            var cause = fault is AggregateException { InnerException: { } inner } ? inner : fault;
            Say(
                surroundings,
                $"fault: no answer was made, and the fault is the program's, not the input's: {cause.GetType().Name}: "
                    + $"{Visible.Of(cause.Message)} "
                    + $"({At(cause)}). Please report this line with the command and its files: {Surroundings.ReportTo}"
            );
            return ExitCode.Fault;
        }
    }

    private static RootCommand Root(Surroundings surroundings) =>
        new("Limits on modified vehicles, by jurisdiction and day: is it allowed, measured how, certified by whom, and by which clause?")
        {
            AssessCommand.Build(surroundings),
            JobCommand.Build(surroundings),
            AcrossCommand.Build(surroundings),
            MarginCommand.Build(surroundings),
            RemedyCommand.Build(surroundings),
            LimitsCommand.Build(surroundings),
            TimelineCommand.Build(surroundings),
            GapsCommand.Build(surroundings),
            InspectCommand.Build(surroundings),
            SiteCommand.Build(surroundings),
            CasesCommand.Build(surroundings),
            ResolvedCommand.Build(surroundings),
            ChangesCommand.Build(surroundings),
            NewCommand.Build(surroundings),
            PackCommand.Build(surroundings),
            ExportCommand.Build(surroundings),
            EditionsCommand.Build(surroundings),
            EditionCommand.Build(surroundings),
            ReplayCommand.Build(surroundings),
            FleetCommand.Build(surroundings),
            RecheckCommand.Build(surroundings),
            CompletionsCommand.Build(surroundings),
        };

    /// <summary>The method that failed, for whoever mends it.</summary>
    private static string At(Exception fault) =>
        fault
            .StackTrace?.Split('\n')
            .Select(line => line.Trim())
            .FirstOrDefault(line => line.Contains("RuleBook", StringComparison.Ordinal))
        ?? "place unknown";

    /// <summary>A standard error that is closed or full takes nothing away from the exit code.</summary>
    private static void Say(Surroundings surroundings, string line)
    {
        try
        {
            surroundings.Error.WriteLine(line);
        }
        catch (Exception gone) when (gone is IOException or ObjectDisposedException or UnauthorizedAccessException)
        {
            // There is nobody left to tell.
        }
    }
}
