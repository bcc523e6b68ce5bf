using RuleBook.Law;
using RuleBook.Site.Views;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>A national rule and what each state makes of it.</summary>
internal sealed record AdoptionBoard(string Title, string Url, string Id, BoardRow[] Rows)
{
    public static AdoptionBoard[] Of(SiteBook site, Topic topic) =>
        [
            .. site
                .Places.Where(place => place.Within is null)
                .SelectMany(place => place.Rules.Where(rule => rule.Topic == topic.Name).Select(rule => (place, rule)))
                .Select(pair => new AdoptionBoard(
                    pair.rule.Title,
                    Links.Rule(pair.rule),
                    pair.rule.Id,
                    [.. site.Places.Where(state => state.Within == pair.place.Id).SelectMany(state => BoardRow.Of(site, state, pair.rule))]
                ))
                .Where(board => board.Rows.Any(row => row.State != "no-adoption")),
        ];
}

/// <summary>What a state makes of a national rule.</summary>
/// <param name="Place">The state.</param>
/// <param name="State">in-force, ended, announced, proposed or no-adoption.</param>
/// <param name="Words">As a reader reads it.</param>
/// <param name="Since">Since when, or for when.</param>
/// <param name="How">As amended, or as it stood on a day.</param>
/// <param name="Exceptions">What the state changes.</param>
/// <param name="Url">To the state's rule.</param>
internal sealed record BoardRow(string Place, string State, string Words, string Since, string How, string[] Exceptions, string Url)
{
    public static IEnumerable<BoardRow> Of(SiteBook site, Jurisdiction state, Rule national)
    {
        var adoptions = state
            .Rules.SelectMany(rule => rule.Versions.Select((version, i) => (rule, version, next: rule.Versions.ElementAtOrDefault(i + 1))))
            .Where(each => each.version.Content is Adoption adoption && site.Book.Rule(adoption.Rule)?.Id == national.Id)
            .Select(each => Of(site, state, each.rule, each.version, each.next, (Adoption)each.version.Content))
            .ToArray();
        return adoptions.Length > 0
            ? adoptions
            : [new BoardRow(state.Name, "no-adoption", "no adoption in the book", "", "", [], Links.Jurisdiction(state.Id))];
    }

    private static BoardRow Of(SiteBook site, Jurisdiction state, Rule rule, RuleVersion version, RuleVersion? next, Adoption adoption)
    {
        var end = version.Until ?? (next is { Decides: true } ? next.From : null);
        var (word, words) = version switch
        {
            { Proposed: true } => ("proposed", "proposed"),
            { Announced: not null } => ("announced", "announced"),
            { From: { } from } when from.Earliest > site.Day => ("announced", "to come"),
            _ when end is { } ended && ended.Latest <= site.Day => ("ended", $"ended {ended.Words}"),
            _ => ("in-force", "in force"),
        };
        return new BoardRow(
            state.Name,
            word,
            words,
            HistoryView.DateOf(version),
            adoption.AsOf is { } day ? $"as it stood on {Phrases.Day(day)}" : "as amended from time to time",
            [.. adoption.Exceptions.Select(change => Summary.Of(site, change))],
            Links.Version(rule, version)
        );
    }
}
