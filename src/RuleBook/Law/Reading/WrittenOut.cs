using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>
/// A file with all that it says once written out where it holds. What stands at the head of <c>sources.yaml</c> (<c>checked</c>,
/// <c>recheck-after</c>) or of a topic (<c>from</c>, <c>in-force-by</c>, <c>sources</c>, <c>measured</c>) holds for each source or version
/// that does not say it; a rule is <c>like</c> one above it in all that it leaves out; a rule that states its content itself says its
/// first version.
/// </summary>
internal static class WrittenOut
{
    private static readonly ImmutableArray<string> Starts = ["from", "announced", "proposed"];

    /// <summary>The keys of which a version has one.</summary>
    internal static readonly ImmutableArray<string> Contents = ["tiers", "adopts", "not-established", "not-regulated"];

    private static readonly ImmutableArray<string> OfRule =
    [
        "rule",
        "aliases",
        "title",
        "for",
        "like",
        "decided-by",
        "governed-by",
        "notes",
    ];

    private static readonly ImmutableArray<string> OfRuleOrVersion = ["sources", "measured"];

    /// <summary>What stands at the head of a topic.</summary>
    internal static readonly ImmutableArray<string> OfFile = ["from", "in-force-by", .. OfRuleOrVersion];

    /// <summary>What a rule has for itself, whichever it is like.</summary>
    private static readonly ImmutableArray<string> OfNoOther = ["rule", "aliases", "title", "for"];

    /// <summary>
    /// What goes with a content: a rule that states its own takes none of these over. What was read for another's figures carries none of
    /// its own.
    /// </summary>
    private static readonly ImmutableArray<string> WithContent =
    [
        .. Contents,
        "beyond",
        "except",
        "warning-only",
        "sources",
        "disputed",
        "notes",
        "corrected",
        "versions",
        "later",
    ];

    /// <summary>The file as its readers take it.</summary>
    /// <param name="file">As written.</param>
    /// <param name="problems">Receives what stands at the head and holds for nothing.</param>
    public static BookFile Of(BookFile file, List<Problem> problems)
    {
        if (file.Root is not Mapping root)
            return file;
        if (file.Path.EndsWith("/sources.yaml", StringComparison.Ordinal))
            return file with
            {
                Root = Below(root, ["checked", "recheck-after"], "sources", problems, (source, head) => head.Complete(source)),
            };
        if (root.Find("rules") is null)
            return file;
        var above = new Dictionary<string, Mapping>(StringComparer.Ordinal);
        return file with
        {
            Root = Below(root, OfFile, "rules", problems, (rule, head) => Rule(Like(rule, above, problems), head)),
            Head = [.. OfFile.Select(root.Find).OfType<Node>()],
        };
    }

    /// <summary>Without the head, and with each item of the list as the head completes it.</summary>
    private static Mapping Below(
        Mapping root,
        ImmutableArray<string> keys,
        string list,
        List<Problem> problems,
        Func<Mapping, Head, Mapping> complete
    )
    {
        var head = new Head([.. root.Entries.Where(entry => keys.Contains(entry.Key.Text))]);
        var body = root.Entries.Where(entry => !keys.Contains(entry.Key.Text));
        var whole = root with
        {
            Entries = [.. body.Select(entry => entry.Key.Text == list ? With(entry, item => complete(item, head)) : entry)],
        };
        problems.AddRange(
            head.Idle.Select(key =>
                Problem.Error(
                    "key-without-effect",
                    key.Mark,
                    $"'{key.Text}' does nothing here: nothing below leaves it to the head of the file",
                    "take it out, or take it out of what says it again"
                )
            )
        );
        return whole;
    }

    private static KeyValuePair<Scalar, Node> With(KeyValuePair<Scalar, Node> list, Func<Mapping, Mapping> complete) =>
        KeyValuePair.Create(list.Key, Each(list.Value, complete));

    private static Node Each(Node value, Func<Mapping, Mapping> complete) =>
        value switch
        {
            Sequence items => items with { Items = [.. items.Items.Select(item => Each(item, complete))] },
            Mapping item => complete(item),
            _ => value,
        };

