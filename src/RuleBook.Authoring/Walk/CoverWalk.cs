using System.Collections.Immutable;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>Looks for a vehicle that no rule of a topic binds, on any day on which some version of the topic is recorded.</summary>
internal static class CoverWalk
{
    private const string Category = KnownWords.Category;

    /// <summary>
    /// The words that some rule of the book names; of a category that none names, such as one of heavy vehicles, the book does not speak.
    /// </summary>
    public static ImmutableHashSet<string> Named(Book book) =>
        [
            .. book
                .Jurisdictions.SelectMany(place => place.Rules)
                .SelectMany(rule => rule.For.Tests)
                .Where(test => test.Fact == Category)
                .SelectMany(test => test.OneOf),
        ];

    public static IEnumerable<WalkFault> Faults(Book book, Jurisdiction place, string topic, ImmutableHashSet<string> named)
    {
        var rules = place
            .Rules.Where(rule => rule.Topic == topic && !rule.GovernedByTravel && rule.Versions.Any(version => version.Decides))
            .ToArray();
        var day = DayEdges.Of(book, rules)[^1];
        var slice = Slice.Of(book, place, topic, day, rules.Contains);
        ResolvedVersion[] scopes = [.. slice.Rules.Select(candidates => candidates[0] with { Content = new NotRegulated("") })];
        var space = new Space(book.Vocabulary, place.Id, day, scopes);
        var row = new PointRow(book.Vocabulary, space.Axes, scopes.Select(scope => ImmutableArray.Create(scope)));
        var moved = book.Vocabulary.Naming(topic).Select(measure => measure.Name).ToHashSet();
        foreach (var words in Vehicles(book, space.Words, named))
        {
            row.Put(words);
            foreach (var point in space.Points.Where(point => Touches(moved, space, point)))
            {
                row.Put(point);
                if (Enumerable.Range(0, scopes.Length).All(scope => row.Table.Judge(scope, row.Row).Binds == Truth.No))
                {
                    yield return new WalkFault(
                        FaultKind.NotCovered,
                        $"{place.Id}/{topic}",
                        rules[0].Mark,
                        $"no rule covers {Describe(words)}",
                        space.Witness(words, point)
                    );
                    break;
                }
            }
        }
    }

    /// <summary>Every combination of words, category by category where a rule tells categories apart.</summary>
    private static IEnumerable<ImmutableDictionary<string, string>> Vehicles(
        Book book,
        ImmutableArray<ImmutableDictionary<string, string>> words,
        ImmutableHashSet<string> named
    ) =>
        !words[0].ContainsKey(Category)
            ? words
            : words
                .Select(combination => combination.Remove(Category))
                .DistinctBy(rest => string.Join(' ', rest.OrderBy(pair => pair.Key, StringComparer.Ordinal)))
                .SelectMany(rest =>
                    book.Vocabulary.Facts[Category].Values.Where(one => named.Contains(one)).Select(one => rest.SetItem(Category, one))
                );

    private static bool Touches(HashSet<string> moved, Space space, Fraction[] point) =>
        !space.Axes.Measures.Any(measure => moved.Contains(measure.Name))
        || point.Where((value, axis) => !value.IsZero && moved.Contains(space.Axes.Measures[axis].Name)).Any();

    private static string Describe(ImmutableDictionary<string, string> words) =>
        words.IsEmpty
            ? "such a vehicle"
            : string.Join(", ", words.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key} {pair.Value}"));
}
