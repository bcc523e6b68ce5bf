using System.CommandLine;
using System.Globalization;
using RuleBook.Authoring.Exports;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>
/// <c>rulebook export OUT</c>: the limits in force, for engines that know nothing of the book: tables with a query that judges by them, or
/// decision tables.
/// </summary>
internal static class ExportCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string>("OUT") { Description = "The folder to write; an export that is there is replaced whole" };
        var kind = new Option<string>("--for")
        {
            Description = "As SQL statements, a file of CSV or Parquet a table, or decision tables of DMN 1.3",
            DefaultValueFactory = _ => "sql",
        };
        kind.AcceptOnlyFromAmong("sql", "csv", "parquet", "dmn");
        var (book, on) = (Choices.Book(), Choices.On());
        on.Description = "The limits in force on this day, such as 2026-11-25 (default: today)";
        var command = new Command(
            "export",
            "The limits in force as plain tables with one SQL query that judges by them, or as decision tables (DMN)"
        )
        {
            folder,
            book,
            on,
            kind,
        };
        command.SetAction(
            async (parsed, _) =>
            {
                var target = Paths.Given("OUT", parsed.GetValue(folder))!;
                var opened = Inputs.Book(parsed.GetValue(book), surroundings);
                var day = Choices.Day("--on", parsed.GetValue(on)) ?? surroundings.Today;
                var export = parsed.GetValue(kind) switch
                {
                    "csv" => BookExport.Csv(opened, day),
                    "parquet" => await BookExport.ParquetAsync(opened, day, surroundings.Stop).ConfigureAwait(false),
                    "dmn" => BookExport.Dmn(opened, day),
                    _ => BookExport.Sql(opened, day),
                };
                ExportFolder.Write(export, target, surroundings.Stop);
                surroundings.Out.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{Visible.Of(target)}: {export.Files.Length} files, "
                            + $"{export.Files.Sum(file => (long)file.Bytes.Length) / 1024} KiB, limits in force on {day:yyyy-MM-dd}"
                    )
                );
                foreach (var rounded in export.Inexact)
                    surroundings.Error.WriteLine($"rounded, it does not end in decimals: {Visible.Of(rounded)}");
                foreach (var share in opened.Vocabulary.Measures.Values.Where(measure => measure.Share is not null))
                    surroundings.Error.WriteLine(
                        $"not reckoned, no decimal holds every share: {Visible.Of(share.Name)}; a vehicle that does not state it stays open"
                    );
                return ExitCode.Permitted;
            }
        );
        return command;
    }
}
