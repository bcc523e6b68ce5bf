using System.CommandLine;
using System.Text;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Reports;
using RuleBook.Cli.Answers;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook inspect [DIR]</c>: is the book sound?</summary>
internal static class InspectCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description = "The book's folder (default: the one with jurisdictions/ here or above)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var book = new Option<string?>("--book") { Description = "The same as DIR, as the other commands have it" };
        var on = new Option<string?>("--on") { Description = "The day for 'due for a re-check' and 'in the future' (default: today)" };
        var (format, output) = (Choices.Format("text", "json", "sarif"), Choices.Output());
        var command = new Command("inspect", "Is the book sound? Every problem with its file, line and column")
        {
            folder,
            book,
            on,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var day = Choices.Day("--on", parsed.GetValue(on)) ?? surroundings.Today;
            var report = Inspection.Run(
                Inputs.BookFolder(Paths.Given("DIR", parsed.GetValue(folder)) ?? parsed.GetValue(book), surroundings),
                day
            );
            Answer.Give(surroundings, parsed.GetValue(output), _ => Text(report, parsed.GetValue(format)!));
            return report.IsSound ? ExitCode.Permitted : ExitCode.BadInput;
        });
        return command;
    }

    private static string Text(InspectionReport report, string format)
    {
        if (format == "text")
        {
            using var text = new StringWriter();
            InspectionText.Write(report, text);
            return text.ToString();
        }

        using var bytes = new MemoryStream();
        if (format == "json")
            InspectionJson.Write(report, bytes);
        else
            InspectionSarif.Write(report, bytes);
        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}
