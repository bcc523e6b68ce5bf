using System.CommandLine;
using RuleBook.Authoring.Files;
using RuleBook.Authoring.Records;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook recheck DIR</c>: which of the kept answers would be others by today's book, on their own day and today?</summary>
internal static class RecheckCommand
{
    public static Command Build(Surroundings surroundings)
    {
        var folder = new Argument<string>("DIR") { Description = "A folder of records that 'assess --format record' wrote (*.json)" };
        var letters = new Option<string?>("--letters")
        {
            Description = "Write a letter to the customer into this folder for each answer that is another one",
        };
        var write = new Option<bool>("--write") { Description = "Keep the new answer in the record, and the earlier one behind it" };
        var (book, output) = (Choices.Book(), Choices.Output());
        var command = new Command("recheck", "Which kept answers would be others by today's book, why, and since when?")
        {
            folder,
            letters,
            write,
            book,
            output,
        };
        command.SetAction(parsed =>
        {
            var opened = Inputs.Book(parsed.GetValue(book), surroundings);
            var letterFolder = Paths.Given("--letters", parsed.GetValue(letters));
            var files = Records(parsed.GetValue(folder)!);
            if (letterFolder is not null)
                Directory.CreateDirectory(letterFolder);
            Rechecked[] all = [.. files.Select(file => One(file, opened, surroundings))];
            foreach (var one in all.Where(one => one.Changed))
            {
                if (letterFolder is not null)
                    WholeFile.Write(
                        Path.Combine(letterFolder, Path.GetFileNameWithoutExtension(one.File) + ".txt"),
                        Letter.Of(one, opened, surroundings.Today),
                        surroundings.Stop
                    );
                if (parsed.GetValue(write))
                    WholeFile.Write(one.File, one.Kept!.Followed(one.Now!).ToJson(), surroundings.Stop);
            }

            Answer.Give(
                surroundings,
                parsed.GetValue(output),
                console => Page.Write(console, page => RecordText.Rechecked(page, all, opened))
            );
            return all.Any(one => one.Problem is not null) ? ExitCode.BadInput
                : all.Any(one => one.Changed) ? ExitCode.Differs
                : ExitCode.Permitted;
        });
        return command;
    }

    private static string[] Records(string folder)
    {
        Paths.Given("DIR", folder);
        if (!Directory.Exists(folder))
            throw new InputException(
                Problem.Error("not-a-folder", new Mark(folder, 1, 1), "there is no such folder", "name the folder with the records")
            );
        string[] files = [.. Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal)];
        return files.Length > 0
            ? files
            : throw new InputException(
                Problem.Error(
                    "no-record",
                    new Mark(folder, 1, 1),
                    "no record is here",
                    "records are *.json files that 'assess --format record' wrote"
                )
            );
    }

    private static Rechecked One(string file, Book book, Surroundings surroundings)
    {
        surroundings.Stop.ThrowIfCancellationRequested();
        try
        {
            return Rechecked.Of(file, Inputs.Record(file), book, Surroundings.Version, surroundings.Today);
        }
        catch (InputException refused)
        {
            return Rechecked.Refused(file, refused.Problems[0]);
        }
    }
}
