using System.Diagnostics;
using System.Runtime.Versioning;

namespace RuleBook.Cli.Tests;

/// <summary>What a command does to files: whole or not at all, and nothing of the user's is lost.</summary>
public sealed class FileTests(GitBook git) : IClassFixture<GitBook>, IDisposable
{
    private const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;

    private static readonly string Job = Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml");

    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-files-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private Task<Invocation> Site(string into) => Invocation.Of(["site", into, "--book", git.Folder, "--compress", "no"]);

    private string In(string name) => Path.Combine(folder, name);

    [Fact]
    public async Task A_device_is_written_to_and_stays_a_device()
    {
        (await Invocation.Of(["assess", Job, "--output", "/dev/null"])).Code.ShouldBe(0);
        (await ShellAsync("test -c /dev/null")).ShouldBe(0);
    }

    [Fact]
    public async Task A_pipe_is_written_to_and_stays_a_pipe()
    {
        (await ShellAsync($"mkfifo '{In("pipe")}'")).ShouldBe(0);
        // Opening a pipe waits for the other end, on a thread of its own.
        var read = Task.Factory.StartNew(
            () => File.ReadAllText(In("pipe")),
            TestContext.Current.CancellationToken,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default
        );
        (await Invocation.Of(["assess", Job, "--output", In("pipe")])).Code.ShouldBe(0);
        (await read).ShouldContain("Queensland");
        (await ShellAsync($"test -p '{In("pipe")}'")).ShouldBe(0);
    }

    [Fact]
    public async Task A_link_is_followed_and_never_replaced()
    {
        File.CreateSymbolicLink(In("link"), In("answer.txt"));
        (await Invocation.Of(["assess", Job, "--output", In("link")])).Code.ShouldBe(0);
        new FileInfo(In("link")).LinkTarget.ShouldBe(In("answer.txt"));
        (await File.ReadAllTextAsync(In("answer.txt"), TestContext.Current.CancellationToken)).ShouldContain("Queensland");
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task The_mode_of_a_file_that_is_replaced_is_kept()
    {
        await File.WriteAllTextAsync(In("answer.txt"), "old", TestContext.Current.CancellationToken);
        File.SetUnixFileMode(In("answer.txt"), Mode);
        (await Invocation.Of(["assess", Job, "--output", In("answer.txt")])).Code.ShouldBe(0);
        File.GetUnixFileMode(In("answer.txt")).ShouldBe(Mode);
    }

    [Fact]
    public async Task A_name_as_long_as_the_file_system_allows_can_be_written()
    {
        var name = new string('a', 250) + ".txt";
        (await Invocation.Of(["assess", Job, "--output", In(name)])).Code.ShouldBe(0);
        Directory.GetFileSystemEntries(folder).ShouldBe([In(name)]);
    }

    [Fact]
    public async Task A_site_leaves_what_it_did_not_make_and_takes_away_what_it_no_longer_has()
    {
        var (site, token) = (In("site"), TestContext.Current.CancellationToken);
        Directory.CreateDirectory(Path.Combine(site, ".git"));
        await File.WriteAllTextAsync(Path.Combine(site, "CNAME"), "limits.example", token);
        (await Site(site)).Code.ShouldBe(0);
        await File.WriteAllTextAsync(Path.Combine(site, "topics", "notes.txt"), "mine", token);
        // As if an earlier edition had had a page that this one has not, and somebody had planted a line that leads out of the folder.
        await File.WriteAllTextAsync(Path.Combine(site, "gone.html"), "old", token);
        await File.WriteAllTextAsync(In("outside.txt"), "mine", token);
        await File.AppendAllTextAsync(Path.Combine(site, "rulebook-site.txt"), "file: gone.html\nfile: ../outside.txt\n", token);

        (await Site(site)).Code.ShouldBe(0);
        File.Exists(Path.Combine(site, "gone.html")).ShouldBeFalse();
        File.Exists(In("outside.txt")).ShouldBeTrue();
        File.Exists(Path.Combine(site, "CNAME")).ShouldBeTrue();
        File.Exists(Path.Combine(site, "topics", "notes.txt")).ShouldBeTrue();
        Directory.Exists(Path.Combine(site, ".git")).ShouldBeTrue();
        Directory.GetFileSystemEntries(site, ".rulebook*").ShouldBeEmpty();
    }

    [Fact]
    public async Task A_site_is_refused_where_somebodys_files_or_the_books_own_would_be_in_the_way()
    {
        await File.WriteAllTextAsync(In("mine.txt"), "mine", TestContext.Current.CancellationToken);
        (await Invocation.Of(["site", folder])).Error.ShouldContain("neither empty nor a site");
        (await Invocation.Of(["site", In("mine.txt")])).Error.ShouldContain("is a file");
        (await Invocation.Of(["site", Path.Combine(Invocation.Root, "jurisdictions", "site")])).Error.ShouldContain("inside the book");
        Directory.Exists(Path.Combine(Invocation.Root, "jurisdictions", "site")).ShouldBeFalse();
    }

    [Fact]
    public async Task A_link_inside_a_site_leads_no_file_out_of_it()
    {
        var (site, elsewhere) = (In("site"), In("elsewhere"));
        (await Site(site)).Code.ShouldBe(0);
        Directory.Move(Path.Combine(site, "topics"), elsewhere);
        Directory.CreateSymbolicLink(Path.Combine(site, "topics"), elsewhere);
        var before = Directory.GetLastWriteTimeUtc(elsewhere);
        var answer = await Site(site);
        (answer.Code, answer.Error.Contains("is a link", StringComparison.Ordinal)).ShouldBe((2, true));
        Directory.GetLastWriteTimeUtc(elsewhere).ShouldBe(before);
    }

    [Fact]
    public async Task A_site_behind_a_link_is_written_to_where_it_leads()
    {
        Directory.CreateDirectory(In("real"));
        Directory.CreateSymbolicLink(In("link"), In("real"));
        (await Site(In("link"))).Code.ShouldBe(0);
        File.Exists(Path.Combine(In("real"), "index.html")).ShouldBeTrue();
        new FileInfo(In("link")).LinkTarget.ShouldBe(In("real"));
    }

    [Fact]
    public async Task A_site_that_another_run_is_writing_is_refused()
    {
        var site = In("site");
        (await Site(site)).Code.ShouldBe(0);
        using var held = new FileStream(
            Path.Combine(site, ".rulebook-site-lock"),
            FileMode.CreateNew,
            FileAccess.ReadWrite,
            FileShare.None
        );
        var answer = await Site(site);
        (answer.Code, answer.Error.Contains("another run", StringComparison.Ordinal)).ShouldBe((2, true));
    }

    [Fact]
    public async Task What_a_run_that_died_left_aside_is_never_part_of_the_site()
    {
        var site = In("site");
        (await Site(site)).Code.ShouldBe(0);
        var left = Directory.CreateDirectory(Path.Combine(site, ".rulebook-site-0123.part"));
        await File.WriteAllTextAsync(Path.Combine(left.FullName, "index.html"), "half", TestContext.Current.CancellationToken);
        (await Site(site)).Code.ShouldBe(0);
        left.Refresh();
        left.Exists.ShouldBeFalse();
        (await File.ReadAllTextAsync(Path.Combine(site, "index.html"), TestContext.Current.CancellationToken)).ShouldContain("</html>");
    }

    private static async Task<int> ShellAsync(string command)
    {
        using var shell = Process.Start("/bin/sh", ["-c", command]);
        await shell.WaitForExitAsync();
        return shell.ExitCode;
    }
}
