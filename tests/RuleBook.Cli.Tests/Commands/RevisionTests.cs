using System.Diagnostics;
using System.Text.RegularExpressions;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Cli.Commands;
using RuleBook.Text;

namespace RuleBook.Cli.Tests.Commands;

/// <summary>A book and its cases by a revision of git are those of the folder that was committed; the book is the invented one.</summary>
public sealed class RevisionTests : IDisposable
{
    private const string Law = "jurisdictions/xa-n/ride-height.yaml";
    private const string Tip = "(name a folder that has jurisdictions/ in it, or a revision such as main~3)";

    private readonly string folder = InventedBookTests.Copy();

    public RevisionTests()
    {
        Write("tests/cases/xa/ride-height.yaml", "cases: []\n");
        Write("tests/cases/xa/notes.txt", "no case\n");
        Git("init", "--quiet", "--initial-branch=main");
        Commit("first");
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Neither a file changed since, nor an object that stands for another, nor another repository within has a say.</summary>
    [Fact]
    public void A_book_is_read_as_it_was_committed()
    {
        var digest = Digest(folder);
        Write(Law, File.ReadAllText(In(Law)).Replace("65 mm", "60 mm", StringComparison.Ordinal));
        var changed = Digest(folder);
        changed.ShouldNotBe(digest);
        Revision.Open("HEAD", folder).Digest.ShouldBe(digest);
        Revision.Open(folder, folder).Digest.ShouldBe(changed);
        var other = Git("hash-object", "-w", Law);
        Git("replace", Git("rev-parse", $"HEAD:{Law}"), other);
        Git("update-index", "--add", "--cacheinfo", $"160000,{Git("rev-parse", "HEAD")},jurisdictions/within");
        Git([.. By, "commit", "--quiet", "--message", "with another repository within"]);
        foreach (var name in (string[])["HEAD", "main", "first", "main~1", Git("rev-parse", "first")])
            Revision.Open(name, folder).Digest.ShouldBe(digest, name);
    }

    [Fact]
    public void A_book_that_lies_within_a_repository_is_read_where_it_lies()
    {
        var digest = Digest(folder);
        foreach (var part in (string[])["jurisdictions", "schema", "tests"])
        {
            Directory.CreateDirectory(In("data"));
            Directory.Move(In(part), In($"data/{part}"));
        }

        Commit("moved");
        Revision.Open("moved", In("data")).Digest.ShouldBe(digest);
        Revision.Cases("moved", In("data")).ShouldHaveSingleItem().Path.ShouldBe("tests/cases/xa/ride-height.yaml");
        Refused("moved", folder)
            .ShouldBe($"moved:1:1: error not-a-book: the revision has no folders jurisdictions and schema where the book is {Tip}");
    }

    [Fact]
    public async Task The_cases_of_a_book_are_its_YAML_files_and_a_packed_book_has_none()
    {
        foreach (var name in (string[])[folder, "first"])
        {
            var only = Revision.Cases(name, folder).ShouldHaveSingleItem(name);
            (only.Path, System.Text.Encoding.UTF8.GetString(only.Content.Span)).ShouldBe(
                ("tests/cases/xa/ride-height.yaml", "cases: []\n")
            );
        }

        (await Invocation.Of(["pack", In("book.rulebook"), "--book", folder])).Code.ShouldBe(0);
        Revision.Cases(In("book.rulebook"), folder).ShouldBeEmpty();
        Revision.Open(In("book.rulebook"), folder).Digest.ShouldBe(Digest(folder));
        Directory.Delete(In("tests"), recursive: true);
        Revision.Cases(folder, folder).ShouldBeEmpty();
    }

    /// <summary>The list of editions is a file of the book, which the command writes: nothing in it is to be mended by hand.</summary>
    [Fact]
    public async Task A_book_that_was_just_given_a_name_shows_nothing_that_it_did_not_show_before()
    {
        var before = await Inspected();
        foreach (var (name, since, limit) in new[] { ("2026.11.1", "first", "60 mm"), ("2026.11.2", "2026.11.1", "55 mm") })
        {
            Write(Law, Regex.Replace(File.ReadAllText(In(Law)), "suspension-lift: [56][05] mm", $"suspension-lift: {limit}"));
            var named = await Invocation.Of(["edition", name, "--since", since, "--book", folder]);
            (named.Code, named.Error).ShouldBe((0, ""));
            named.Out.ShouldNotContain(" 0 news");
            (await Inspected()).ShouldBe(before, name);
            Commit(name);
        }

        async Task<string[]> Inspected() =>
            [.. (await Invocation.Of(["inspect", folder])).Out.Split('\n').Where(line => line.Contains(": ", StringComparison.Ordinal))];
    }

    [Theory]
    [InlineData("", "(empty)", "no book is named: a variable of a script may be unset")]
    [InlineData(" ", "(empty)", "no book is named: a variable of a script may be unset")]
    [InlineData("no-such", "no-such", "it is neither a book's folder nor a git revision")]
    [InlineData("first~1", "first~1", "it is neither a book's folder nor a git revision")]
    [InlineData("first:jurisdictions", "first:jurisdictions", "it is neither a book's folder nor a git revision")]
    [InlineData("--all", "--all", "it is neither a book's folder nor a git revision")]
    [InlineData("--since=2020-01-01", "--since=2020-01-01", "it is neither a book's folder nor a git revision")]
    [InlineData("^first", "^first", "it is neither a book's folder nor a git revision")]
    [InlineData("first\nmain", "first\\u{A}main", "it is neither a book's folder nor a git revision")]
    [InlineData("first\0main", "first\\u{0}main", "it is neither a book's folder nor a git revision")]
    public void What_names_no_book_is_told_as_such(string name, string told, string why) =>
        Refused(name, folder).ShouldBe($"{told}:1:1: error not-a-book: {why} {Tip}");

    [Fact]
    public void A_link_that_was_committed_and_a_mistake_are_told_with_their_file()
    {
        File.CreateSymbolicLink(In("jurisdictions/xa/link.yaml"), In(Law));
        Commit("linked");
        Refused("linked", folder)
            .ShouldBe(
                "jurisdictions/xa/link.yaml:1:1: error link-in-book: this is a link, and a link may lead to a file that is "
                    + "nobody's business"
                    + " (put the file itself there)"
            );
        File.Delete(In("jurisdictions/xa/link.yaml"));
        Write(Law, "rules: [\n");
        Commit("broken");
        Refused("broken", folder).ShouldStartWith($"broken:{Law}:");
    }

    [Fact]
    public void A_repository_that_has_lost_a_file_or_a_list_of_files_is_told_as_such()
    {
        var blob = Git("rev-parse", $"first:{Law}");
        Lose(blob);
        Refused("first", folder)
            .ShouldBe($"first:1:1: error not-a-book: a file of the revision is missing or too large ({blob} missing) {Tip}");
        Lose(Git("rev-parse", "first^{tree}"));
        Refused("first", folder).ShouldBe($"first:1:1: error not-a-book: the revision cannot be read from the repository {Tip}");

        void Lose(string id) => File.Delete(In($".git/objects/{id[..2]}/{id[2..]}"));
    }

    [Fact]
    public void A_repository_that_somebody_else_owns_is_told_as_what_it_is()
    {
        Assert.SkipUnless(Environment.UserName == "root", "only root can give a folder away");
        Run("chown", "-R", "12345", folder);
        Refused("first", folder)
            .ShouldBe(
                "first:1:1: error not-yours: git refuses the repository, because somebody else owns its folder (dubious ownership) (if you "
                    + $"trust it: git config --global --add safe.directory {folder})"
            );
    }

    private static string[] By => ["-c", "user.name=Somebody", "-c", "user.email=somebody@example.org", "-c", "commit.gpgsign=false"];

    private static string Digest(string folder) => BookReading.OpenEarlier(BookFolder.Load(folder)).Digest;

    private static string Refused(string name, string current) =>
        Should.Throw<InputException>(() => Revision.Open(name, current)).Problems[0].ToString();

    private void Commit(string tag)
    {
        Git("add", "--all");
        Git([.. By, "commit", "--quiet", "--message", tag]);
        Git("tag", tag);
    }

    private string Git(params string[] arguments) => Run("git", ["-C", folder, .. arguments]);

    private static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var told = process.StandardOutput.ReadToEnd().Trim();
        process.WaitForExit();
        process.ExitCode.ShouldBe(0, string.Join(' ', arguments));
        return told;
    }

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        File.WriteAllText(In(path), text);
    }

    private string In(string path) => Path.Combine(folder, path);
}
