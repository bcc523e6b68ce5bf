using System.CommandLine;
using RuleBook.Answers;
using RuleBook.Authoring.Records;
using RuleBook.Cli.Answers;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Site.Sheets;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook assess JOB</c>: is this allowed where the vehicle is registered?</summary>
internal static class AssessCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var (job, book, place, on) = (Choices.Jobs(), Choices.Book(), Choices.In(surroundings), Choices.On());
        var (set, format, output) = (Choices.Set(), Choices.Format("text", "json", "html", "record"), Choices.Output());
        var full = new Option<bool>("--full") { Description = "Everything there is: findings, masses, steps, workings, sources" };
        var command = new Command("assess", "Is this allowed where the vehicle is registered?")
        {
            job,
            book,
            place,
            on,
            set,
            full,
            format,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var (given, named) = (parsed.GetValue(job)!, parsed.GetValue(place));
            if (given.Length > 1 || Directory.Exists(given[0]))
            {
                return parsed.GetValue(format) is "text" && !parsed.GetValue(full)
                    ? SeveralJobs.Assess(
                        SeveralJobs.Files(given),
                        file => Inputs.JobNode(file, parsed.GetValue(on), parsed.GetValue(set) ?? [], surroundings),
                        opened,
                        Place(named, opened),
                        parsed.GetValue(output),
                        surroundings
                    )
                    : throw new InputException(
                        Problem.Error(
                            "one-at-a-time",
                            new Mark("--format", 1, 1),
                            "several jobs are told as text, a line each",
                            "give one job"
                        )
                    );
            }

            var node = Inputs.JobNode(given[0], parsed.GetValue(on), parsed.GetValue(set) ?? [], surroundings);
            var (read, elsewhere) = (JobReader.Read(node, opened), Place(named, opened));
            var assessment = Assessor.Assess(opened, read, elsewhere);
            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                parsed.GetValue(format) switch
                {
                    "json" => _ => AssessmentJson.Write(assessment, Remedies.Find(opened, read, elsewhere, assessment)),
                    "html" => _ =>
                        SheetPage.Of(
                            opened,
                            read,
                            assessment,
                            Remedies.Find(opened, read, elsewhere, assessment),
                            $"rulebook {Surroundings.Version}",
                            surroundings.Today
                        ),
                    "record" => _ => SavedRecord.Of(opened, node, elsewhere, assessment, Surroundings.Version, surroundings.Today).ToJson(),
                    _ => console =>
                        Page.Write(
                            console,
                            page => Write(page, opened, read, elsewhere, assessment, parsed.GetValue(full), surroundings.Today)
                        ),
                }
            );
            return ExitCode.Of(assessment.Headline);
        });
        return command;
    }

    internal static void Write(AnswerPage page, Book book, Job job, string? elsewhere, Assessment assessment, bool full, DateOnly today)
    {
        new FirstScreen(page, book.Vocabulary).Write(
            assessment,
            job,
            today,
            full ? "" : "More: --full",
            Remedies.Find(book, job, elsewhere, assessment)
        );
        if (full)
            new AssessmentText(page).Write(assessment, headed: false);
    }

    /// <summary>The jurisdiction named by an option.</summary>
    /// <exception cref="InputException">The book has none of that name.</exception>
    public static string? Place(string? id, Book book, string option = "--in") =>
        id is null || book.Jurisdiction(id) is not null
            ? id
            : throw new InputException(
                Problem.Error(
                    "unknown-jurisdiction",
                    new Mark(option, 1, 1),
                    $"'{id}' is not a jurisdiction of the book",
                    book.PlaceTip(id)
                )
            );
}
