using System.Collections.Immutable;
using System.CommandLine;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Walk;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Text;
using Spectre.Console;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook cases [DIR]</c>: does the book give the answers that the sources give?</summary>
internal static class CasesCommand
{
    /// <summary>From here on a person at a terminal is told that the run goes on.</summary>
    private const int ManyCases = 500;

    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description = "The folder of the case files (default: tests/cases of the book)",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var walk = new Option<bool>("--walk")
        {
            Description = "Walk every cell that the limits cut out, not the cases: none without an answer, none easier for more",
        };
        var (book, format, output) = (Choices.Book(), Choices.Format("text", "json", "junit"), Choices.Output());
        var pin = new Option<bool>("--pin")
        {
            Description = "Change each limit, date, word and condition by the smallest step: which change does no case notice?",
        };
        var require = new Option<string?>("--require")
        {
            HelpName = "SHARE",
            Description = "With --pin: fail unless this share is pinned, such as 100%",
        };
        var topic = new Option<string[]>("--topic")
        {
            HelpName = "TOPIC",
            Description = "With --pin or --walk: only rules on this topic (repeatable)",
        };
        var within = new Option<string?>("--in")
        {
            HelpName = "ID",
            Description = "With --pin or --walk: only rules of this jurisdiction and of those within it, such as au",
        };
        var command = new Command("cases", "Run the case files: does the book give the answers that the sources give?")
        {
            folder,
            book,
            pin,
            require,
            topic,
            within,
            walk,
            format,
            output,
        };
        command.Validators.Add(given =>
        {
            bool Has(Option option) => given.GetResult(option) is { Implicit: false };
            void Refuse(bool refused, string why)
            {
                if (refused)
                    given.AddError(why);
            }
            Refuse(Has(pin) && Has(walk), "--pin and --walk are two runs: leave one out");
            Refuse(Has(require) && !Has(pin), "--require goes with --pin");
            Refuse((Has(within) || Has(topic)) && !Has(pin) && !Has(walk), "--in and --topic go with --pin or --walk");
            Refuse(Has(walk) && (Has(format) || given.GetResult(folder) is { Tokens.Count: > 0 }), "--walk reads no cases and writes text");
            Refuse(Has(pin) && given.GetValue(format) == "junit", "--pin writes text or json");
        });
        command.SetAction(parsed =>
        {
            var needed = Pins.Share(parsed.GetValue(require));
            var place = Inputs.BookFolder(parsed.GetValue(book), surroundings);
            var opened = Inputs.Book(place, surroundings);
            var chosen = Chosen(opened, parsed.GetValue(topic) ?? [], parsed.GetValue(within));
            if (parsed.GetValue(walk))
                return Walk(surroundings, opened, chosen, parsed.GetValue(output));
            var cases = CaseFolder.Load(Paths.Given("DIR", parsed.GetValue(folder)) ?? CaseFolder.Within(place), opened);
            var results = Run(surroundings.Console, opened, cases);
            if (parsed.GetValue(pin) && results.All(result => result.Passed))
                return Pins.Give(surroundings, opened, cases, chosen, needed, parsed.GetValue(format)!, parsed.GetValue(output));
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) switch
                {
                    "json" => _ => CaseReport.Json(results),
                    "junit" => _ => CaseReport.Junit(results),
                    _ => console => CasesText.Write(console, results),
                }
            );
            return results.All(result => result.Passed) ? 0 : 1;
        });
        return command;
    }

    private static CaseResult[] Run(IAnsiConsole console, Book book, ImmutableArray<Case> cases)
    {
        CaseResult[] All() => CaseRun.Run(book, cases);
        var shown = cases.Length >= ManyCases && console.Profile.Capabilities is { Interactive: true, Ansi: true };
        return shown ? console.Status().Start($"running {cases.Length} cases", _ => All()) : All();
    }

    /// <summary>Whether a jurisdiction and a topic are among those asked for; all are where none is named.</summary>
    private static Func<string, string, bool> Chosen(Book book, string[] topics, string? within)
    {
        if (within is not null)
            Known("--in", within, [.. book.Jurisdictions.Select(place => place.Id)]);
        foreach (var topic in topics)
            Known("--topic", topic, [.. book.Vocabulary.Topics.Keys.Order(StringComparer.Ordinal)]);
        return (place, topic) =>
            (topics.Length == 0 || topics.Contains(topic))
            && (within is null || place == within || book.Jurisdiction(place)?.Within == within);
    }

    private static void Known(string option, string word, string[] words)
    {
        if (!words.Contains(word))
            throw new InputException(
                Problem.Error("not-a-word", new Mark(option, 1, 1), $"'{word}' is not in the book", Spelling.Tip(word, words))
            );
    }

    private static int Walk(Surroundings surroundings, Book book, Func<string, string, bool> chosen, string? output)
    {
        var report = BookWalk.Walk(book, chosen);
        Answer.Give(surroundings, output, console => WalkText.Write(console, book, report));
        return report.Faults.IsEmpty ? 0 : 1;
    }
}
