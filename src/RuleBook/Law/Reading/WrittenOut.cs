using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>
/// A file with all that it says once written out where it holds. What stands at the head of <c>sources.yaml</c> (<c>checked</c>,
/// <c>recheck-after</c>) or of a topic (<c>from</c>, <c>in-force-by</c>, <c>sources</c>, <c>measured</c>) holds for each source or version
/// that does not say it; a rule that states its content itself is one with a single version.
/// </summary>
internal static class WrittenOut
{
    private static readonly ImmutableArray<string> Starts = ["from", "announced", "proposed"];

    /// <summary>The keys of which a version has one.</summary>
    internal static readonly ImmutableArray<string> Contents = ["tiers", "adopts", "not-established", "not-regulated"];

    private static readonly ImmutableArray<string> OfRule = ["rule", "aliases", "title", "for", "decided-by", "governed-by"];

    private static readonly ImmutableArray<string> OfRuleOrVersion = ["sources", "measured"];

    /// <summary>The file as its readers take it.</summary>
    /// <param name="file">As written.</param>
    /// <param name="problems">Receives what stands at the head and holds for nothing.</param>
    public static BookFile Of(BookFile file, List<Problem> problems) =>
        file.Root is not Mapping root ? file
        : file.Path.EndsWith("/sources.yaml", StringComparison.Ordinal)
            ? file with
            {
                Root = Below(root, ["checked", "recheck-after"], "sources", problems, head => source => head.Complete(source)),
            }
        : root.Find("rules") is not null
            ? file with
            {
                Root = Below(
                    root,
                    [.. Starts[..1], "in-force-by", .. OfRuleOrVersion],
                    "rules",
                    problems,
                    head => rule => Rule(rule, head)
                ),
            }
        : file;

    /// <summary>Without the head, and with each item of the list as the head completes it.</summary>
    private static Mapping Below(
        Mapping root,
        ImmutableArray<string> keys,
        string list,
        List<Problem> problems,
        Func<Head, Func<Mapping, Mapping>> complete
    )
    {
        var head = new Head([.. root.Entries.Where(entry => keys.Contains(entry.Key.Text))]);
        var whole = root with
        {
            Entries =
            [
                .. root
                    .Entries.Where(entry => !keys.Contains(entry.Key.Text))
                    .Select(entry => entry.Key.Text == list ? KeyValuePair.Create(entry.Key, Each(entry.Value, complete(head))) : entry),
            ],
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

    private static Node Each(Node value, Func<Mapping, Mapping> complete) =>
        value switch
        {
            Sequence items => items with { Items = [.. items.Items.Select(item => Each(item, complete))] },
            Mapping item => complete(item),
            _ => value,
        };

    private static Mapping Rule(Mapping rule, Head head)
    {
        var single = Single(rule);
        string[] said = [.. OfRuleOrVersion.Where(key => single.Find(key) is not null)];
        return single with
        {
            Entries =
            [
                .. single.Entries.Select(entry =>
                    entry.Key.Text == "versions"
                        ? KeyValuePair.Create(entry.Key, Each(entry.Value, version => Version(version, head, said)))
                        : entry
                ),
            ],
        };
    }

    /// <summary>A rule that states its content itself, with that as its only version.</summary>
    private static Mapping Single(Mapping rule)
    {
        if (rule.Find("versions") is not null || !Says(rule, Contents))
            return rule;
        var (own, of) = (rule.Entries.Where(Stays), rule.Entries.Where(entry => !Stays(entry)).ToImmutableArray());
        var mark = of[0].Key.Mark;
        return rule with { Entries = [.. own, KeyValuePair.Create(new Scalar("versions", mark), (Node)new Mapping(of, mark))] };

        static bool Stays(KeyValuePair<Scalar, Node> entry) => OfRule.Contains(entry.Key.Text);
    }

    /// <summary>
    /// A version that says its own start cites its own sources: those at the head tell of the start that stands beside them.
    /// </summary>
    private static Mapping Version(Mapping version, Head head, string[] said)
    {
        string[] wanted =
        [
            .. Says(version, Starts) ? [] : (string[])["from", "in-force-by", "sources"],
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
