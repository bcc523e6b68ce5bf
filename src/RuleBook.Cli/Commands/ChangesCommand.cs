using System.CommandLine;
using RuleBook.Authoring.AllCores;
using RuleBook.Authoring.Changes;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using Spectre.Console;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook changes OLD [NEW]</c>: which answers change between two books, with a job that shows each.</summary>
internal static class ChangesCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var old = new Argument<string>("OLD")
        {
            Description = "A book's folder, or a git revision of the repository that holds the book, such as main~3",
        };
        var now = new Argument<string?>("NEW")
        {
            Description = "The same (default: the book as it is in its folder)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var jobs = new Option<string?>("--jobs") { Description = "Tell which of the job files under this folder change" };
        var (book, format, output) = (Choices.Book(), Choices.Format("text", "markdown", "json"), Choices.Output());
        var command = new Command("changes", "Which answers change between two books, with a job that shows each?")
        {
            old,
            now,
            jobs,
            book,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var current = Inputs.BookFolder(parsed.GetValue(book), surroundings);
            string[] names = [parsed.GetValue(old)!, parsed.GetValue(now) ?? current];
            var books = InOrder.Each(names, name => (Book: Revision.Open(name, current), Cases: Revision.Cases(name, current)));
            var (left, right) = (books[0].Book, books[1].Book);
            var report = Between(left, right, surroundings.Console);
            report = report with { Remarks = [.. report.Remarks, .. VanishedCases.Of(books[0].Cases, books[1].Cases)] };
            var saved = Paths.Given("--jobs", parsed.GetValue(jobs)) is { } folder
                ? JobChanges.In(folder, left, right, surroundings.Today)
                : null;
            var compared = new ComparedBooks(
                new NamedBook(names[0], left.Digest),
                new NamedBook(parsed.GetValue(now) ?? "the current book", right.Digest),
                report,
                saved
            );
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) switch
                {
                    "json" => _ => ChangesJson.Write(compared),
                    "markdown" => _ => ChangesMarkdown.Write(compared),
                    _ => console => ChangesText.Write(console, compared),
                }
            );
            return saved is { Unreadable.IsEmpty: false } ? ExitCode.BadInput
                : compared.Changes ? 1
                : 0;
        });
        return command;
    }

    /// <summary>Compares two books, and names the jurisdiction being compared on a terminal only.</summary>
    internal static ChangeReport Between(Book before, Book after, IAnsiConsole console) =>
        console.Profile is { Capabilities: { Interactive: true, Ansi: true }, Out.IsTerminal: true }
            ? console
                .Status()
                .Start(
                    "comparing",
                    status => BookChanges.Between(before, after, place => status.Status($"comparing {Markup.Escape(place)}"))
                )
            : BookChanges.Between(before, after);
}
