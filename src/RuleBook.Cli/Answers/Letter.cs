using System.Text;
using System.Text.Json;
using RuleBook.Authoring.Records;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Cli.Answers;

/// <summary>What a customer is told whose answer no longer stands, in plain words; whoever sends it reads and signs it first.</summary>
internal static class Letter
{
    public static string Of(Rechecked one, Book book, DateOnly today)
    {
        var kept = one.Kept!;
        using var answer = JsonDocument.Parse(kept.Answer);
        var (job, place) = (Given(answer, "job"), Given(answer, "jurisdiction"));
        var text = new StringBuilder();
        void Line(string line = "") => text.Append(Visible.Of(line)).Append('\n');
        Line(Phrases.Day(today));
        Line();
        Line($"About your vehicle modification{(job.Length > 0 ? $", job {job}" : "")}");
        Line();
        Line(
            $"On {Phrases.Day(kept.Made)} we gave you an answer by the rules of {book.Jurisdiction(place)?.Name ?? place}. It no "
                + "longer stands."
        );
        Line();
        if (one.OwnDay!.Decision is { } decision)
        {
            Line($"  What we said:  {decision.Before}");
            Line($"  What holds:    {decision.Now}");
        }
        else
        {
            Line("The decision is the same; what it rests on is not.");
        }

        Line();
        Line("Why:");
        foreach (var difference in one.OwnDay.Differences)
            Line($"  - {RecordText.Words(difference)}{(difference.Since is { Length: > 0 } since ? $" (since {since})" : "")}");
        if (one.Today?.Decision is { } moved)
        {
            Line();
            Line($"If the work were done today: {moved.Now}.");
        }

        Line();
        Line(
            "Please do not rely on the earlier answer, and speak to us before the vehicle is used, modified further or presented "
                + "for inspection."
        );
        Line("This is not legal advice: the authority of the state of registration and the licensed certifier decide.");
        Line();
        Line(
            $"Earlier answer: {EditionWords.Called(kept.Edition, kept.Book)}. This one: "
                + $"{EditionWords.Called(book.Edition?.Name, book.Digest)}."
        );
        Line();
        Line("Name, signature: ______________________________");
        return text.ToString();
    }

    private static string Given(JsonDocument answer, string key) =>
        answer.RootElement.TryGetProperty(key, out var found) && found.ValueKind == JsonValueKind.String ? found.GetString()! : "";
}
