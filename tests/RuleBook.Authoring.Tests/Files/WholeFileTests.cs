using System.Runtime.Versioning;
using RuleBook.Authoring.Files;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Files;

/// <summary>A file is written whole or not at all, to what a path names (derived; modes by chmod(1)).</summary>
public sealed class WholeFileTests : IDisposable
{
    private const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupExecute;

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    private string In(string name) => Path.Combine(folder.Path, name);

    private string[] Names() => [.. Directory.GetFileSystemEntries(folder.Path).Select(path => Path.GetFileName(path)!).Order()];

    [Fact]
    public void A_file_is_made_or_replaced_and_nothing_is_left_beside_it()
    {
        Write(In("a"), "long before\n");
        Write(In("a"), "für\n");
        File.ReadAllBytes(In("a")).ShouldBe([0x66, 0xC3, 0xBC, 0x72, 0x0A]);
        Names().ShouldBe(["a"]);
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void The_mode_is_kept_and_a_link_is_followed()
    {
        File.WriteAllText(In("a"), "old");
        File.SetUnixFileMode(In("a"), Mode);
        File.CreateSymbolicLink(In("link"), In("a"));
        File.CreateSymbolicLink(In("further"), In("link"));
        File.CreateSymbolicLink(In("ahead"), In("b"));

        Write(In("further"), "new");
        Write(In("ahead"), "made");

        File.ReadAllText(In("a")).ShouldBe("new");
        File.ReadAllText(In("b")).ShouldBe("made");
        File.GetUnixFileMode(In("a")).ShouldBe(Mode);
        new FileInfo(In("further")).LinkTarget.ShouldBe(In("link"));
        Names().ShouldBe(["a", "ahead", "b", "further", "link"]);
    }

    /// <summary>/dev/full takes nothing, ever (full(4)): only who writes to it as it is finds out.</summary>
    [Fact]
    [SupportedOSPlatform("linux")]
    public void What_is_no_file_is_written_to_as_it_is()
    {
        Write("/dev/null", "gone");
        Should.Throw<IOException>(() => Write("/dev/full", "no room"));
        (FileStatus.Of("/dev/null")!.IsRegular, Destination.Of("/dev/null").IsFile).ShouldBe((false, false));
        File.WriteAllText(In("a"), "");
        File.SetUnixFileMode(In("a"), Mode);
        var status = FileStatus.Of(In("a"))!;
        (status.IsRegular, status.Mode, status.Owner is not null, Destination.Of(In("a")).IsFile).ShouldBe((true, Mode, true, true));
        (FileStatus.Of(In("b")), Destination.Of(In("b")).IsFile).ShouldBe((null, true));
    }

    [Fact]
    public void Who_is_asked_to_end_leaves_what_was_there()
    {
        Write(In("a"), "old");
        Should.Throw<OperationCanceledException>(() => WholeFile.Write(In("a"), "new", new CancellationToken(canceled: true)));
        File.ReadAllText(In("a")).ShouldBe("old");
        Names().ShouldBe(["a"]);
    }

    [Fact]
    public void A_folder_and_a_path_without_one_are_refused()
    {
        Refused(folder.Path).ShouldBe($"{folder.Path}:1:1: error not-writable: this is a folder (name a file in it)");
        Refused(In("none/a"))
            .ShouldBe($"{In("none/a")}:1:1: error not-writable: there is no folder '{In("none")}' (make it first, or check its name)");
        Names().ShouldBeEmpty();
    }

    private static void Write(string path, string text) => WholeFile.Write(path, text, TestContext.Current.CancellationToken);

    private static string Refused(string path) =>
        Should.Throw<InputException>(() => Write(path, "text")).Problems.ShouldHaveSingleItem().ToString();
}
