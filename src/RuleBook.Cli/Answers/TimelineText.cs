using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using Spectre.Console;
using Rule = RuleBook.Law.Rule;

namespace RuleBook.Cli.Answers;

/// <summary>The changes on a topic, and each jurisdiction's position on each national rule.</summary>
internal static class TimelineText
{
    public static string? Write(IAnsiConsole console, Book book, string topic, DateOnly day, IReadOnlyList<Change> changes)
    {
        var page = new Page(console);
        page.Title($"{book.Vocabulary.Topics[topic].Title}: one line a change, oldest first");
        foreach (var change in changes)
            page.Item($"{Since(change)}  {change.Rule.Id}: {What(book, change)}", "", 0);
        foreach (var national in Adopted(book, topic, day))
        {
            page.Heading($"Positions on {national.Id} as on {Phrases.Day(day)}");
            foreach (var place in Below(book, national))
                page.Item($"{place.Id}: {History.Position(book, national, place, day)}");
        }

        return null;
    }

    /// <summary>The rules of nations that some jurisdiction adopts, announces, proposes or is measured by, as on a day.</summary>
    public static IEnumerable<Rule> Adopted(Book book, string topic, DateOnly day) =>
        book
            .Jurisdictions.Where(place => place.Within is null)
            .SelectMany(place => place.Rules)
            .Where(rule => rule.Topic == topic && Below(book, rule).Any(place => History.Position(book, rule, place, day) != "not"));

    public static IEnumerable<Jurisdiction> Below(Book book, Rule national) =>
        book.Jurisdictions.Where(place => place.Within == national.Jurisdiction);

    private static string Since(Change change) =>
        change.Since is { } since ? $"{since.Text, -13}"
        : change.SeenBy is { } seen ? $"by {seen.Text, -10}"
        : "no day       ";

    public static string What(Book book, Change change) =>
        change.Kind switch
        {
            ChangeKind.Adopted => $"adopts {change.Adopts} "
                + $"{(change.AsOf is { } asOf ? $"as it stood on {Phrases.Day(asOf)}" : "as amended")}"
                + $"{(change.Exceptions > 0 ? $", with {change.Exceptions} exception{(change.Exceptions == 1 ? "" : "s")}" : "")}",
            ChangeKind.NotEstablished => "in force, what it says is not established",
            ChangeKind.NotRegulated => "not regulated",
            ChangeKind.Ended => "ended",
            ChangeKind.Announced => $"announced, decides nothing: {Gives(book, change.Version)}",
            ChangeKind.Proposed => $"proposed, decides nothing: {Gives(book, change.Version)}",
            _ => Gives(book, change.Version),
        } + (change is { Version.WarningOnly: true, Kind: not ChangeKind.Ended } ? ", a breach brings a warning only" : "");

    private static string Gives(Book book, RuleVersion version) =>
        version.Content is Stated { Tiers.IsEmpty: true } all
            ? $"in every case {(all.Beyond is { } beyond ? Phrases.Pathway(beyond) : "not established")}"
            : FurthestLimits.Of(book, version);
}
