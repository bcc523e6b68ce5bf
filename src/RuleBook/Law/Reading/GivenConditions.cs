using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>
/// Finds the conditions that the rules of a book make out of those of the vocabulary: one with a figure
/// (<c>{ bumper-bar-height: 4.5 in }</c>), and several of which one has to be shown (<c>{ any-of: [lane-change-test, brake-test] }</c>).
/// </summary>
/// <param name="plain">The conditions of the vocabulary that take no figure.</param>
/// <param name="figured">Those that take one.</param>
internal sealed class GivenConditions(IReadOnlyDictionary<string, Term> plain, IReadOnlyDictionary<string, FiguredCondition> figured)
{
    /// <summary>The key of several conditions of which one has to be shown.</summary>
    public const string AnyOf = "any-of";

    /// <summary>What those are called together: <c>lane-change-test-or-brake-test</c>.</summary>
    public static string Name(IEnumerable<string> members) => string.Join("-or-", members);

    /// <summary>Each once.</summary>
    public IEnumerable<Term> In(IEnumerable<BookFile> files) =>
        files
            .Where(file => file.Path.StartsWith("jurisdictions/", StringComparison.Ordinal))
            .SelectMany(file => Under(file.Root))
            .DistinctBy(term => term.Name);

    private IEnumerable<Term> Under(Node node) =>
        node switch
        {
            Mapping map => map.Entries.SelectMany(entry =>
                entry.Key.Text == "provided"
                    ? (entry.Value is Sequence list ? [.. list.Items] : ImmutableArray.Create(entry.Value)).SelectMany(Made)
                    : Under(entry.Value)
            ),
            Sequence list => list.Items.SelectMany(Under),
            _ => [],
        };

    /// <summary>What an entry makes, itself last; of a wrong one what is right in it.</summary>
    private IEnumerable<Term> Made(Node node)
    {
        if (node is not Mapping { Entries: [var (key, value)] })
            return [];
        if (value is Scalar figure)
            return
                figured.TryGetValue(key.Text, out var condition)
                && Quantity.TryParse(figure.Text, out var read, out _)
                && read.Unit.Dimension == condition.Dimension
                ? [condition.With(read)]
                : [];
        if (key.Text != AnyOf || value is not Sequence list)
            return [];
        Term[][] members =
        [
            .. list.Items.Select(item => item is Scalar name && plain.TryGetValue(name.Text, out var term) ? [term] : Made(item).ToArray()),
        ];
        IEnumerable<Term> all = members.SelectMany(made => made);
        return members.Length == 0 || members.Any(made => made.Length == 0)
            ? all
            : all.Append(Together([.. members.Select(made => made[^1])]));
    }

    private static Term Together(Term[] members) =>
        new(
            Name(members.Select(member => member.Name)),
            string.Join(", or ", members.Select(member => member.Title)),
            $"One of these is shown: {string.Join("; ", members.Select(member => member.Title))}.",
            members[0].Mark
        )
        {
            AnyOf = [.. members.SelectMany(member => member.AnyOf.IsEmpty ? [member.Name] : member.AnyOf)],
        };
}
