using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Schemas;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Editions;

/// <summary>
/// A new edition as an entry of <c>jurisdictions/editions.yaml</c>, its news drafted from what changes; edited by hand afterwards.
/// </summary>
public static class EditionDraft
{
    /// <summary>The file of the list, relative to the book's folder.</summary>
    public const string File = BookFolder.Editions;

    private const int MostNews = 200;

    private const string Head =
        "# yaml-language-server: $schema=../schema/editions.schema.json\n# The states of the book that have a name, oldest first. "
        + "'rulebook edition NAME --since OLD' adds one; its news are edited by hand.\neditions:\n";

    /// <summary>The news that a comparison gives, by consequence.</summary>
    /// <param name="report">What changes against the earlier book.</param>
    /// <param name="last">The day of the last edition; null where there is none.</param>
    internal static ImmutableArray<News> News(ChangeReport report, DateOnly? last) =>
        [
            .. report
                .Answers.Select(change => new News(
                    Kind(change, last),
                    [change.Jurisdiction],
                    change.From,
                    $"{change.TopicTitle}, {ChangeWords.Vehicles(change)}, {ChangeWords.Days(change)}: "
                        + $"{Phrases.Outcome(change.Before)} -> {Phrases.Outcome(change.After)}."
                ))
                .Concat(
                    report.Remarks.Select(remark => new News(
                        Kind(remark),
                        remark.Jurisdiction is { } place ? [place] : [],
                        remark.From,
                        $"{remark.About}: {remark.Text.TrimEnd('.')}."
                    ))
                )
                .OrderBy(news => news.Kind)
                .Take(MostNews),
        ];

    /// <summary>The text of the list with the edition added.</summary>
    /// <param name="before">The text so far; null where there is no such file.</param>
    /// <param name="edition">The edition.</param>
    /// <exception cref="InputException">The list would not be one; its problems are listed.</exception>
    public static string Added(string? before, Edition edition)
    {
        var text = new StringBuilder(before is null ? Head : before.TrimEnd() + "\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"  - edition: {edition.Name}\n    day: {edition.Day:yyyy-MM-dd}\n    digest: {edition.Digest}\n"
        );
        if (!edition.News.IsEmpty)
            text.Append("    news:\n");
        foreach (var news in edition.News)
        {
            var places = news.Places.IsEmpty ? "" : $" jurisdictions: [{string.Join(", ", news.Places)}],";
            var from = news.From is { } day ? string.Create(CultureInfo.InvariantCulture, $" from: {day:yyyy-MM-dd},") : "";
            text.Append(
                CultureInfo.InvariantCulture,
                $"      - {{ kind: {EditionWords.Of(news.Kind)},{places}{from} text: "
                    + $"\"{JsonEncodedText.Encode(news.Text, System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\" }}\n"
            );
        }

        Problem[] problems = [.. SchemaCheck.Find("editions", YamlText.Read(text.ToString(), File))];
        return problems.Length == 0 ? text.ToString() : throw new InputException([.. problems]);
    }

    private static NewsKind Kind(Remark remark) =>
        remark.Kind switch
        {
            RemarkKind.Corrected => NewsKind.Corrected,
            RemarkKind.Evidence => NewsKind.Evidence,
            _ => NewsKind.Law,
        };

    /// <summary>An answer that was decided and differs for days that were known already was wrong.</summary>
    private static NewsKind Kind(AnswerChange change, DateOnly? last) =>
        change.Before.Decided && last is { } day && (change.From is not { } from || from <= day) ? NewsKind.Corrected : NewsKind.Law;
}
