using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>
/// One run of git in a repository that is not trusted: it reads objects as they are stored, and starts and fetches nothing.
/// </summary>
internal sealed class Git : IDisposable
{
    private static readonly string[] Careful =
    [
        "--no-replace-objects",
        "--no-optional-locks",
        "-c",
        "core.fsmonitor=false",
        "-c",
        "protocol.allow=never",
    ];

    private readonly Process process;
    private readonly string name;
    private readonly string folder;
    private readonly StringBuilder complaint = new();

    private Git(Process process, string name, string folder) => (this.process, this.name, this.folder) = (process, name, folder);

    /// <summary>What it prints, as text.</summary>
    public StreamReader Output => process.StandardOutput;

    /// <summary>What it prints, as bytes.</summary>
    public Stream Bytes => process.StandardOutput.BaseStream;

    /// <summary>What it is told.</summary>
    public StreamWriter Input => process.StandardInput;

    /// <param name="name">The revision that is asked for.</param>
    /// <param name="folder">The folder in which it runs.</param>
    /// <param name="arguments">What it is to do.</param>
    /// <exception cref="InputException">It cannot be run.</exception>
    public static Git Start(string name, string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("git", [.. Careful, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
        };
        (start.Environment["LC_ALL"], start.Environment["GIT_TERMINAL_PROMPT"], start.Environment["GIT_NO_LAZY_FETCH"]) = ("C", "0", "1");
        try
        {
            var git = new Git(Process.Start(start)!, name, folder);
            git.process.ErrorDataReceived += (_, line) =>
            {
                if (git.complaint.Length < 2000)
                    git.complaint.Append(line.Data).Append(' ');
            };
            git.process.BeginErrorReadLine();
            return git;
        }
        catch (Exception failure) when (failure is Win32Exception or IOException)
        {
            throw new InputException(Revision.Refused(name, "it is not a book's folder, and git cannot be run to look for a revision"));
        }
    }

    /// <summary>Waits for its end; whether it went well.</summary>
    /// <exception cref="InputException">It refuses the repository because somebody else owns it.</exception>
    public bool Ended()
    {
        process.WaitForExit();
        if (process.ExitCode == 0)
            return true;
        if (!complaint.ToString().Contains("dubious ownership", StringComparison.Ordinal))
            return false;
        throw new InputException(
            Problem.Error(
                "not-yours",
                new Mark(name, 1, 1),
                "git refuses the repository, because somebody else owns its folder (dubious ownership)",
                $"if you trust it: git config --global --add safe.directory {Path.GetFullPath(folder)}"
            )
        );
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill();
        process.Dispose();
    }
}
