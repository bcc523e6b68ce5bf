using System.Globalization;

namespace RuleBook.Benchmarks;

/// <summary>What was measured several times, and the limit that its median is held against.</summary>
internal sealed record Measurement(string Name, IReadOnlyList<TimeSpan> Times, TimeSpan Limit)
{
    public TimeSpan Median => Times.Order().ElementAt(Times.Count / 2);

    public bool Holds => Median <= Limit;
}

/// <summary>Measurements of one run.</summary>
internal sealed record Table(params Measurement[] Measurements)
{
    /// <summary>Returns 0 when every limit holds, otherwise 1.</summary>
    public int Write(TextWriter output)
    {
        output.WriteLine($"{Environment.ProcessorCount} processors, load {Load()} (a busy machine measures its business)");
        foreach (var each in Measurements)
        {
            var times = string.Join(", ", each.Times.Select(Seconds));
            output.WriteLine(
                $"{each.Name}: median {Seconds(each.Median)} of {times}; limit {Seconds(each.Limit)}: {(each.Holds ? "holds" : "BROKEN")}"
            );
        }

        return Measurements.All(each => each.Holds) ? 0 : 1;
    }

    public static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.00 s", CultureInfo.InvariantCulture);
}
