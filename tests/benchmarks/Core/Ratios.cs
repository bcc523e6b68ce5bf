using System.Globalization;

namespace RuleBook.Benchmarks;

/// <summary>
/// Ratios on a machine that is busy with other things: processor time instead of the clock's, and all that is compared by turns, a slice
/// each, so that what slows the machine slows all. The median of the rounds counts.
/// </summary>
internal static class Ratios
{
    private const int Rounds = 15;
    private static readonly TimeSpan Slice = TimeSpan.FromMilliseconds(60);

    public static void Print(Verdicts verdicts)
    {
        (string Name, Func<int> Run)[] all =
        [
            ("written by hand in C#", verdicts.ByHand),
            ("table, placed and judged one by one", verdicts.Placed),
            ("table, judged one by one", verdicts.Judged),
            ("table, placed and judged by columns", () => Done(verdicts.PlacedByColumns)),
            ("table, judged by columns", () => Done(verdicts.JudgedByColumns)),
            ("RulesEngine", () => verdicts.ByRulesEngine().GetAwaiter().GetResult()),
            ("NRules", verdicts.ByNRules),
        ];
        var times = all.Select(_ => new List<double>()).ToArray();
        for (var round = -5; round < Rounds; round++) // the first ones let the runtime compile what is hot
        for (var at = 0; at < all.Length; at++)
        {
            var time = Time(all[at].Run);
            if (round >= 0)
                times[at].Add(time);
        }

        var medians = times.Select(each => each.Order().ElementAt(Rounds / 2)).ToArray();
        Console.WriteLine($"{"", -37} {"ns of CPU", 9} {"million/s", 9} {"by hand", 8} {"RulesEngine", 11} {"NRules", 8}");
        for (var at = 0; at < all.Length; at++)
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{all[at].Name, -37} {medians[at], 9:0.0} {1e3 / medians[at], 9:0.00} {medians[0] / medians[at], 8:0.0000} "
                        + $"{medians[^2] / medians[at], 11:0.0} {medians[^1] / medians[at], 8:0.0}"
                )
            );
    }

    /// <summary>Nanoseconds of processor time for one job.</summary>
    private static double Time(Func<int> run)
    {
        var (jobs, start) = (0L, Environment.CpuUsage.TotalTime);
        TimeSpan used;
        do
        {
            run();
            jobs += Verdicts.Count;
            used = Environment.CpuUsage.TotalTime - start;
        } while (used < Slice);
        return used.TotalNanoseconds / jobs;
    }

    private static int Done(Action run)
    {
        run();
        return 0;
    }
}
