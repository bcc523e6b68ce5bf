using System.Net;
using System.Net.Sockets;
using RuleBook.Text;

namespace RuleBook.Cli.Commands;

/// <summary>Serves a folder on loopback, and nothing else to nobody else.</summary>
internal static class Preview
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".csv"] = "text/csv; charset=utf-8",
        [".atom"] = "application/atom+xml; charset=utf-8",
        [".ics"] = "text/calendar; charset=utf-8",
    };

    public static async Task ServeAsync(string folder, int port, TextWriter say, CancellationToken stop)
    {
        using var listener = Listen(port);
        await using var stopping = stop.Register(listener.Stop).ConfigureAwait(false);
        await say.WriteLineAsync($"http://127.0.0.1:{port}/ (Ctrl+C ends it)").ConfigureAwait(false);
        while (listener.IsListening)
        {
            try
            {
                var asked = await listener.GetContextAsync().ConfigureAwait(false);
                _ = Task.Run(() => AnswerAsync(asked, folder), CancellationToken.None);
            }
            catch (Exception ended) when (ended is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    /// <exception cref="InputException">The port is none, or somebody else has it.</exception>
    private static HttpListener Listen(int port)
    {
        var listener = new HttpListener();
        try
        {
            listener.Prefixes.Add($"http://127.0.0.1:{port}/");
            listener.Start();
            return listener;
        }
        catch (Exception refused) when (refused is HttpListenerException or SocketException or ArgumentException or UriFormatException)
        {
            listener.Close();
            throw new InputException(
                Problem.Error(
                    "no-port",
                    new Mark("--port", 1, 1),
                    $"the preview cannot listen on port {port}: {refused.Message}",
                    "name another with --port, such as 8322"
                )
            );
        }
    }

    /// <summary>The file that a path of an address names, or null: never one outside of the folder.</summary>
    internal static string? Find(string folder, string path)
    {
        var root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
        var relative = Uri.UnescapeDataString(path).TrimStart('/');
        if (relative.Length == 0 || relative.EndsWith('/'))
            relative += "index.html";
        if (relative.Contains('\0', StringComparison.Ordinal))
            return null;
        var file = Path.GetFullPath(Path.Combine(root, relative));
        return file.StartsWith(root, StringComparison.Ordinal) && File.Exists(file) ? file : null;
    }

    /// <summary>The ending of the compressed copy beside the file that the browser takes; null for the file itself.</summary>
    private static string? Coding(string? accepted, string file) =>
        accepted is null ? null
        : accepted.Contains("br", StringComparison.Ordinal) && File.Exists($"{file}.br") ? "br"
        : accepted.Contains("gzip", StringComparison.Ordinal) && File.Exists($"{file}.gz") ? "gz"
        : null;

    private static async Task AnswerAsync(HttpListenerContext asked, string folder)
    {
        using var answer = asked.Response;
        try
        {
            if (asked.Request.HttpMethod is not ("GET" or "HEAD"))
                answer.StatusCode = 405;
            else if (Find(folder, asked.Request.Url?.AbsolutePath ?? "/") is not { } file)
                answer.StatusCode = 404;
            else
            {
                var coding = Coding(asked.Request.Headers["Accept-Encoding"], file);
                var content = await File.ReadAllBytesAsync(coding is null ? file : $"{file}.{coding}").ConfigureAwait(false);
                if (coding is not null)
                    answer.Headers["Content-Encoding"] = coding == "gz" ? "gzip" : coding;
                answer.Headers["Vary"] = "Accept-Encoding";
                answer.ContentType = Types.GetValueOrDefault(Path.GetExtension(file), "text/plain; charset=utf-8");
                answer.Headers["X-Content-Type-Options"] = "nosniff";
                answer.Headers["Cache-Control"] = "no-cache";
                answer.ContentLength64 = content.Length;
                if (asked.Request.HttpMethod == "GET")
                    await answer.OutputStream.WriteAsync(content).ConfigureAwait(false);
            }
        }
        catch (Exception gone)
            when (gone
                    is HttpListenerException
                        or IOException
                        or UriFormatException
                        or ArgumentException
                        or UnauthorizedAccessException
                        or ObjectDisposedException
            )
        {
            answer.Abort();
        }
    }
}
