using System.Globalization;
using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Pinning;
using RuleBook.Cli.Answers;
using RuleBook.Law;
using RuleBook.Text;
using Spectre.Console;

namespace RuleBook.Cli.Commands;

/// <summary><c>rulebook cases --pin</c>: which change of the data does no case notice?</summary>
internal static class Pins
{
    public static int Give(
        Surroundings surroundings,
        Book book,
        IReadOnlyList<Case> cases,
        Func<string, string, bool> chosen,
        int needed,
        string format,
        string? output
    )
    {
        var report = WithProgress(surroundings.Console, progress => new Pinner(book, cases).Run(chosen, progress));
        Answer.Give(
            surroundings,
            output,
            format == "json" ? _ => PinJson.Write(book, report) : console => PinText.Write(console, book, report)
        );
        return report.Percent >= needed ? 0 : 1;
    }

    private static PinReport WithProgress(IAnsiConsole console, Func<Action<int, int>?, PinReport> run) =>
        !console.Profile.Capabilities.Interactive
            ? run(null)
            : console
                .Progress()
                .AutoClear(true)
                .Start(context =>
                {
                    var task = context.AddTask("changes tried");
                    return run(
                        (done, all) =>
                        {
                            task.MaxValue = all;
                            task.Value = done;
                        }
                    );
                });

    /// <summary>The share that is asked for, in per cent; none where none is.</summary>
    /// <exception cref="InputException">It is no share.</exception>
    public static int Share(string? text) =>
        text is null ? 0
        : int.TryParse(text.TrimEnd('%', ' '), NumberStyles.None, CultureInfo.InvariantCulture, out var share) && share <= 100 ? share
        : throw new InputException(
            Problem.Error("not-a-share", new Mark("--require", 1, 1), $"'{text}' is not a share", "write a whole per cent, such as 100%")
        );
}
