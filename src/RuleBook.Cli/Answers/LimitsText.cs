using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Units;
using Spectre.Console;
using Rule = RuleBook.Law.Rule;

namespace RuleBook.Cli.Answers;

/// <summary>A jurisdiction's limits in force on a day.</summary>
internal static class LimitsText
{
    public static string? Write(
        IAnsiConsole console,
        Book book,
        Jurisdiction place,
        DateOnly day,
        IEnumerable<(Rule Rule, ImmutableArray<ResolvedVersion> Versions)> rules
    )
    {
        var page = new Page(console);
        page.Title($"{place.Name} ({place.Id}): limits in force on {Phrases.Day(day)}");
        if (!place.Registers)
            page.Line(place.RegistersNote ?? "Nobody registers a vehicle here.");
        foreach (var line in LimitPhrases.OnlyWhereNamed(book.Vocabulary))
            page.Line(line);
        foreach (var (rule, versions) in rules)
        {
            page.Heading($"{rule.Title}");
            page.Aside(rule.Id, 1);
            if (rule.For.Tests.Any())
                page.Aside($"where {string.Join("; or else ", rule.For.AnyOf.Select(each => Words(book, each)))}", 1);
            foreach (var version in versions)
                Write(page, book, version, versions.Length > 1);
        }

        page.Heading("Not legal advice");
        page.Line($"{place.Ask.Name} and the licensed certifier decide.{(place.Ask.Url is { } url ? $" {url}" : "")}");
        return null;
    }

    private static void Write(Page page, Book book, ResolvedVersion version, bool open)
    {
        page.Item($"{Phrases.InForce(version)}{(open ? " (which version is in force that day is not known)" : "")}", "*");
        foreach (var step in version.Adopted)
            page.Aside($"adopts {step.Rule} as on {Phrases.Day(step.AsOf)}");
        switch (version.Content)
        {
            case Stated stated:
                foreach (var tier in stated.Tiers)
                    Write(page, book, version, tier);
                var gives = stated.Beyond is { } beyond
                    ? $"{Phrases.Pathway(beyond)}{Known(version.Evidence.Of(Part.Beyond))}"
                    : "not established";
                page.Item($"{(stated.Tiers.IsEmpty ? "in every case" : "beyond")}: {gives}", depth: 2);
                break;
            case NotEstablished unknown:
                page.Item($"not established; ask {unknown.Ask}{(unknown.Open is { } document ? $"; open {document}" : "")}", "?", 2);
                break;
            case NotRegulated none:
                page.Item($"not regulated: {none.Why}", depth: 2);
                break;
        }

        if (version.Measured is { } measured && Measured(measured, book) is { Length: > 0 } words)
            page.Aside(words);
        // An adopted rule may rest on the same clause as the adoption.
        foreach (
            var source in version
                .Sources.Select(cited => Phrases.Source(cited.Source, cited.Citation.Clause is { } clause ? [clause] : []))
                .Distinct()
        )
            page.Aside(source);
        if (!version.OfHead.IsEmpty)
            page.Aside($"from the head of the file: {string.Join(", ", version.OfHead)}");
    }

    private static void Write(Page page, Book book, ResolvedVersion version, Tier tier)
    {
        var when = Words(book, tier.When);
        page.Item($"{Phrases.Pathway(tier.Pathway)}{(when.Length > 0 ? $", {when}" : ":")}", depth: 2);
        foreach (var limit in tier.Limits)
            page.Item($"{Words(book, limit)}{Known(version.Evidence.Of(tier, limit))}", depth: 3);
        foreach (var condition in tier.Provided)
            page.Item($"to show: {book.Vocabulary.Conditions[condition].Title}", depth: 3);
    }

    private static string Measured(Measured measured, Book book) =>
        MeasuredWords.Of(measured, name => book.Vocabulary.Measures[name].Title);

    /// <summary>Said where it is not the authority's own text.</summary>
    private static string Known(Standing standing) => standing.Basis == ReadAs.Primary ? "" : $" ({Phrases.Standing(standing)})";

    private static string Words(Book book, Predicate predicate) => string.Join(" and ", predicate.Tests.Select(test => Words(book, test)));

    private static string Words(Book book, FactTest test) =>
        test.Bounds is { } bounds
            ? $"{book.Vocabulary.Measures[test.Fact].Title} {Words(book.Vocabulary.Measures[test.Fact], bounds)}"
            : $"{book.Vocabulary.Facts[test.Fact].Title}: {string.Join(" or ", test.OneOf)}";

    private static string Words(Book book, Limit limit)
    {
        var measure = book.Vocabulary.Measures[limit.Measure];
        return limit.Kind switch
        {
            LimitKind.None => $"{measure.Title}: no limit",
            LimitKind.NotEstablished => $"{measure.Title}: not established",
            _ => $"{measure.Title} {Words(measure, limit.Bounds!)}",
        };
    }

    private static string Words(Measure measure, Bounds bounds) => new Cell(measure, bounds.Lower, bounds.Upper).Label;
}
