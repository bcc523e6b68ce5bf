using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Site.Pages;
using RuleBook.Site.Templating;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Site.Questions;

/// <summary>
/// Questions of the trade with short answers, <c>site-templates/questions.json</c>: every figure is worked by the evaluator from a job.
/// </summary>
internal static class QuestionsPage
{
    public static Page Of(SiteBook site)
    {
        var body = Templates.Render(
            "questions",
            ("root", ""),
            ("day", Phrases.Day(site.Day)),
            ("has_check", !site.Input.Check.IsEmpty),
            ("questions", All(site))
        );
        return new Page("questions.html", "Questions of the trade", "questions", body, []);
    }

    /// <summary>Those that this book can answer: one that lacks a source or a figure of an answer leaves the question out.</summary>
    public static TradeQuestion[] All(SiteBook site)
    {
        using var written = JsonDocument.Parse(Templates.File("questions.json"));
        var jobs = written.RootElement.GetProperty("jobs");
        return
        [
            .. written
                .RootElement.GetProperty("questions")
                .EnumerateArray()
                .Select(question => Of(site, jobs, question))
                .OfType<TradeQuestion>(),
        ];
    }

    private static TradeQuestion? Of(SiteBook site, JsonElement jobs, JsonElement question)
    {
        var own = question.GetProperty("job").GetString()!;
        TradeClaim?[] claims = [.. question.GetProperty("claims").EnumerateArray().Select(claim => Of(site, jobs, own, claim))];
        return claims.Contains(null)
            ? null
            : new TradeQuestion(
                question.GetProperty("id").GetString()!,
                question.GetProperty("title").GetString()!,
                [.. claims.OfType<TradeClaim>()],
                Links.Check(jobs.GetProperty(own).GetRawText().ReplaceLineEndings("").Replace("  ", "", StringComparison.Ordinal))
            );
    }

    private static TradeClaim? Of(SiteBook site, JsonElement jobs, string own, JsonElement claim)
    {
        ClaimSource?[] sources = [.. claim.GetProperty("sources").EnumerateArray().Select(cite => ClaimSource.Of(site, cite.GetString()!))];
        if (sources.Contains(null))
            return null;
        var parts = new List<ClaimPart>();
        foreach (var piece in claim.GetProperty("text").GetString()!.Split('{'))
        {
            if (piece.Split('}') is not [var name, var after])
            {
                parts.Add(new ClaimPart(piece, ""));
                continue;
            }

            if (Figure(site, jobs, own, claim.GetProperty("figures").GetProperty(name)) is not { } figure)
                return null;
            parts.Add(new ClaimPart(figure, name));
            parts.Add(new ClaimPart(after, ""));
        }

        return new TradeClaim([.. parts], [.. sources.OfType<ClaimSource>()]);
    }

    private static string? Figure(SiteBook site, JsonElement jobs, string own, JsonElement figure)
    {
        var job = figure.TryGetProperty("job", out var other) ? other.GetString()! : own;
        var elsewhere = figure.TryGetProperty("in", out var place) ? place.GetString() : null;
        try
        {
            var assessment = Assessor.Assess(
                site.Book,
                JobReader.Read(JsonNodes.Read(jobs.GetProperty(job).GetRawText()), site.Book),
                elsewhere
            );
            using var json = JsonDocument.Parse(AssessmentJson.Write(assessment));
            return TradeFigure.Of(
                json.RootElement,
                figure.GetProperty("path").GetString()!,
                figure.TryGetProperty("unit", out var unit) ? unit.GetString() : null
            );
        }
        catch (Exception lacking) when (lacking is InputException or ArgumentException)
        {
            return null;
        }
    }
}

/// <summary>A question with its answer.</summary>
/// <param name="Id">In the page's address.</param>
/// <param name="Title">The question.</param>
/// <param name="Claims">The answer, claim by claim.</param>
/// <param name="Job">To the check page with the job behind its figures.</param>
internal sealed record TradeQuestion(string Id, string Title, TradeClaim[] Claims, string Job);

/// <summary>A claim with what it stands on.</summary>
internal sealed record TradeClaim(ClaimPart[] Parts, ClaimSource[] Sources);

/// <summary>A piece of text, or a figure where <paramref name="Figure"/> names one.</summary>
internal sealed record ClaimPart(string Text, string Figure);

/// <summary>A source of a claim.</summary>
internal sealed record ClaimSource(string Title, string Url, string ReadAs)
{
    /// <summary>
    /// From <c>au/road-vehicle-standards-act-2018, s 24</c>: jurisdiction, source, and the clause where there is one; null where the book
    /// has no such source.
    /// </summary>
    public static ClaimSource? Of(SiteBook site, string cite)
    {
        var parts = cite.Split(", ", 2);
        return site.Book.Source("", parts[0]) is not { } source
            ? null
            : new ClaimSource(
                $"{string.Join(", ", parts.Skip(1).Prepend(source.Title))} ({Phrases.ReadAs(source)})",
                Links.Source(source),
                Wording.Of(source.ReadAs)
            );
    }
}
