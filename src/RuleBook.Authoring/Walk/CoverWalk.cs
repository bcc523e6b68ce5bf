using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.Resolved;
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
            foreach (
                var point in space.Points.Where(point =>
                    Touches(moved, space, point) && IsPossible(book.Vocabulary, words, space.Axes, point)
                )
            )
            {
                row.Put(point);
                if (Enumerable.Range(0, scopes.Length).All(scope => row.Table.Judge(scope, row.Row).Binds == Truth.No))
                {
                    yield return new WalkFault(
                        FaultKind.NotCovered,
                        $"{place.Id}/{topic}",
                        rules[0].Mark,
                        $"no rule on {topic} covers {Describe(words, space.Axes, point)}",
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

    /// <summary>Whether some vehicle of the category has the GVM.</summary>
    private static bool IsPossible(Vocabulary vocabulary, ImmutableDictionary<string, string> words, Axes axes, Fraction[] point) =>
        !words.TryGetValue(Category, out var category)
        || !vocabulary.CategoryGvms.TryGetValue(category, out var gvm)
        || axes.Measures.Zip(point)
            .All(pair => pair.First.Name != KnownWords.Gvm || !(pair.Second <= gvm.Over || pair.Second > gvm.AtMost));

    private static bool Touches(HashSet<string> moved, Space space, Fraction[] point) =>
        !space.Axes.Measures.Any(measure => moved.Contains(measure.Name))
        || point.Where((value, axis) => !value.IsZero && moved.Contains(space.Axes.Measures[axis].Name)).Any();

    /// <summary>The words, and the figures that do not change with the job.</summary>
    private static string Describe(ImmutableDictionary<string, string> words, Axes axes, Fraction[] point) =>
        string.Join(
            ", ",
            [
                .. words.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => $"{pair.Key} {pair.Value}"),
                .. axes
                    .Measures.Zip(point)
                    .Where(pair => pair.First.IfAbsent is null)
                    .Select(pair => $"{pair.First.Name} {LimitWords.Of(new Bound(pair.Second, true), pair.First)}"),
            ]
        )
            is { Length: > 0 } told
            ? told
            : "such a vehicle";
}
