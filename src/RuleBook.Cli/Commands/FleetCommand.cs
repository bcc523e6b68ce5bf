using System.CommandLine;
using System.Text;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Cli.Fleets;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook fleet FILE</c>: many vehicles at once, a row each, answered as <c>assess</c> answers one.</summary>
internal static class FleetCommand
{
    private const string StandardInput = "standard input";

    public static Command Build(Surroundings surroundings)
    {
        var file = new Argument<string?>("FILE") { Description = "CSV whose headers are keys of a job, or NDJSON (a job a line; the name ends in .ndjson or .jsonl); - is CSV from standard input", Arity = ArgumentArity.ZeroOrOne };
        var (book, output) = (Choices.Book(), Choices.Output());
        var template = new Option<bool>("--template") { Description = "Write a header to start from, with an example row" };
        var ndjson = new Option<bool>("--ndjson") { Description = "The input is NDJSON, whatever its name" };
        var rejected = new Option<string?>("--rejected") { Description = "Write the rows that cannot be read to this file: line, column, reason" };
        var explain = new Option<long?>("--explain") { Description = "The full answer to one row, counted from 1 after the header" };
        var against = new Option<string?>("--against") { Description = "Also answer by an earlier book (a folder, packed file or git revision): which rows get another verdict" };
        var command = new Command("fleet", "What is the answer to each of many vehicles?") { file, book, template, ndjson, rejected, explain, against, output };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(template))
            {
                Answer.Give(surroundings, parsed.GetValue(output), _ => FleetTemplate.Text());
                return ExitCode.Permitted;
            }

            var given = Paths.Given("FILE", parsed.GetValue(file))
                ?? throw new InputException(Problem.Error("no-file", new Mark("FILE", 1, 1), "no file is named", "name a CSV or NDJSON file; 'fleet --template' writes one to start from"));
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var name = given == "-" ? StandardInput : given;
            using var reader = new FleetReader(name, Text(given), parsed.GetValue(ndjson) || Path.GetExtension(given) is ".ndjson" or ".jsonl");
            var answers = new FleetAnswers(opened, name, reader.Columns, surroundings.Today);
            var effect = Paths.Given("--against", parsed.GetValue(against)) is { } earlier ? new FleetEffect(earlier) : null;
            var before = effect is null ? null : new FleetAnswers(Revision.Open(parsed.GetValue(against)!, Inputs.BookFolder(parsed.GetValue(book), surroundings)), name, reader.Columns, surroundings.Today);
            return parsed.GetValue(explain) is { } row
                ? Explain(row, name, reader, answers, opened, parsed.GetValue(output), surroundings)
                : Run(new FleetRun(reader, answers, before, effect), reader, effect, Paths.Given("--output", parsed.GetValue(output)), Paths.Given("--rejected", parsed.GetValue(rejected)), surroundings);
        });
        return command;
    }

    private static int Run(FleetRun run, FleetReader reader, FleetEffect? effect, string? output, string? rejected, Surroundings surroundings)
    {
        using var kept = output is null ? null : new WrittenAside(output);
        using var aside = rejected is null ? null : new WrittenAside(rejected);
        if (reader.Columns?.PassedThrough.ToArray() is { Length: > 0 } others)
            surroundings.Error.WriteLine($"passed through, no keys of a job: {string.Join(", ", others.Select(Visible.Of))}");
        Action<string>? progress = Console.IsErrorRedirected ? null : line => surroundings.Error.Write($"\r{line}   ");
        var summary = run.Run(kept?.Text ?? surroundings.Out, aside?.Text, progress, surroundings.Stop);
        surroundings.Stop.ThrowIfCancellationRequested();
        kept?.Keep();
        aside?.Keep();
        if (progress is not null) surroundings.Error.WriteLine();
        foreach (var problem in run.Problems) surroundings.Error.WriteLine(problem.ToString());
        foreach (var line in (effect?.Lines() ?? []).Concat(summary.Lines())) surroundings.Error.WriteLine(line);
        return summary.Rejected == 0 ? ExitCode.Permitted : ExitCode.BadInput;
    }

    private static int Explain(long number, string name, FleetReader reader, FleetAnswers answers, Book book, string? output, Surroundings surroundings)
    {
        var row = reader.Rows().FirstOrDefault(each => each.Number == number)
            ?? throw new InputException(Problem.Error("no-row", new Mark("--explain", 1, 1), $"{name} has no row {number}", "rows count from 1; the header is none"));
        var job = JobReader.Read(answers.Node(row), book);
        var assessment = Assessor.Assess(book, job);
        Answer.Give(surroundings, output, console => Page.Write(console, page => AssessCommand.Write(page, book, job, null, assessment, full: true, surroundings.Today)));
        return ExitCode.Of(assessment.Headline);
    }

    private static StreamReader Text(string given) => new(
        given == "-" ? Console.OpenStandardInput() : new FileStream(given, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, FileOptions.SequentialScan),
        new UTF8Encoding(false, throwOnInvalidBytes: true));
}
