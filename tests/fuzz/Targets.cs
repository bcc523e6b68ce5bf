using System.Security.Cryptography;
using System.Text;
using RuleBook.Answers;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Packing;
using RuleBook.Authoring.Reports;
using RuleBook.Authoring.Resolved;
using RuleBook.Browser;
using RuleBook.Cli;
using RuleBook.Cli.Commands;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Units;
using RuleBook.Yaml;
using Spectre.Console;

namespace RuleBook.Fuzz;

/// <summary>Every kind of input, read as the command and the page read it.</summary>
internal static class Targets
{
    private static readonly DateOnly Today = new(2026, 11, 27);

    public static IEnumerable<Target> Of(Corpus corpus)
    {
        yield return new(
            "yaml",
            2,
            [.. corpus.Jobs, .. corpus.Bad],
            (mutation, text) => mutation.Text(text),
            text => YamlText.Read(Encoding.UTF8.GetBytes(text), "x").ToString()
        );
        yield return new("words", 2, [.. Words(corpus)], (mutation, text) => mutation.Text(text), Word);
        yield return new("job", 8, corpus.Jobs, (mutation, text) => mutation.Structure(text), text => Assessed(corpus.Book, text));
        yield return new("page", 3, corpus.Jobs, (mutation, text) => mutation.Structure(text), text => Paged(corpus.Book, text));
        yield return new("margin", 2, corpus.Jobs, (mutation, text) => mutation.Structure(text), text => Margin(corpus.Book, text));
        yield return new(
            "book",
            4,
            [.. corpus.Small.Files.Select(file => $"{file.Path}\n{file.Text}")],
            (mutation, text) => mutation.Text(text),
            text => Booked(corpus, text)
        );
        yield return new("cases", 1, corpus.CaseFiles, (mutation, text) => mutation.Text(text), text => Cases(corpus.Book, text));
        yield return new(
            "packed",
            1,
            [Convert.ToBase64String(PackedBook.Of(corpus.SmallFolder).ToBytes()[..^SHA256.HashSizeInBytes])],
            Bytes,
            Packed
        );
        yield return new(
            "command",
            2,
            [
                "assess - --in xa",
                "limits xa --on 2018-10-26",
                "timeline ride-height",
                "changes . .",
                "inspect .",
                "assess x.yaml --set a.b=c",
                "margin x --format json",
            ],
            (mutation, text) => mutation.Text(text),
            text => Command(corpus, text)
        );
    }

    private static IEnumerable<string> Words(Corpus corpus) =>
        corpus
            .Jobs.SelectMany(job => job.Split(['\n', ',', ':', '{', '}', '[', ']']))
            .Select(word => word.Trim())
            .Where(word => word.Length is > 1 and < 40)
            .Distinct();

    private static string Word(string text)
    {
        // What stands before a colon tells outcomes apart: what a word is, not which one.
        var outcome = $"quantity {Quantity.TryParse(text, out var quantity, out var error)} {quantity?.Unit}: {quantity} {error}";
        outcome += $"\ndate {PartialDate.TryParse(text, out var date)}: {date?.Earliest} {date?.Latest} {date?.Words}";
        outcome += $"\ntyre {TyreSize.TryParse(text, out var size, out var wrong)}: {size} {wrong}";
        return outcome + $"\nshown: {Visible.Of(text)} {Csv.Cell(text)} {Spelling.Nearest(text, ["suspension-lift", "body-lift"])}";
    }

    private static string Assessed(Book book, string text)
    {
        var assessment = Assessor.Assess(book, JobReader.Read(YamlText.Read(text, "job"), book));
        var page = new PageBlocks();
        new AssessmentText(page).Write(assessment);
        return string.Join('\n', page.Blocks.Select(block => block.Text)) + AssessmentJson.Write(assessment);
    }

