using System.CommandLine;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>Arguments and options that several commands share.</summary>
internal static class Choices
{
    public static Argument<string> Job() => new("JOB") { Description = "The job: a YAML or JSON file, or - for standard input" };

    public static Argument<string[]> Jobs() =>
        new("JOB")
        {
            Description = "The job: a YAML or JSON file, or - for standard input; several, or a folder of them: a line each",
            Arity = ArgumentArity.OneOrMore,
        };

    public static Option<string?> Book() =>
        new("--book") { HelpName = "FOLDER", Description = "The book's folder (default: the one with jurisdictions/ here or above)" };

    public static Option<string?> In(Surroundings surroundings)
    {
        var option = new Option<string?>("--in")
        {
            HelpName = "ID",
            Description = "Judge by another jurisdiction, such as au-nsw; nothing else of the job changes",
        };
        option.CompletionSources.Add(CompletionsCommand.Places(surroundings));
        return option;
    }

    public static Option<string?> On() =>
        new("--on") { HelpName = "DAY", Description = "Judge as on this day, such as 2026-11-25, whatever days the job gives" };

    public static Option<string[]> Set() =>
        new("--set")
        {
            HelpName = "FACT=VALUE",
            Description = "Change a fact for a what-if: --set vehicle.stability-control=no (repeatable)",
            AllowMultipleArgumentsPerToken = false,
        };

    public static Option<string> Format(params string[] formats)
    {
        var option = new Option<string>("--format")
        {
            Description = $"How to answer: {string.Join(", ", formats)}",
            DefaultValueFactory = _ => formats[0],
        };
        option.AcceptOnlyFromAmong(formats);
        return option;
    }

    public static Option<string?> Output() =>
        new("--output") { HelpName = "FILE", Description = "Write the answer to this file, whole or not at all" };

    /// <summary>A day given as an option.</summary>
    /// <exception cref="InputException">It is not a day.</exception>
    public static DateOnly? Day(string option, string? text)
    {
        if (text is null)
            return null;
        if (CalendarDay.TryParse(text, out var day))
            return day;
        throw new InputException(
            Problem.Error("not-a-date", new Mark(option, 1, 1), $"'{text}' is not a day of the calendar", CalendarDay.Tip(text))
        );
    }
}
