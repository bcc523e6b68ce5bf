using System.Globalization;
using System.Text;

namespace RuleBook.Fuzz;

/// <summary>What was tried of one kind of input.</summary>
/// <param name="Kind">The kind.</param>
internal sealed record Tally(string Kind)
{
    /// <summary>How many inputs.</summary>
    public long Inputs { get; init; }

    /// <summary>How many outcomes were told apart.</summary>
    public int Outcomes { get; init; }

    /// <summary>Processor time of the slowest, ms.</summary>
    public double SlowestMs { get; init; }

    /// <summary>As a worker writes it for <see cref="Read"/>.</summary>
    public string Line => string.Create(CultureInfo.InvariantCulture, $"tally\t{Kind}\t{Inputs}\t{Outcomes}\t{SlowestMs}");

    /// <summary>With one input more.</summary>
    public Tally OneMore() => this with { Inputs = Inputs + 1 };

    /// <summary>With the time that an input took.</summary>
    public Tally Took(TimeSpan time) => this with { SlowestMs = Math.Max(SlowestMs, time.TotalMilliseconds) };

    /// <summary>A line of a worker; null for what is none.</summary>
    public static Tally? Read(string line) =>
        line.Split('\t') is ["tally", var kind, var inputs, var outcomes, var slowest]
            ? new Tally(kind)
            {
                Inputs = long.Parse(inputs, CultureInfo.InvariantCulture),
                Outcomes = int.Parse(outcomes, CultureInfo.InvariantCulture),
                SlowestMs = double.Parse(slowest, CultureInfo.InvariantCulture),
            }
            : null;

    /// <summary>Those of several workers, kind by kind; an outcome that two of them met counts once for each.</summary>
    public static IEnumerable<Tally> Together(IEnumerable<Tally> tallies) =>
        tallies
            .GroupBy(tally => tally.Kind)
            .Select(same => new Tally(same.Key)
            {
                Inputs = same.Sum(tally => tally.Inputs),
                Outcomes = same.Sum(tally => tally.Outcomes),
                SlowestMs = same.Max(tally => tally.SlowestMs),
            });

    /// <summary>A table for a reader, with the sum.</summary>
    public static string Table(IEnumerable<Tally> tallies, int findings)
    {
        var text = new StringBuilder("| kind | inputs | outcomes told apart | slowest, ms |\n| --- | ---: | ---: | ---: |\n");
        var inputs = 0L;
        foreach (var tally in tallies)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {tally.Kind} | {tally.Inputs} | {tally.Outcomes} | {tally.SlowestMs:0} |\n");
            inputs += tally.Inputs;
        }

        return text.Append(CultureInfo.InvariantCulture, $"{inputs} inputs, {findings} findings\n").ToString();
    }
}
