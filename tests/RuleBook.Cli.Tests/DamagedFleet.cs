using System.Text;

namespace RuleBook.Cli.Tests;

/// <summary>A small fleet of invented vehicles to which something has happened; the same for the same seed.</summary>
internal sealed class DamagedFleet
{
    private const string Header =
        "job,owner,registered-in,on,vehicle.category,vehicle.four-wheel-drive,vehicle.stability-control,modification.suspension-lift";
    private const int Megabyte = 1 << 20;

    private readonly Random random;
    private readonly Dictionary<string, string> idOfLine = new(StringComparer.Ordinal);

    public DamagedFleet(int seed)
    {
        random = new Random(seed);
        var lines = new List<string> { Header };
        for (var at = random.Next(1, 15); at > 0; at--)
        {
            var id = $"W-{seed}-{at}";
            var line =
                $"{id},{Of("Ann", "Büro Süd", "\"Bo, sons\"", "")},{Of("au-qld", "au-nsw", "us-ga", "nowhere")},"
                + $"2026-11-20,MC,{Of("yes", "no")},{Of("yes", "no", "")},{random.Next(900) / 10m} mm";
            lines.Add(line);
            idOfLine[line] = id;
        }

        Bytes = Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => line + "\n")));
        for (var times = random.Next(1, 3); times > 0; times--)
            Damage();
    }

    /// <summary>The file.</summary>
    public byte[] Bytes { get; private set; }

    /// <summary>What happened to it.</summary>
    public string What { get; private set; } = "";

    /// <summary>Whether its first line is still the header.</summary>
    public bool HasHeader => Lines().FirstOrDefault() == Header;

    /// <summary>The lines that are as they were, by their number, with the job each names.</summary>
    public IEnumerable<(int Line, string Id)> Whole() =>
        Lines()
            .Select((text, at) => (at + 1, idOfLine.GetValueOrDefault(text)))
            .Where(line => line.Item2 is not null)
            .Select(line => (line.Item1, line.Item2!));

    private IEnumerable<string> Lines()
    {
        using var text = new StreamReader(new MemoryStream(Bytes), Encoding.UTF8);
        while (text.ReadLine() is { } line)
            yield return line;
    }

    private void Damage()
    {
        var at = random.Next(Bytes.Length + 1);
        switch (random.Next(15))
        {
            case 0:
                Did("cut", Bytes[..at]);
                break;
            case 1:
                Did("a quote", Put(at, "\""));
                break;
            case 2:
                Did("bytes that are no UTF-8", Put(at, (byte)random.Next(0x80, 0x100)));
                break;
            case 3:
                Did("Latin 1", Encoding.Convert(Encoding.UTF8, Encoding.Latin1, Bytes));
                break;
            case 4:
                Did(
                    "UTF-16",
                    [.. random.Next(2) == 0 ? Encoding.Unicode.Preamble : [], .. Encoding.Convert(Encoding.UTF8, Encoding.Unicode, Bytes)]
                );
                break;
            case 5:
                Did(
                    "a column lost",
                    Encoding.UTF8.GetBytes(
                        string.Concat(Text().Split('\n').Select(line => line[(line.IndexOf(',', StringComparison.Ordinal) + 1)..] + "\n"))
                    )
                );
                break;
            case 6:
                Did("a comma lost", Without((byte)','));
                break;
            case 7:
                Did("NUL bytes", Put(at, new byte[random.Next(1, 5)]));
                break;
            case 8:
                Did(
                    "mixed line ends",
                    Encoding.UTF8.GetBytes(string.Concat(Text().Split('\n').Select(line => line + Of("\n", "\r\n", "\r", "\n\n", "\n\r"))))
                );
                break;
            case 9:
                Did("a line end lost", Without((byte)'\n'));
                break;
            case 10:
                Did(
                    "a large cell",
                    random.Next(8) == 0
                        ? Put(at, Enumerable.Repeat((byte)'x', random.Next(1, 5) * Megabyte + random.Next(-9, 9)).ToArray())
                        : Put(at, Enumerable.Repeat((byte)'y', random.Next(3000)).ToArray())
                );
                break;
            case 11:
                Did("other bytes", Put(at, Enumerable.Range(0, random.Next(1, 40)).Select(_ => (byte)random.Next(256)).ToArray()));
                break;
            case 12:
                Did("another separator", Encoding.UTF8.GetBytes(Text().Replace(",", Of(";", "\t", "|"), StringComparison.Ordinal)));
                break;
            case 13:
                Did("a line that names a separator", [.. Encoding.UTF8.GetBytes($"sep={(char)random.Next(32, 300)}\n"), .. Bytes]);
                break;
            default:
                Did("a mark before", [.. Encoding.UTF8.Preamble, .. Bytes]);
                break;
        }
    }

    private void Did(string what, byte[] bytes) => (What, Bytes) = (What.Length == 0 ? what : $"{What}, {what}", bytes);

    private string Text() => Encoding.UTF8.GetString(Bytes);

    private byte[] Put(int at, string text) => Put(at, Encoding.UTF8.GetBytes(text));

    private byte[] Put(int at, params byte[] bytes) => [.. Bytes[..at], .. bytes, .. Bytes[at..]];

    private byte[] Without(byte one)
    {
        int[] places = [.. Enumerable.Range(0, Bytes.Length).Where(at => Bytes[at] == one)];
        if (places.Length == 0)
            return Bytes;
        var at = places[random.Next(places.Length)];
        return [.. Bytes[..at], .. Bytes[(at + 1)..]];
    }

    private string Of(params string[] from) => from[random.Next(from.Length)];
}
