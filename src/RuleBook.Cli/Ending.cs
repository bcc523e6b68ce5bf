using System.Runtime.InteropServices;

namespace RuleBook.Cli;

/// <summary>
/// Ends the process when it is asked to (SIGINT, SIGTERM): whoever writes takes back what is half written, whatever only computes is cut
/// off.
/// </summary>
internal sealed class Ending : IDisposable
{
    /// <summary>How long whoever writes has for taking it back.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromMilliseconds(500);

    private readonly CancellationTokenSource stop = new();
    private readonly PosixSignalRegistration[] registered;

    public Ending() =>
        registered = [
            PosixSignalRegistration.Create(PosixSignal.SIGINT, context => End(context, ExitCode.Interrupted)),
            PosixSignalRegistration.Create(PosixSignal.SIGTERM, context => End(context, ExitCode.Terminated)),
        ];

    /// <summary>Requested by the first signal.</summary>
    public CancellationToken Stop => stop.Token;

    /// <summary>The exit code of the signal; null before there was one.</summary>
    public int? Code { get; private set; }

    public void Dispose()
    {
        foreach (var each in registered)
            each.Dispose();
        stop.Dispose();
    }

    private void End(PosixSignalContext context, int code)
    {
        context.Cancel = true;
        if (Code is not null)
            Environment.Exit(code);
        Code = code;
        _ = Task.Delay(Grace).ContinueWith(_ => Environment.Exit(code), TaskScheduler.Default);
        stop.Cancel();
    }
}
