using System.Globalization;
using RuleBook.Tables;
using RuleBook.Telling;

namespace RuleBook.Authoring.Changes;

/// <summary>The sentences of a comparison, the same in every format.</summary>
public static class ChangeWords
{
    /// <summary>Said where nothing changes.</summary>
    public const string Nothing = "No answer changes.";

    /// <summary>
    /// The vehicles: <c>four-wheel drive yes, electronic stability control no</c>; <c>every vehicle</c> where no fact tells them apart.
    /// </summary>
    public static string Vehicles(AnswerChange change) =>
        change.Vehicles.IsEmpty
            ? "every vehicle"
            : string.Join(", ", change.Vehicles.Select(word => $"{word.Title} {string.Join(" or ", word.Words)}"));

    /// <summary>The days: <c>from 26 October 2018</c>, <c>until 1 July 2020</c>, <c>on every day</c>.</summary>
    public static string Days(AnswerChange change) =>
        (change.From, change.Until) switch
        {
            (null, null) => "on every day",
            (null, { } until) => $"before {Phrases.Day(until)}",
            ({ } from, null) => $"from {Phrases.Day(from)}",
            ({ } from, { } until) => $"from {Phrases.Day(from)} until {Phrases.Day(until)}",
        };

    /// <summary>Where the rule is written: <c>file:line</c>.</summary>
    public static string Place(AnswerChange change) =>
        string.Create(CultureInfo.InvariantCulture, $"{change.Mark.File}:{change.Mark.Line}");

    /// <summary>What a saved job was answered; <c>could not be read</c> where the old book does not know its words.</summary>
    public static string Answer(Outcome? outcome) => outcome is { } known ? Phrases.Outcome(known) : "could not be read";

    /// <summary>How much changes, in one line.</summary>
    public static string Sum(ComparedBooks compared) =>
        compared.Changes
            ? string.Join(
                ", ",
                new[]
                {
                    compared.Report.Answers.IsEmpty ? null : Count(compared.Report.Answers.Length, "answer changes", "answers change"),
                    compared.Report.Remarks.IsEmpty
                        ? null
                        : Count(compared.Report.Remarks.Length, "other thing changes", "other things change"),
                    compared.Jobs is { } jobs
                        ? $"{jobs.Changed.Length} of {Count(jobs.Answered, "saved job changes", "saved jobs change")}"
                        : null,
                }.OfType<string>()
            ) + "."
            : Nothing;

    private static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
