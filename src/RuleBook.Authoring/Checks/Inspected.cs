using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>What the checks look at: the book, and where in its files each thing is written.</summary>
internal sealed class Inspected
{
    private readonly Dictionary<Mark, Mapping> _mappings = [];

    internal Inspected(Book book, IReadOnlyList<BookFile> files, DateOnly today)
    {
        (Book, Files, Today) = (book, files, today);
        foreach (var file in files)
            Note(WrittenOut.Of(file, []).Root);
    }

    internal Book Book { get; }

    internal IReadOnlyList<BookFile> Files { get; }

    internal DateOnly Today { get; }

    /// <summary>What adoptions of a rule as on a day take over, as far as it was looked for.</summary>
    internal Dictionary<(string Rule, DateOnly? AsOf), ImmutableArray<Tier>> AdoptedTiers { get; } = [];

    internal IEnumerable<Rule> Rules => Book.Jurisdictions.SelectMany(jurisdiction => jurisdiction.Rules);

    internal IEnumerable<(Rule Rule, RuleVersion Version)> Versions =>
        Rules.SelectMany(rule => rule.Versions.Select(version => (rule, version)));

    internal IEnumerable<(Jurisdiction Jurisdiction, SchemeVersion Version)> SchemeVersions =>
        Book.Jurisdictions.SelectMany(place => place.Schemes.SelectMany(scheme => scheme.Versions.Select(version => (place, version))));

    /// <summary>Every list of tiers: those of a version, and each tier that an exception adds.</summary>
    internal IEnumerable<ImmutableArray<Tier>> TierLists =>
        Versions.SelectMany(pair =>
            pair.Version.Content switch
            {
                Stated stated => [stated.Tiers],
                Adoption adoption => adoption
                    .Exceptions.Where(change => change.Added is not null)
                    .Select(change => ImmutableArray.Create(change.Added!)),
                _ => (IEnumerable<ImmutableArray<Tier>>)[],
            }
        );

    internal IEnumerable<(Rule Rule, RuleVersion Version, Adoption Adoption)> Adoptions =>
        Versions.Where(pair => pair.Version.Content is Adoption).Select(pair => (pair.Rule, pair.Version, (Adoption)pair.Version.Content));

    /// <summary>Each end of a limit, or of a test of what opens a tier or of whom a rule binds, with the place of its measure.</summary>
    internal IEnumerable<(string Measure, Bound Bound, Mark Mark)> Figures
    {
        get
        {
            var tiers = TierLists.SelectMany(tiers => tiers).ToArray();
            var limits = tiers
                .SelectMany(tier => tier.Limits)
                .Concat(Adoptions.SelectMany(pair => pair.Adoption.Exceptions).SelectMany(change => change.Limits));
            var tests = tiers
                .Select(tier => tier.When)
                .Concat(Rules.SelectMany(rule => rule.For.AnyOf))
                .SelectMany(predicate => predicate.Tests);
            return limits
                .Select(limit => (limit.Measure, limit.Bounds, limit.Mark))
                .Concat(tests.Select(test => (test.Fact, test.Bounds, test.Mark)))
                .SelectMany(range =>
                    new[] { range.Bounds?.Lower, range.Bounds?.Upper }.OfType<Bound>().Select(bound => (range.Item1, bound, range.Mark))
                );
        }
    }

    /// <summary>The key inside the mapping that starts at <paramref name="mapping"/>; the mapping itself where it lacks the key.</summary>
    internal Mark Key(Mark mapping, string key) => Entry(mapping, key)?.Key.Mark ?? mapping;

    /// <summary>The value under the key; the mapping itself where it lacks the key.</summary>
    internal Mark Value(Mark mapping, string key) => Entry(mapping, key)?.Value.Mark ?? mapping;

    /// <summary>Whether the mapping there has the key.</summary>
    internal bool Has(Mark mapping, string key) => Entry(mapping, key) is not null;

    /// <summary>The scalar under the key as written, or null.</summary>
    internal string? Text(Mark mapping, string key) => (Entry(mapping, key)?.Value as Scalar)?.Text;

    /// <summary>The place of one word of the list (or the single word) under the key.</summary>
    internal Mark Word(Mark mapping, string key, string word) =>
        Entry(mapping, key)?.Value switch
        {
            Sequence list => list.Items.FirstOrDefault(item => item is Scalar scalar && scalar.Text == word)?.Mark ?? list.Mark,
            { } single => single.Mark,
            null => mapping,
        };

    private KeyValuePair<Scalar, Node>? Entry(Mark mapping, string key) =>
        _mappings.TryGetValue(mapping, out var found)
        && found.Entries.FirstOrDefault(entry => entry.Key.Text == key) is { Key: not null } entry
            ? entry
            : null;

    private void Note(Node node)
    {
        if (node is Sequence list)
        {
            foreach (var item in list.Items)
                Note(item);
        }
        else if (node is Mapping keys)
        {
            _mappings[keys.Mark] = keys;
            foreach (var entry in keys.Entries)
                Note(entry.Value);
        }
    }
}
