using System.Text;

namespace RuleBook.Site.Tests;

/// <summary>A site takes nothing away that it did not make, and writes through no link.</summary>
public sealed class SiteFolderTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-folder-").FullName;

    private string Target => Path.Combine(folder, "site");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_an_earlier_run_made_is_taken_away_with_its_empty_folders_and_what_others_put_there_stays()
    {
        Write(("old.html", "x"), ("a/b/old.html", "x"), ("c/old.html", "x"), ("kept.html", "before"));
        Put("CNAME", "rules.example");
        Put("c/own.txt", "mine");
        Put(".rulebook-site-left.part/x", "of a run that died");
        Write(("a/new.html", "y"), ("kept.html", "after"));
        There().ShouldBe(["CNAME", "a/new.html", "c/own.txt", "kept.html", SiteFolder.Marker]);
        Directory.EnumerateDirectories(Target).Select(Path.GetFileName).ShouldBe(["a", "c"], ignoreOrder: true);
        Directory.EnumerateFileSystemEntries(Path.Combine(Target, "a")).ShouldHaveSingleItem();
        Read("kept.html").ShouldBe("after");
        Directory.EnumerateFileSystemEntries(folder).ShouldBe([Target]);
    }

    [Fact]
    public void The_manifest_names_what_the_site_is_made_of_behind_its_own_head()
    {
        Write(("b.html", "x"), ("a.html", "x"), (SiteFolder.Marker, "Made of the book.\n"));
        Read(SiteFolder.Marker).ShouldBe("Made of the book.\nfile: a.html\nfile: b.html\n");
        Write(("b.html", "x"));
        Read(SiteFolder.Marker).ShouldEndWith("\nfile: b.html\n");
        There().ShouldBe(["b.html", SiteFolder.Marker]);
    }

    /// <summary>A name that begins with a full stop, and the name of the host that some publishers keep there, are nobody's work.</summary>
    [Theory]
    [InlineData("letter.txt", false)]
    [InlineData("CNAME", true)]
    [InlineData(".git", true)]
    [InlineData("CNAMES", false)]
    public void A_folder_with_something_in_it_that_no_site_made_is_left_alone(string name, bool isTaken)
    {
        Put(name, "x");
        if (isTaken)
            Write(("index.html", "x"));
        else
            Refused(("index.html", "x")).ShouldContain($"(it has {name})");
        Read(name).ShouldBe("x");
        System.IO.File.Exists(In("index.html")).ShouldBe(isTaken);
    }

    [Fact]
    public void What_is_in_the_way_of_a_file_of_the_site_is_told_and_stays()
    {
        Write(("index.html", "x"));
        Put("page.html", "mine");
        Refused(("page.html", "x")).ShouldContain("is in the way");
        Put("topic.html/mine.txt", "mine");
        Refused(("topic.html", "x")).ShouldContain("is in the way");
        System.IO.File.CreateSymbolicLink(In("gone.html"), Path.Combine(folder, "nowhere"));
        Refused(("gone.html", "x")).ShouldContain("is in the way");
        Read("page.html").ShouldBe("mine");
        Read("index.html").ShouldBe("x");
    }

    [Fact]
    public void A_link_that_leads_out_of_the_site_is_not_written_through_but_the_site_may_lie_behind_one()
    {
        var elsewhere = Path.Combine(folder, "elsewhere");
        Directory.CreateDirectory(elsewhere);
        Write(("index.html", "x"));
        Directory.CreateSymbolicLink(In("topics"), elsewhere);
        Refused(("topics/a.html", "x")).ShouldContain("is a link that leads out of the site");
        Directory.EnumerateFileSystemEntries(elsewhere).ShouldBeEmpty();

        Directory.CreateSymbolicLink(Path.Combine(folder, "behind"), elsewhere);
        SiteFolder.Write([File("b.html", "y")], Path.Combine(folder, "behind"), TestContext.Current.CancellationToken);
        System.IO.File.ReadAllText(Path.Combine(elsewhere, "b.html")).ShouldBe("y");
    }

    [Fact]
    public void What_an_earlier_run_made_is_left_where_its_folder_is_gone_or_is_a_link_by_now()
    {
        var elsewhere = Path.Combine(folder, "elsewhere");
        Directory.CreateDirectory(elsewhere);
        System.IO.File.WriteAllText(Path.Combine(elsewhere, "old.html"), "mine");
        Write(("gone/deep/old.html", "x"), ("linked/old.html", "x"));
        Directory.Delete(In("gone"), recursive: true);
        Directory.Delete(In("linked"), recursive: true);
        Directory.CreateSymbolicLink(In("linked"), elsewhere);
        Write(("a.html", "x"));
        System.IO.File.ReadAllText(Path.Combine(elsewhere, "old.html")).ShouldBe("mine");
        Directory.Exists(In("gone")).ShouldBeFalse();
        Directory.Exists(In("linked")).ShouldBeTrue();
    }

    [Fact]
    public void A_manifest_that_names_what_lies_outside_or_is_a_link_takes_nothing_away()
    {
        Write(("a/index.html", "x"));
        var mine = Path.Combine(folder, "mine.txt");
        System.IO.File.WriteAllText(mine, "mine");
        System.IO.File.AppendAllText(In(SiteFolder.Marker), $"file: ../mine.txt\nfile: {mine}\nfile: a/../../mine.txt\nfile: a//b\n");
        Write(("b.html", "x"));
        System.IO.File.ReadAllText(mine).ShouldBe("mine");
        There().ShouldBe(["b.html", SiteFolder.Marker]);
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_and_a_run_beside_another_are_refused()
    {
        System.IO.File.WriteAllText(Target, "x");
        Refused(("a.html", "x")).ShouldContain("is a file; name a folder");
        System.IO.File.Delete(Target);
        Write(("a.html", "x"));
        using (
            new FileStream(
                In(".rulebook-site-lock"),
                FileMode.OpenOrCreate,
                FileAccess.ReadWrite,
                FileShare.None,
                1,
                FileOptions.DeleteOnClose
            )
        )
            Refused(("b.html", "x")).ShouldContain("another run is writing");
        There().ShouldBe(["a.html", SiteFolder.Marker]);
    }

    [Fact]
    public void A_site_that_cannot_be_written_and_one_that_is_stopped_leave_the_old_one_as_it_was()
    {
        Write(("a.html", "x"));
        Should.Throw<IOException>(() => Write(("b", "x"), ("b/c", "x")));
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Should.Throw<OperationCanceledException>(() => SiteFolder.Write([File("b.html", "x")], Target, stop.Token));
        There().ShouldBe(["a.html", SiteFolder.Marker]);
        Directory.EnumerateFileSystemEntries(Target).Count().ShouldBe(2);
    }

    private string Refused(params (string, string)[] files) => Should.Throw<IOException>(() => Write(files)).Message;

    private void Write(params (string Path, string Text)[] files) =>
        SiteFolder.Write([.. files.Select(file => File(file.Path, file.Text))], Target, TestContext.Current.CancellationToken);

    private static SiteFile File(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    private void Put(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        System.IO.File.WriteAllText(In(path), text);
    }

    private string Read(string path) => System.IO.File.ReadAllText(In(path));

    private string In(string path) => Path.Combine(Target, path);

    private string[] There() =>
        [
            .. Directory
                .EnumerateFiles(Target, "*", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Target, file))
                .Order(StringComparer.Ordinal),
        ];
}
