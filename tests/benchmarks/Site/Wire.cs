using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace RuleBook.Benchmarks;

/// <summary>
/// A wire between a browser and a server on loopback: so many bytes a second towards the browser over all connections together, and
/// counted.
/// </summary>
/// <remarks>The browser's own throttling does not reach its workers, in which the evaluator loads.</remarks>
internal sealed class Wire : IAsyncDisposable
{
    private const int Piece = 4096;

    /// <summary>What an idle wire may catch up: timers come late, and what comes late would make it slower than it says.</summary>
    private static readonly TimeSpan CatchUp = TimeSpan.FromMilliseconds(50);

    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly CancellationTokenSource stop = new();
    private readonly int server;
    private readonly double bytesASecond;
    private readonly TimeSpan delay;
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private TimeSpan free;
    private long sent;

    /// <param name="server">The port behind it.</param>
    /// <param name="bitsASecond">Towards the browser; infinite for a wire that only counts.</param>
    /// <param name="delay">Of what the browser asks.</param>
    public Wire(int server, double bitsASecond, TimeSpan delay)
    {
        (this.server, bytesASecond, this.delay) = (server, bitsASecond / 8, delay);
        listener.Start();
        _ = AcceptAsync();
    }

    public string Root => $"http://127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}/";

    /// <summary>Bytes sent to the browser, heads and all.</summary>
    public long Sent => Interlocked.Read(ref sent);

    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        listener.Dispose();
        turn.Dispose();
        stop.Dispose();
    }

    private async Task AcceptAsync()
    {
        while (!stop.IsCancellationRequested)
        {
            var browser = await listener.AcceptTcpClientAsync(stop.Token);
            _ = CarryAsync(browser);
        }
    }

    private async Task CarryAsync(TcpClient browser)
    {
        using var near = browser;
        using var far = new TcpClient();
        await far.ConnectAsync(IPAddress.Loopback, server, stop.Token);
        await Task.WhenAny(UpAsync(near.GetStream(), far.GetStream()), DownAsync(far.GetStream(), near.GetStream()));
    }

    private async Task UpAsync(NetworkStream from, NetworkStream to)
    {
        var piece = new byte[Piece];
        while (await from.ReadAsync(piece, stop.Token) is > 0 and var read)
        {
            await Task.Delay(delay, stop.Token);
            await to.WriteAsync(piece.AsMemory(0, read), stop.Token);
        }
    }

    private async Task DownAsync(NetworkStream from, NetworkStream to)
    {
        var piece = new byte[Piece];
        while (await from.ReadAsync(piece, stop.Token) is > 0 and var read)
        {
            await turn.WaitAsync(stop.Token);
            try
            {
                var now = clock.Elapsed;
                free = TimeSpan.FromTicks(Math.Max(free.Ticks, (now - CatchUp).Ticks)) + TimeSpan.FromSeconds(read / bytesASecond);
                if (free > now)
                    await Task.Delay(free - now, stop.Token);
            }
            finally
            {
                turn.Release();
            }

            Interlocked.Add(ref sent, read);
            await to.WriteAsync(piece.AsMemory(0, read), stop.Token);
        }
    }
}
