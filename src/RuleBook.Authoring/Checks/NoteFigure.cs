using System.Text.RegularExpressions;
using Fractions;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>A figure with its unit in a note, of which no limit or test of the version knows.</summary>
internal static partial class NoteFigure
{
    /// <summary>How a sentence begins that tells a figure by which the book does not judge.</summary>
    private const string Exempt = "Not judged";

    internal static readonly CheckInfo Info = new(
        "note-figure",
        "a note has a figure that no limit has",
        "What stands in a note alone is judged by nobody.",
        "write it as a limit, a test or a condition with its figure; where the book does not judge by it, begin the sentence with "
            + $"'{Exempt}'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from topic in book.Rules.GroupBy(rule => (rule.Jurisdiction, rule.Topic))
        let known = new Lazy<HashSet<(Dimension, Fraction)>>(() =>
            [.. Beside(book.Book, topic.Key).SelectMany(rule => Judged(book.Book, rule))]
        )
        from version in topic.SelectMany(rule => rule.Versions)
        from note in Notes(version)
        from figure in Sentence()
            .Split(note.Text)
            .Where(sentence => !sentence.StartsWith(Exempt, StringComparison.Ordinal))
            .SelectMany(sentence => Figures(sentence))
        where !known.Value.Contains((figure.Unit.Dimension, figure.Base))
        group figure.ToString() by book.Value(note.Mark, "note") into place
        select Info.At(place.Key, $"{string.Join(", ", place.Distinct())}: is this a limit?");

    private static IEnumerable<(string Text, Mark Mark)> Notes(RuleVersion version) =>
        from note in Departures(version)
            .Select(change => (change.Note, change.Mark))
            .Concat(Tiers(version).Select(tier => (tier.Note, tier.Mark)))
            .Append((version.Note, version.Mark))
        where note.Note is not null
        select (note.Note, note.Mark);

    /// <summary>The rules on the topic of the place and of the nation above it.</summary>
    private static IEnumerable<Rule> Beside(Book book, (string Place, string Topic) key) =>
        new[] { key.Place, book.Jurisdiction(key.Place)?.Within }
            .OfType<string>()
            .Select(book.Jurisdiction)
            .OfType<Jurisdiction>()
            .SelectMany(place => place.Rules)
            .Where(rule => rule.Topic == key.Topic);

    /// <summary>The figures that a rule judges by: of limits and tests, and those that its conditions name.</summary>
    private static IEnumerable<(Dimension, Fraction)> Judged(Book book, Rule rule)
    {
        var (tiers, changes) = (rule.Versions.SelectMany(Tiers).ToArray(), rule.Versions.SelectMany(Departures).ToArray());
        var limits = tiers.SelectMany(tier => tier.Limits).Concat(changes.SelectMany(change => change.Limits));
        var tests = tiers
            .Select(tier => tier.When)
            .Concat(changes.Select(change => change.When).OfType<Predicate>())
            .Concat(rule.For.AnyOf)
            .SelectMany(predicate => predicate.Tests);
        return limits
            .Select(limit => (limit.Measure, limit.Bounds))
            .Concat(tests.Select(test => (Measure: test.Fact, test.Bounds)))
            .SelectMany(range => new[] { range.Bounds?.Lower, range.Bounds?.Upper }.OfType<Bound>().Select(bound => (range.Measure, bound)))
            .Where(end => book.Vocabulary.Measures[end.Measure] is { IsDate: false })
            .Select(end => (book.Vocabulary.Measures[end.Measure].Unit.Dimension, end.bound.Value))
            .Concat(
                tiers
                    .SelectMany(tier => tier.Provided)
                    .Concat(changes.SelectMany(change => change.Provided ?? []))
                    .Select(name => book.Vocabulary.Conditions[name])
                    .SelectMany(condition => Figures($"{condition.Title} {condition.Definition}"))
                    .Select(figure => (figure.Unit.Dimension, figure.Base))
            );
    }

    private static IEnumerable<Tier> Tiers(RuleVersion version) =>
        (version.Content as Stated)?.Tiers ?? Departures(version).Select(change => change.Added).OfType<Tier>();

    private static IEnumerable<Departure> Departures(RuleVersion version) =>
        version.Like?.Changes ?? (version.Content as Adoption)?.Exceptions ?? [];

    /// <summary>The lengths, masses and shares that a text names.</summary>
    /// <param name="text">The text.</param>
    /// <param name="after">What has to stand before each.</param>
    internal static IEnumerable<Quantity> Figures(string text, string after = "") =>
        Written()
            .Matches(text)
            .Where(match => text.AsSpan(0, match.Index).EndsWith(after))
            .Select(match => Quantity.TryParse(match.Value, out var read, out _) ? read : null)
            .OfType<Quantity>();

    [GeneratedRegex(@"(?<![\w.,-])[0-9]+(\.[0-9]+)? (mm|cm|m|in|kg|t|lb|%)(?![\w-])")]
    private static partial Regex Written();

    [GeneratedRegex(@"(?<=[.;:])\s+(?=[A-Z])")]
    private static partial Regex Sentence();
}
