using System.CommandLine;
using RuleBook.Authoring.Files;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook job</c>: a job to start from, as a commented file or by questions in a terminal.</summary>
internal static class JobCommand
{
    private static readonly string[] Templates = ["wagon", "ute", "van", "trailer"];

    public static Command Build(Surroundings surroundings)
    {
        var template = new Option<string?>("--template") { Description = $"A commented job to type over: {string.Join(", ", Templates)}" };
        template.AcceptOnlyFromAmong(Templates);
        var ask = new Option<bool>("--ask")
        {
            Description = "Ask in plain words, the fact that decides most first, until the answer stands",
        };
        var (book, output) = (
            Choices.Book(),
            new Option<string?>("--output") { Description = "Write the job to this file, whole or not at all; a file that is there stays" }
        );
        var command = new Command("job", "A job to start from") { template, ask, book, output };
        command.SetAction(parsed =>
        {
            var (named, asks, file) = (parsed.GetValue(template), parsed.GetValue(ask), Paths.Given("--output", parsed.GetValue(output)));
            if ((named is not null) == asks)
                throw new InputException(
                    Problem.Error(
                        "one-content",
                        new Mark("--template", 1, 1),
                        "a job begins from a template or by questions",
                        "give --template wagon, or --ask"
                    )
                );
            if (File.Exists(file))
                throw new InputException(
                    Problem.Error(
                        "not-writable",
                        new Mark(file, 1, 1),
                        "the file is there already",
                        "name another; what you have typed is not replaced"
                    )
                );
            if (named is not null)
            {
                Give(surroundings, file, Template(named));
                return ExitCode.Permitted;
            }

            return new Asking(surroundings, Inputs.Book(parsed.GetValue(book), surroundings)).Run(job => Give(surroundings, file, job));
        });
        return command;
    }

    private static void Give(Surroundings surroundings, string? file, string text)
    {
        if (file is null)
            surroundings.Out.Write(text);
        else
            WholeFile.Write(file, text, surroundings.Stop);
    }

    private static string Template(string name)
    {
        using var stream = typeof(JobCommand).Assembly.GetManifestResourceStream($"job.{name}.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
