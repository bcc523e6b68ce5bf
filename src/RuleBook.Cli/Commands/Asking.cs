using System.Globalization;
using RuleBook.Answers;
using RuleBook.Cli.Answers;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary>
/// Asks for a job line by line, which works in a terminal, through a pipe and with a screen reader: what every job has first, then whatever
/// decides most, until no answer would change the verdict. An empty line leaves a fact unknown. Questions and answer go to standard error,
/// so that standard output has the job alone.
/// </summary>
internal sealed class Asking(Surroundings surroundings, Book book)
{
    private readonly HashSet<string> left = [];

    /// <summary>Asks, answers, and gives the job as it came about.</summary>
    /// <param name="give">Takes the job file.</param>
    /// <returns>The exit code of the answer.</returns>
    public int Run(Action<string> give)
    {
        surroundings.Error.WriteLine("An empty line leaves a fact unknown. Ctrl-C ends without writing anything.");
        var job = NodeEdit.Set(new Mapping([], new Mark("--ask", 1, 1)), "registered-in", Place());
        var today = surroundings.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        job = NodeEdit.Set(job, "on", today);
        job = Put(job, "on", $"On which day is the work done? (empty: today, {today})");
        job = Put(job, "vehicle.category", "Which category is on the compliance plate? MC off-road wagon, MA car, NA ute or van, ...");
        job = Put(job, "modification.suspension-lift", "How much does the suspension lift it, unladen? 40 mm, -30 mm where it gets lower");
        job = Put(job, "modification.body-lift", "How high are blocks between body and frame? 25 mm");
        job = Put(job, "vehicle.tyres", "Which size stands on the tyre placard? 265/65R17");
        if (job.Find("vehicle") is Mapping vehicle && vehicle.Find("tyres") is not null)
            job = Put(job, "modification.tyres", "Which size is fitted? 265/70R17; empty where it stays");
        job = Put(job, "modification.ratings.gvm", "Which GVM is asked for? 3500 kg; empty where it stays");
        if (job.Find("vehicle") is null)
            job = NodeEdit.Set(job, "vehicle.category", "unknown");
        while (Deciding(Answered(job)) is { } effect)
        {
            left.Add(effect.Opening.Name);
            job = Put(job, effect.Opening.Name, Questions.Of(effect, book.Vocabulary));
        }

        var assessment = Answered(job);
        surroundings.Error.WriteLine();
        Answer.Give(
            surroundings with
            {
                Out = surroundings.Error,
            },
            null,
            console =>
                Page.Write(console, page => new FirstScreen(page, book.Vocabulary).Write(assessment, Read(job), surroundings.Today, ""))
        );
        surroundings.Error.WriteLine();
        give(YamlLines.Write(job));
        return ExitCode.Of(assessment.Headline);
    }

    private Job Read(Mapping job) => JobReader.Read(job, book);

    private Assessment Answered(Mapping job) => Assessor.Assess(book, Read(job));

    /// <summary>The fact not asked yet that has most answers which would decide.</summary>
    private Effect? Deciding(Assessment assessment) =>
        assessment
            .Undecided.Where(effect => effect.Opening.Kind != OpeningKind.Version && !left.Contains(effect.Opening.Name))
            .OrderByDescending(effect => effect.Gives.Count(outcome => outcome.Decided))
            .FirstOrDefault();

    private string Place()
    {
        string[] ids = [.. book.Jurisdictions.Where(place => place.Registers).Select(place => place.Id)];
        while (true)
        {
            var typed =
                Line($"Where is the vehicle registered? {string.Join(", ", ids)}")
                ?? throw new InputException(
                    Problem.Error(
                        "missing-key",
                        new Mark("standard input", 1, 1),
                        "the questions were not answered",
                        "answer at least where the vehicle is registered"
                    )
                );
            if (book.Jurisdiction(typed) is { Registers: true } place)
                return place.Id;
            if (ids.Where(id => id.EndsWith("-" + typed, StringComparison.OrdinalIgnoreCase)).ToArray() is [var one])
                return one;
            surroundings.Error.WriteLine($"  '{Visible.Of(typed)}' is not in the book: {Spelling.Tip(typed, ids)}");
        }
    }

    /// <summary>The job with what is typed at a path; asked again while it cannot be read, left out where nothing is typed.</summary>
    private Mapping Put(Mapping job, string path, string question)
    {
        while (Line(question) is { Length: > 0 } typed)
        {
            var changed = NodeEdit.Set(job, path, typed);
            try
            {
                _ = Read(changed.Find("vehicle") is null ? NodeEdit.Set(changed, "vehicle.category", "unknown") : changed);
                return changed;
            }
            catch (InputException refused)
            {
                foreach (var problem in refused.Problems.Take(3))
                    surroundings.Error.WriteLine($"  {problem.Text}{(problem.Tip.Length > 0 ? $" ({problem.Tip})" : "")}");
            }
        }

        return job;
    }

    private string? Line(string question)
    {
        surroundings.Stop.ThrowIfCancellationRequested();
        surroundings.Error.WriteLine(question);
        surroundings.Error.Write("> ");
        surroundings.Error.Flush();
        return surroundings.In.ReadLine()?.Trim();
    }
}
