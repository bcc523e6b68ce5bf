using System.Diagnostics;
using System.Net.Sockets;
using System.Runtime.Versioning;

namespace RuleBook.Cli.Tests;

/// <summary>Where the answers to a fleet go: a file whole or not at all; what is no file is written to and never replaced.</summary>
public sealed class FleetOutputTests : IDisposable
{
    private const UnixFileMode Mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;

    private readonly string folder = Directory.CreateTempSubdirectory("rulebook-fleet-").FullName;

    public FleetOutputTests() =>
        File.WriteAllText(In("fleet.csv"), "registered-in,modification.suspension-lift\nau-qld,45 mm\nnowhere,45 mm\n");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task A_link_is_followed_and_the_mode_of_the_file_behind_it_is_kept()
    {
        await File.WriteAllTextAsync(In("answers.csv"), "old", TestContext.Current.CancellationToken);
        File.SetUnixFileMode(In("answers.csv"), Mode);
        File.CreateSymbolicLink(In("link"), In("answers.csv"));
        await Fleet("--output", In("link"));
        new FileInfo(In("link")).LinkTarget.ShouldBe(In("answers.csv"));
        (await File.ReadAllLinesAsync(In("answers.csv"), TestContext.Current.CancellationToken)).Length.ShouldBe(2);
        File.GetUnixFileMode(In("answers.csv")).ShouldBe(Mode);
        Directory.GetFiles(folder).Length.ShouldBe(3); // nothing is left aside
    }

    [Fact]
    public async Task A_pipe_is_written_to_and_stays_a_pipe()
    {
        foreach (var name in (string[])["answers", "refused"])
            (await Says($"mkfifo '{In(name)}'")).ShouldBe(0);
        // Opening a pipe waits for the other end, on a thread of its own.
        var read = ((string[])["answers", "refused"])
            .Select(name =>
                Task.Factory.StartNew(() => File.ReadAllText(In(name)), default, TaskCreationOptions.LongRunning, TaskScheduler.Default)
            )
            .ToArray();
        await Fleet("--output", In("answers"), "--rejected", In("refused"));
        (await read[0]).ShouldContain("au-qld,45 mm,");
        (await read[1]).ShouldContain("registered-in");
        (await Says($"test -p '{In("answers")}' -a -p '{In("refused")}'")).ShouldBe(0);
    }

    [Fact]
    public async Task A_device_stays_a_device_and_a_socket_a_socket()
    {
        await Fleet("--output", "/dev/null");
        (await Says("test -c /dev/null")).ShouldBe(0);
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(In("socket")));
        await Fleet("--output", In("socket"));
        (await Says($"test -S '{In("socket")}'")).ShouldBe(0);
    }

    [Fact]
    public async Task What_goes_to_a_pipe_cannot_be_gone_on_with()
    {
        var answer = await Invocation.Of(["fleet", In("fleet.csv"), "--output", "/dev/null", "--resume"]);
        (answer.Code, answer.Error.Contains("only a run from a file to a file", StringComparison.Ordinal)).ShouldBe((2, true));
    }

    /// <summary>One of the two rows is refused, so the code is 2 in any case.</summary>
    private async Task Fleet(params string[] options) => (await Invocation.Of(["fleet", In("fleet.csv"), .. options])).Code.ShouldBe(2);

    private string In(string name) => Path.Combine(folder, name);

    private static async Task<int> Says(string line)
    {
        using var shell = Process.Start("/bin/sh", ["-c", line]);
        await shell.WaitForExitAsync();
        return shell.ExitCode;
    }
}
