using System.Collections.Immutable;
using System.Text;
using RuleBook.Authoring.Resolved;
using RuleBook.Authoring.Walk;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Changes;

/// <summary>Compares the rules of one jurisdiction on one topic in two books, cell by cell.</summary>
internal sealed class Comparison(Book before, Book after, string jurisdiction, string topic)
{
    private readonly Vocabulary vocabulary = after.Vocabulary;
    private readonly HashSet<string> seen = [];

    /// <summary>The days to compare on: every edge of the rules that differ in either book.</summary>
    public IEnumerable<DateOnly> Days()
    {
        DateOnly[] days = [.. DayEdges.Of(before, Rules(before)), .. DayEdges.Of(after, Rules(after))];
        return days.Distinct().Order();
    }

    /// <summary>Where the rules that differ on a day give something else; nothing where only the wording differs.</summary>
    public IEnumerable<Difference> On(DateOnly day)
    {
        var (old, now) = (Meanings(before, day), Meanings(after, day));
        var differing = old.Keys.Union(now.Keys).Where(rule => old.GetValueOrDefault(rule) != now.GetValueOrDefault(rule)).ToHashSet();
        if (differing.Count == 0 || !seen.Add(string.Join('\n', differing.Order(StringComparer.Ordinal).Select(rule => $"{rule}\n{old.GetValueOrDefault(rule)}\n{now.GetValueOrDefault(rule)}"))))
            return [];
        var (left, right) = (Slice(before, day, differing), Slice(after, day, differing));
        return Differences(left, right, new Space(vocabulary, jurisdiction, day, [.. left.Versions, .. right.Versions]));
    }

    private static IEnumerable<Difference> Differences(Slice left, Slice right, Space space)
    {
        foreach (var condition in (ImmutableArray<string?>)[null, .. space.Conditions])
            foreach (var words in space.Words)
                foreach (var point in space.Points)
                {
                    var facts = space.Facts(words, point);
                    if (condition is not null) facts = Space.NotShown(facts, condition);
                    var (old, now) = (left.Try(facts), right.Try(facts));
                    if (old != now) yield return new Difference(space.Witness(words, point, condition is null ? [] : [condition]), old, now);
                }
    }

    private Slice Slice(Book book, DateOnly day, HashSet<string> rules) => book.Jurisdiction(jurisdiction) is { } place
        ? Walk.Slice.Of(book, place, topic, day, rule => rules.Contains(rule.Id) && !rule.GovernedByTravel)
        : new Slice(jurisdiction, topic, day, []);

    private IEnumerable<Rule> Rules(Book book) => book.Jurisdiction(jurisdiction)?.Rules.Where(rule => rule.Topic == topic && !rule.GovernedByTravel) ?? [];

    /// <summary>What each rule says on a day, in words that are the same whenever they mean the same.</summary>
    private Dictionary<string, string> Meanings(Book book, DateOnly day) => Rules(book).ToDictionary(rule => rule.Id, rule =>
    {
        var text = new StringBuilder(LimitWords.Of(rule.For, vocabulary)).Append('\n');
        foreach (var version in Resolver.Resolve(book, rule, day))
        {
            text.Append(string.Join(' ', version.Parts)).Append('\n');
            VersionWords.Content(text, version.Content, vocabulary);
        }

        return text.ToString();
    });
}
