using RuleBook.Authoring.Skeletons;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Skeletons;

/// <summary>
/// What stands in a file to start from, line by line but for its comments, and what is said where none is made (derived).
/// </summary>
[Trait("Basis", "derived")]
public sealed class SkeletonTests : IDisposable
{
    private static readonly DateOnly Today = new(2026, 11, 28);
    private readonly TemporaryFolder folder = new();

    public SkeletonTests()
    {
        Directory.CreateDirectory(Path.Combine(folder.Path, "jurisdictions", "xa-n"));
        Directory.CreateDirectory(Path.Combine(folder.Path, "tests", "cases"));
    }

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("xa", "within: xa\n")]
    [InlineData(null, "")]
    public void A_jurisdiction_begins_with_its_name_whom_to_ask_and_nothing_collected(string? within, string line)
    {
        Skeleton
            .Jurisdiction(folder.Path, InventedBook.Book, "xa-w", "The \"wild\" west", "The office", within, Today)
            .ShouldBe(["jurisdictions/xa-w/jurisdiction.yaml", "jurisdictions/xa-w/sources.yaml"]);

        Said("jurisdictions/xa-w/jurisdiction.yaml")
            .ShouldBe(
                $"jurisdiction: xa-w\nname: \"The \\\"wild\\\" west\"\n{line}registers: yes\nask:\n  authority: \"The office\"\n"
                    + "coverage:\n  - { topic: other, state: none, lacks: Nothing collected. }\n"
            );
        Said("jurisdictions/xa-w/sources.yaml").ShouldBe("jurisdiction: xa-w\nsources: []\n");
        Text("jurisdictions/xa-w/sources.yaml").ShouldContain("checked: 2026-11-28 ");
        Text("jurisdictions/xa-w/sources.yaml").ShouldContain("recheck-after: 2027-11-28 ");
        Directory.GetFileSystemEntries(folder.Path).Length.ShouldBe(2); // nothing is left aside
    }

    /// <summary>A folder that no book has read, as one without a file.</summary>
    [Fact]
    public void A_jurisdiction_is_not_put_over_a_folder_that_is_there_and_nothing_is_left_aside()
    {
        folder.Write("jurisdictions/xa-w/notes.txt", "mine");
        Should.Throw<IOException>(() => Skeleton.Jurisdiction(folder.Path, InventedBook.Book, "xa-w", "N", "A", null, Today));
        Written().ShouldBe([Path.Combine(folder.Path, "jurisdictions", "xa-w", "notes.txt")]);
        Directory.GetDirectories(folder.Path).Length.ShouldBe(2);
    }

    [Fact]
    public void A_rule_begins_as_not_established_and_seen_in_force_today_with_a_case_that_says_so()
    {
        Skeleton
            .Rule(folder.Path, InventedBook.Book, "xa-n/towing/hitch", "Hitches", "act", Today)
            .ShouldBe(["jurisdictions/xa-n/towing.yaml", "tests/cases/xa-n/towing.yaml"]);

        const string rule =
            "  - rule: hitch\n    title: \"Hitches\"\n    versions:\n      - from: unknown\n        in-force-by: 2026-11-28\n"
            + "        sources: [ { cite: act, carries: existence } ]\n        not-established:\n          ask: \"The northern office\"\n";
        Said("jurisdictions/xa-n/towing.yaml").ShouldBe($"jurisdiction: xa-n\ntopic: towing\nrules:\n{rule}");
        Said("tests/cases/xa-n/towing.yaml")
            .ShouldBe(
                "vehicles:\n  wagon: { four-wheel-drive: yes }\ncases:\n  - id: hitch\n"
                    + "    says: The rule is there; what it allows is not established.\n    vehicle: wagon\n"
                    + "    changes: { modification: { suspension-lift: 50 mm } }\n    on: [ 2026-11-28 ]\n"
                    + "    expect: { verdict: undecided }\n    because: { source: act }\n"
            );

        Skeleton
            .Rule(folder.Path, InventedBook.Book, "xa-n/towing/plate", "Plates", "act", Today)
            .ShouldBe(["jurisdictions/xa-n/towing.yaml"]); // the case is there
        Said("jurisdictions/xa-n/towing.yaml")
            .ShouldBe(
                $"jurisdiction: xa-n\ntopic: towing\nrules:\n{rule}"
                    + rule.Replace("hitch", "plate", StringComparison.Ordinal).Replace("Hitches", "Plates", StringComparison.Ordinal)
            );
    }

    [Fact]
    public void A_rule_gets_no_case_where_a_book_has_none()
    {
        Directory.Delete(Path.Combine(folder.Path, "tests"), recursive: true);
        Skeleton
            .Rule(folder.Path, InventedBook.Book, "xa-n/towing/hitch", "Hitches", "act", Today)
            .ShouldBe(["jurisdictions/xa-n/towing.yaml"]);
        Directory.Exists(Path.Combine(folder.Path, "tests")).ShouldBeFalse();
    }

    [Theory]
    [InlineData("rules:\n  - rule: a\nafter: 1\n")]
    [InlineData("rules: []\n")]
    [InlineData("rules:\n- rule: a\n")]
    [InlineData("- rules\n")]
    public void A_file_that_does_not_end_in_its_rules_is_left_as_it_is(string text)
    {
        folder.Write("jurisdictions/xa-n/towing.yaml", text);
        Refused(() => Skeleton.Rule(folder.Path, InventedBook.Book, "xa-n/towing/hitch", "Hitches", "act", Today))
            .ShouldBe(
                "jurisdictions/xa-n/towing.yaml:1:1: error wrong-shape: the file does not end in its list of rules (let 'rules:' be its "
                    + "last key, written line by line)"
            );
        Text("jurisdictions/xa-n/towing.yaml").ShouldBe(text);
    }

    [Theory]
    [InlineData(
        "XA",
        null,
        "ID:1:1: error bad-id: 'XA' is no id of a jurisdiction (write small letters: a nation as nz, a part of one as au-qld)"
    )]
    [InlineData(
        "xa-north",
        null,
        "ID:1:1: error bad-id: 'xa-north' is no id of a jurisdiction (write small letters: a nation as nz, a part of one as au-qld)"
    )]
    [InlineData("xa-n", null, "ID:1:1: error duplicate-jurisdiction: 'xa-n' is in the book already (edit its files, or choose another id)")]
    [InlineData("xa-w", "xaa", "--within:1:1: error unknown-jurisdiction: 'xaa' is not a jurisdiction of the book (did you mean 'xa'?)")]
    public void A_jurisdiction_that_cannot_be_made_is_refused_with_what_would_be_right(string id, string? within, string told)
    {
        Refused(() => Skeleton.Jurisdiction(folder.Path, InventedBook.Book, id, "N", "A", within, Today)).ShouldBe(told);
        Written().ShouldBeEmpty();
    }

    [Theory]
    [InlineData(
        "xa-n/towing",
        "act",
        "ID:1:1: error bad-id: 'xa-n/towing' is no id of a rule (write PLACE/TOPIC/NAME, such as au-qld/ride-height/raise-four-wheel-drive)"
    )]
    [InlineData(
        "xa-n/towing/A b",
        "act",
        "ID:1:1: error bad-id: 'xa-n/towing/A b' is no id of a rule (write PLACE/TOPIC/NAME, such as "
            + "au-qld/ride-height/raise-four-wheel-drive)"
    )]
    [InlineData(
        "xa-nn/towing/a",
        "act",
        "ID:1:1: error unknown-jurisdiction: 'xa-nn' is not a jurisdiction of the book (did you mean 'xa-n'?)"
    )]
    [InlineData("xa-n/towin/a", "act", "ID:1:1: error unknown-topic: 'towin' is not a topic (did you mean 'towing'?)")]
    [InlineData(
        "xa-n/ride-height/swap",
        "act",
        "ID:1:1: error duplicate-rule: 'xa-n/ride-height/swap' is in the book already (add a version to it, or choose another name)"
    )]
    [InlineData(
        "xa-n/towing/a",
        "bill",
        "--source:1:1: error unknown-source: no source 'bill' is listed (list it in jurisdictions/xa-n/sources.yaml first)"
    )]
    public void A_rule_that_cannot_be_made_is_refused_with_what_would_be_right(string id, string source, string told)
    {
        Refused(() => Skeleton.Rule(folder.Path, InventedBook.Book, id, "T", source, Today)).ShouldBe(told);
        Written().ShouldBeEmpty();
    }

    private string[] Written() => Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories);

    private static string Refused(Action make) => Should.Throw<InputException>(make).Problems.ShouldHaveSingleItem().ToString();

    private string Text(string path) => File.ReadAllText(Path.Combine(folder.Path, path));

    /// <summary>The lines that say something, without what stands behind them for a reader.</summary>
    private string Said(string path) =>
        string.Concat(
            Text(path).Split('\n').Select(line => line.Split('#')[0].TrimEnd()).Where(line => line.Length > 0).Select(line => $"{line}\n")
        );
}