    private static string Paged(Book book, string text)
    {
        var answer = PageJson.Whole(text, () => Answering.Assess(book, text, ""));
        return answer.StartsWith("{\"failure\"", StringComparison.Ordinal) ? throw new InvalidOperationException(answer) : answer;
    }

    private static string Margin(Book book, string text)
    {
        var page = new PageBlocks();
        MarginText.Write(page, MarginFinder.Find(book, JobReader.Read(YamlText.Read(text, "job"), book)));
        return string.Join('\n', page.Blocks.Select(block => block.Text));
    }

    /// <summary>A small book with one of its files changed; where it is still sound, it has to answer.</summary>
    private static string Booked(Corpus corpus, string text)
    {
        var (path, body) = text.Split('\n', 2) is [var first, var rest] ? (first, rest) : (text, "");
        var folder = BookFolder.Of([
            .. corpus
                .Small.Files.Where(file => file.Path != path)
                .Select(file => new BookBytes(file.Path, Encoding.UTF8.GetBytes(file.Text))),
            new BookBytes(path, Encoding.UTF8.GetBytes(body)),
        ]);
        var report = Inspection.Run(folder, Today);
        using var said = new StringWriter();
        InspectionText.Write(report, said);
        if (report.Problems.Any(problem => problem.Code == "check-failed"))
            throw new InvalidOperationException(said.ToString());
        if (!report.IsSound)
            return said.ToString();
        foreach (var place in report.Book!.Jurisdictions)
            said.Write(ResolvedText.Of(report.Book, place));
        said.Write(
            Assessed(
                report.Book,
                "{ registered-in: xa-n, on: 2015-06-01, vehicle: { four-wheel-drive: yes }, modification: { suspension-lift: 60 mm } }"
            )
        );
        return said.ToString();
    }

    private static string Cases(Book book, string text)
    {
        // The same folder in two runs, since a refusal names it.
        var folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), $"rulebook-fuzz-{Environment.ProcessId}"));
        try
        {
            // As bytes: what is no letter is written as the sign for it, as an editor would.
            File.WriteAllBytes(
                Path.Combine(folder.CreateSubdirectory("au-qld").FullName, "ride-height.yaml"),
                Encoding.UTF8.GetBytes(text)
            );
            return string.Join('\n', CaseFolder.Load(folder.FullName, book).Select(one => one.Id));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Bytes(Mutation mutation, string from)
    {
        var bytes = Convert.FromBase64String(from);
        for (var times = mutation.Next(6); times >= 0; times--)
            if (mutation.Next(4) == 0 && bytes.Length > 10)
                bytes = [.. bytes.AsSpan(0, mutation.Next(bytes.Length)), .. bytes.AsSpan(mutation.Next(bytes.Length))];
            else if (bytes.Length > 0)
                bytes[mutation.Next(bytes.Length)] = (byte)mutation.Next(256);
        return Convert.ToBase64String(bytes);
    }

    /// <summary>Sealed again: a seal keeps nobody from writing nonsense.</summary>
    private static string Packed(string text)
    {
        var body = Convert.FromBase64String(text);
        return PackedBook.Read((byte[])[.. body, .. SHA256.HashData(body)], "x").Open().Digest;
    }

    private static string Command(Corpus corpus, string line)
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No, Out = new AnsiConsoleOutput(said) });
        // What writes or serves is not tried here; the fault suite does.
        var args = line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Where(word =>
                word is not ("site" or "--output" or "pack" or "--write" or "-" or "--preview")
                && !word.Contains("/dev", StringComparison.Ordinal)
            );
        // Here is the small book, wherever the run was started.
        string[] all = [.. args.Select(word => word == "." ? corpus.SmallFolder : word), "--book", corpus.SmallFolder];
        var code = CommandLine.RunAsync(all, new Surroundings(said, error, console, Today, corpus.SmallFolder)).GetAwaiter().GetResult();
        return code == ExitCode.Fault ? throw new InvalidOperationException(error.ToString()) : $"{code}\n{said}{error}";
    }
}
