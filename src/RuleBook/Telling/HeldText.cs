using System.Text.Json;
using RuleBook.Answers;

namespace RuleBook.Telling;

/// <summary>The papers that the owner holds, and what they count for.</summary>
internal static class HeldText
{
    /// <summary>A paper for one row: <c>certificate of modification 4711 (Queensland, 2021-03): ask ...</c>.</summary>
    public static string Short(PaperHeld held) =>
        $"{Name(held)}: "
        + held.Counts switch
        {
            PaperCounts.OfThePlace => "issued here, speaks for that day only",
            PaperCounts.AsTheSchemeTells => "not taken over unseen; what is asked on moving: --full",
            _ => $"not established what it counts for; ask {held.Ask}",
        };

    public static void Write(AnswerPage page, Assessment assessment)
    {
        if (assessment.Held.IsEmpty)
            return;
        page.Heading($"Papers held, and what they count for in {assessment.JurisdictionName}");
        page.Item("The verdict is that of the rules of the place for the vehicle as it is; no paper from elsewhere makes it easier.");
        foreach (var same in assessment.Held.GroupBy(held => (held.Says, held.Ask)))
        {
            page.Item($"{string.Join("; ", same.Select(Name))}: {same.Key.Says}.");
            if (same.Key.Ask is { } ask)
                page.Item($"ask: {ask}, before the move", depth: 2);
        }

        if (assessment.Held[0].CodesLacking is { IsEmpty: false } lacking)
            page.Item($"codes that the rules name and no paper held has: {string.Join(", ", lacking)}");
        if (!assessment.IsCertified)
            return;
        page.Item("then, in order:");
        foreach (var step in assessment.Certification!.Steps.OrderByDescending(step => step.BeforeWork))
            page.Item(step.Text.Trim(), depth: 2);
    }

    public static void Write(Utf8JsonWriter json, PaperHeld held)
    {
        json.WriteStartObject();
        json.WriteString("paper", held.Paper.Name);
        json.WriteString("issued-in", held.Paper.IssuedIn);
        json.WriteString("number", held.Paper.Number);
        json.WriteString("day", held.Paper.Day?.ToString());
        json.Texts("codes", held.Paper.Codes);
        json.WriteString(
            "counts",
            held.Counts switch
            {
                PaperCounts.OfThePlace => "of-the-place",
                PaperCounts.AsTheSchemeTells => "as-the-scheme-tells",
                _ => "not-established",
            }
        );
        json.WriteString("says", held.Says);
        json.WriteString("ask", held.Ask);
        json.Texts("codes-lacking", held.CodesLacking);
        json.WriteEndObject();
    }

    private static string Name(PaperHeld held)
    {
        string[] about = [held.IssuedIn, .. new[] { held.Paper.Day?.ToString() }.OfType<string>()];
        return $"{held.Paper.Name}{(held.Paper.Number is { } number ? $" {number}" : "")} ({string.Join(", ", about)})";
    }
}
