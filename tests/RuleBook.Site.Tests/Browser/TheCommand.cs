using System.Buffers;
using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Cli;
using RuleBook.Cli.Commands;
using RuleBook.Jobs.Reading;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;
using Spectre.Console;

namespace RuleBook.Site.Tests.Browser;

/// <summary>What the command gives for a job.</summary>
internal static class TheCommand
{
    private static readonly ConcurrentDictionary<string, Task<string>> Given = new(StringComparer.Ordinal);

    /// <summary>The whole command, from its arguments on; once for files that are the same.</summary>
    public static Task<string> AssessAsync(string file) => Given.GetOrAdd(File.ReadAllText(file), _ => RunAsync(file));

    private static async Task<string> RunAsync(string file)
    {
        using var said = new StringWriter { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(said) });
        var surroundings = new Surroundings(said, TextWriter.Null, console, new DateOnly(2026, 11, 25), TheBook.Folder);
        await CommandLine.RunAsync(["assess", file, "--format", "json"], surroundings);
        return said.ToString();
    }

    /// <summary>What the command does with a job once the book is open; null when the job is refused.</summary>
    public static string? Assess(string job)
    {
        try
        {
            var read = JobReader.Read(YamlText.Read(job, "job"), TheBook.Input.Book);
            var assessment = Assessor.Assess(TheBook.Input.Book, read);
            return AssessmentJson.Write(assessment, Remedies.Find(TheBook.Input.Book, read, null, assessment));
        }
        catch (InputException)
        {
            return null;
        }
    }

    /// <summary>The first line in which two answers differ, or null.</summary>
    public static string? FirstDifference(string? given, string? expected)
    {
        if (given == expected)
            return null;
        var (left, right) = ((given ?? "refused").Split('\n'), (expected ?? "refused").Split('\n'));
        var at = Enumerable
            .Range(0, Math.Min(left.Length, right.Length))
            .FirstOrDefault(i => left[i] != right[i], Math.Min(left.Length, right.Length) - 1);
        return $"line {at + 1}: page '{left[at]}', command '{right[at]}'";
    }

    public static string Json(string file)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
            NodeJson.Write(json, YamlText.ReadFile(file));
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
