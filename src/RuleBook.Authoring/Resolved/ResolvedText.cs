using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Resolved;

/// <summary>
/// Every rule of a jurisdiction as in force at every boundary day, adoption followed to the end: what an edit changes, wherever it was
/// made. The same book gives the same text, byte for byte.
/// </summary>
public static class ResolvedText
{
    /// <summary>The text of one jurisdiction.</summary>
    public static string Of(Book book, Jurisdiction place)
    {
        var text = new StringBuilder(
            string.Create(CultureInfo.InvariantCulture, $"{place.Name} ({place.Id}): every rule as in force at every boundary day.\n")
        ).Append("Written by 'rulebook resolved --write'; not to be edited.\n");
        foreach (var rule in place.Rules.OrderBy(rule => rule.Id, StringComparer.Ordinal))
            Write(text, book, rule);
        return text.ToString();
    }

    private static void Write(StringBuilder text, Book book, Rule rule)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n{rule.Id}\n  for {LimitWords.Of(rule.For, book.Vocabulary)}{Decides(book, rule)}\n");
        foreach (var version in rule.Versions.Where(version => !version.Decides))
            text.Append(
                CultureInfo.InvariantCulture,
                $"  {(version.Announced is { } day ? $"announced for {day.Words}" : "proposed")}, not in force; decides nothing\n"
            );
        var before = "";
        foreach (var day in DayEdges.Of(book, [rule]))
        {
            var body = Body(book, Resolver.Resolve(book, rule, day));
            if (body == before)
                continue;
            text.Append(CultureInfo.InvariantCulture, $"  from {day:yyyy-MM-dd}\n{body}");
            before = body;
        }
    }

    private static string Decides(Book book, Rule rule) =>
        (rule.GovernedByTravel ? "; follows the road" : "")
        + ((rule.DecidedBy ?? book.Jurisdiction(rule.Jurisdiction)?.DecidedBy) is { } by ? $"; the day of the {by} decides" : "");

    private static string Body(Book book, ImmutableArray<ResolvedVersion> candidates)
    {
        var text = new StringBuilder();
        if (candidates.Length > 1)
            text.Append("    one of these, it is not known which\n");
        foreach (var version in candidates)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"    version {version.From?.Text ?? "unknown"} until {version.Until?.Text ?? "further"}\n"
            );
            foreach (var step in version.Adopted)
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"      adopts {step.Rule}{(step.Moving ? " as amended" : $" as on {step.AsOf:yyyy-MM-dd}")}\n"
                );
            VersionWords.Write(text, version, book.Vocabulary);
        }

        return text.ToString();
    }
}
