using System.CommandLine;
using RuleBook.Authoring.Cases;
using RuleBook.Cli.Answers;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook cases [DIR]</c>: does the book give the answers that the sources give?</summary>
internal static class CasesCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string?>("DIR") { Description = "The folder of the case files (default: tests/cases of the book)", Arity = ArgumentArity.ZeroOrOne };
        var (book, format, output) = (Choices.Book(), Choices.Format("text", "json", "junit"), Choices.Output());
        var command = new Command("cases", "Run the case files: does the book give the answers that the sources give?") { folder, book, format, output };
        command.SetAction(parsed =>
        {
            var place = Inputs.BookFolder(parsed.GetValue(book), surroundings);
            var opened = Inputs.Book(place, surroundings);
            var cases = CaseFolder.Load(parsed.GetValue(folder) ?? CaseFolder.Within(place), opened);
            CaseResult[] results = [.. cases.Select(one => CaseRun.Run(opened, one))];
            Answer.Give(surroundings, parsed.GetValue(output), parsed.GetValue(format) switch
            {
                "json" => _ => CaseReport.Json(results),
                "junit" => _ => CaseReport.Junit(results),
                _ => console => CasesText.Write(console, results),
            });
            return results.All(result => result.Passed) ? 0 : 1;
        });
        return command;
    }
}