    /// <summary>A rule with what it takes from one above; <c>like</c> stays where it names none.</summary>
    private static Mapping Like(Mapping rule, Dictionary<string, Mapping> above, List<Problem> problems)
    {
        if (rule.Find("like") is Scalar like && above.TryGetValue(like.Text.Trim(), out var model))
        {
            var states = Says(rule, [.. Contents, "versions"]);
            var taken = model
                .Entries.Where(entry => rule.Find(entry.Key.Text) is null && !OfNoOther.Contains(entry.Key.Text))
                .Where(entry => !states || !WithContent.Contains(entry.Key.Text))
                .ToArray();
            if (taken is [])
                problems.Add(
                    Problem.Error(
                        "key-without-effect",
                        like.Mark,
                        "'like' does nothing here: the rule says everything itself",
                        "take it out"
                    )
                );
            rule = rule with { Entries = [.. rule.Entries.Where(entry => entry.Value != like), .. taken] };
        }

        if (rule.Find("rule") is Scalar name)
            above.TryAdd(name.Text.Trim(), rule);
        return rule;
    }

    private static Mapping Rule(Mapping rule, Head head)
    {
        var single = Single(rule);
        string[] said = [.. OfRuleOrVersion.Where(key => single.Find(key) is not null)];
        var first = (single.Find("versions") as Sequence)?.Items.FirstOrDefault();
        return single with
        {
            Entries =
            [
                .. single.Entries.Select(entry =>
                    entry.Key.Text == "versions"
                        ? With(entry, version => Version(version, ReferenceEquals(version, first), head, said))
                        : entry
                ),
            ],
        };
    }

    /// <summary>A rule that states its content itself, with that as its first version, before the later ones.</summary>
    private static Mapping Single(Mapping rule)
    {
        if (rule.Find("versions") is not null || !Says(rule, Contents))
            return rule;
        var own = rule.Entries.Where(entry => OfRule.Contains(entry.Key.Text));
        var of = rule.Entries.Where(entry => !OfRule.Contains(entry.Key.Text) && entry.Key.Text != "later").ToImmutableArray();
        var mark = of[0].Key.Mark;
        var later = rule.Find("later") is { } after
            ? after is Sequence list
                ? list.Items
                : [after]
            : [];
        var versions = new Sequence([new Mapping(of, mark), .. later], mark);
        return rule with { Entries = [.. own, KeyValuePair.Create(new Scalar("versions", mark), (Node)versions)] };
    }

    /// <summary>
    /// A version that says its own start cites its own sources: those at the head tell of the start that stands beside them. What comes
    /// after the first version starts on a day of its own, and without one it would take that version's place.
    /// </summary>
    private static Mapping Version(Mapping version, bool first, Head head, string[] said)
    {
        string[] wanted =
        [
            .. !first || Says(version, Starts) ? [] : (string[])["from", "in-force-by", "sources"],
            .. version.Find("tiers") is not null ? (string[])["measured"] : [],
        ];
        return head.Complete(version, key => wanted.Contains(key) && !said.Contains(key));
    }

    private static bool Says(Mapping mapping, ImmutableArray<string> keys) => keys.Any(key => mapping.Find(key) is not null);

    /// <summary>What stands at the head, and which of it nothing has taken yet.</summary>
    private sealed class Head(ImmutableArray<KeyValuePair<Scalar, Node>> entries)
    {
        private readonly HashSet<string> taken = [];

        public ImmutableArray<KeyValuePair<Scalar, Node>> Entries => entries;

        public IEnumerable<Scalar> Idle => entries.Select(entry => entry.Key).Where(key => !taken.Contains(key.Text));

        public Mapping Complete(Mapping item, Func<string, bool>? wants = null)
        {
            var lacking = entries.Where(entry => item.Find(entry.Key.Text) is null && wants?.Invoke(entry.Key.Text) != false).ToArray();
            taken.UnionWith(lacking.Select(entry => entry.Key.Text));
            return lacking is [] ? item : item with { Entries = [.. item.Entries, .. lacking] };
        }
    }
}
