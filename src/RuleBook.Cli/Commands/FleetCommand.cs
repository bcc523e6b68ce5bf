using System.CommandLine;
using System.Globalization;
using System.Text;
using RuleBook.Answers;
using RuleBook.Authoring.Files;
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
        var file = new Argument<string?>("FILE")
        {
            Description =
                "CSV whose headers are keys of a job, or NDJSON (a job a line; the name ends in .ndjson or .jsonl); - is CSV from "
                + "standard input",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var (book, output) = (Choices.Book(), Choices.Output());
        var template = new Option<bool>("--template") { Description = "Write a header to start from, with an example row" };
        var ndjson = new Option<bool>("--ndjson") { Description = "The input is NDJSON, whatever its name" };
        var rejected = new Option<string?>("--rejected")
        {
            Description = "Write the rows that cannot be read to this file: line, column, reason",
        };
        var explain = new Option<long?>("--explain") { Description = "The full answer to one row, counted from 1 after the header" };
        var against = new Option<string?>("--against")
        {
            Description = "Also answer by an earlier book (a folder, packed file or git revision): which rows get another verdict",
        };
        var resume = new Option<bool>("--resume") { Description = "Go on where a run with the same --output that was killed had come to" };
        var command = new Command("fleet", "What is the answer to each of many vehicles?")
        {
            file,
            book,
            template,
            ndjson,
            rejected,
            explain,
            against,
            resume,
            output,
        };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(template))
            {
                Answer.Give(surroundings, parsed.GetValue(output), _ => FleetTemplate.Text());
                return ExitCode.Permitted;
            }

            var given =
                Paths.Given("FILE", parsed.GetValue(file))
                ?? throw new InputException(
                    Problem.Error(
                        "no-file",
                        new Mark("FILE", 1, 1),
                        "no file is named",
                        "name a CSV or NDJSON file; 'fleet --template' writes one to start from"
                    )
                );
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var name = given == "-" ? StandardInput : given;
            var earlier = Paths.Given("--against", parsed.GetValue(against)) is { } old
                ? Revision.Open(old, Inputs.BookFolder(parsed.GetValue(book), surroundings))
                : null;
            var files = (Output: To("--output", parsed.GetValue(output)), Rejected: To("--rejected", parsed.GetValue(rejected)));
            CheckApart(given, files.Output, files.Rejected);
            var run = Run(opened.Digest, earlier?.Digest, surroundings.Today, given, files.Rejected?.Path);
            var state =
                !parsed.GetValue(resume) ? null
                : files is { Output.IsFile: true, Rejected: null or { IsFile: true } } && given != "-" ? FleetState.Read(files.Output, run)
                : throw new InputException(
                    Problem.Error(
                        "not-resumable",
                        new Mark("--resume", 1, 1),
                        "only a run from a file to a file can be gone on with",
                        "name both, as the run that died did"
                    )
                );
            if (parsed.GetValue(resume))
                surroundings.Error.WriteLine(
                    state is null
                        ? "no run that died has noted how far it came: from the first row"
                        : string.Create(CultureInfo.InvariantCulture, $"goes on after row {state.Row}")
                );
            using var reader = new FleetReader(
                name,
                Opened(given),
                parsed.GetValue(ndjson) || Path.GetExtension(given) is ".ndjson" or ".jsonl",
                state?.Row ?? 0
            );
            reader.Columns?.Check(opened);
            var answers = new FleetAnswers(opened, name, reader.Columns, surroundings.Today);
            if (parsed.GetValue(explain) is { } row)
                return Explain(row, name, reader, answers, opened, parsed.GetValue(output), surroundings);
            var effect = earlier is null ? null : new FleetEffect(parsed.GetValue(against)!) { Counts = state?.Effect ?? [] };
            var before = earlier is null ? null : new FleetAnswers(earlier, name, reader.Columns, surroundings.Today);
            return Run(
                run,
                state,
                note => new FleetRun(reader, answers, before, effect)
                {
                    GoesOn = state is not null,
                    Summary = Summary(state),
                    Note = note,
                    Running = surroundings.Running,
                },
                reader,
                effect,
                files,
                surroundings
            );
        });
        return command;
    }

    private static int Run(
        string name,
        FleetState? state,
        Func<Action<long>, FleetRun> begin,
        FleetReader reader,
        FleetEffect? effect,
        (Destination? Output, Destination? Rejected) files,
        Surroundings surroundings
    )
    {
        using var kept = files.Output is null ? null : new WrittenAside(files.Output, state?.Output ?? 0);
        using var aside = files.Rejected is null ? null : new WrittenAside(files.Rejected, state?.Rejected ?? 0);
        if (reader.Columns?.PassedThrough.ToArray() is { Length: > 0 } others)
            surroundings.Error.WriteLine($"passed through, no keys of a job: {string.Join(", ", others.Select(Visible.Of))}");
        FleetRun? run = null;
        run = begin(row =>
        {
            if (files.Output is { IsFile: true })
                new FleetState(name, row, kept!.Length, aside?.Length ?? 0, run!.Summary.Counts, effect?.Counts, [.. run.Problems]).Write(
                    files.Output
                );
        });
        run.Problems.AddRange(state?.Problems ?? []);
        Action<string>? progress = surroundings.IsWatched ? line => surroundings.Error.Write($"\r{line}   ") : null;
        try
        {
            run.Run(
                kept is null ? bytes => surroundings.Out.Write(Encoding.UTF8.GetString(bytes.Span)) : kept.Write,
                aside is null ? null : aside.Write,
                progress,
                surroundings.Stop
            );
            surroundings.Stop.ThrowIfCancellationRequested();
            kept?.Keep();
            aside?.Keep();
        }
        finally
        {
            if (files.Output is { IsFile: true })
                FleetState.Delete(files.Output);
        }

        if (progress is not null)
            surroundings.Error.WriteLine();
        foreach (var problem in run.Problems)
            surroundings.Error.WriteLine(problem);
        foreach (var line in (effect?.Lines() ?? []).Concat(run.Summary.Lines()))
            surroundings.Error.WriteLine(line);
        return run.Summary.Rejected == 0 ? ExitCode.Permitted : ExitCode.BadInput;
    }

    private static Destination? To(string option, string? path) => Paths.Given(option, path) is { } given ? Destination.Of(given) : null;

    /// <summary>What is read is not written over, nor two files onto one another.</summary>
    private static void CheckApart(string given, Destination? output, Destination? rejected)
    {
        var input = System.IO.File.Exists(given) ? Destination.Of(given) : null;
        foreach (var (name, one, others) in new[] { ("--output", output, new[] { input }), ("--rejected", rejected, [input, output]) })
            if (one is { IsFile: true } && others.Any(other => other?.Path == one.Path))
                throw new InputException(
                    Problem.Error(
                        "same-file",
                        new Mark(name, 1, 1),
                        $"'{one.Path}' is what the same run reads or writes",
                        "name another file"
                    )
                );
    }

    private static FleetSummary Summary(FleetState? state) =>
        state is null ? new FleetSummary() : new FleetSummary { Counts = state.Summary };

    /// <summary>What a run is of: only one of the same can go on with it.</summary>
    private static string Run(string book, string? earlier, DateOnly today, string given, string? rejected) =>
        string.Create(CultureInfo.InvariantCulture, $"{book} {earlier} {today:O} {File(given)} {rejected}");

    private static string File(string given) =>
        given == "-"
            ? given
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{Path.GetFullPath(given)} {new FileInfo(given).Length} {System.IO.File.GetLastWriteTimeUtc(given):O}"
            );

    private static int Explain(
        long number,
        string name,
        FleetReader reader,
        FleetAnswers answers,
        Book book,
        string? output,
        Surroundings surroundings
    )
    {
        var row =
            reader.Rows().FirstOrDefault(each => each.Number == number)
            ?? throw new InputException(
                Problem.Error("no-row", new Mark("--explain", 1, 1), $"{name} has no row {number}", "rows count from 1; the header is none")
            );
        var job = JobReader.Read(answers.Node(row), book);
        var assessment = Assessor.Assess(book, job);
        Answer.Give(
            surroundings,
            output,
            console => Page.Write(console, page => AssessCommand.Write(page, book, job, null, assessment, full: true, surroundings.Today))
        );
        return ExitCode.Of(assessment.Headline);
    }

    private static Stream Opened(string given) =>
        given == "-"
            ? Console.OpenStandardInput()
            : new FileStream(given, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan);
}
