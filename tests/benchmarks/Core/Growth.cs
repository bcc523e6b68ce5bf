using System.Globalization;
using System.Text;
using RuleBook.Answers;
using RuleBook.Authoring.Books;
using RuleBook.Authoring.Inspecting;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Yaml;

namespace RuleBook.Benchmarks;

/// <summary>
/// How checking, compiling and judging grow with the number of jurisdictions: books of the Australian folders and copies of those of its
/// states under ids of their own, in processor time.
/// </summary>
internal static class Growth
{
    private static readonly int[] Sizes = [20, 60, 200];
    private static readonly DateOnly Day = new(2026, 11, 27);

    public static void Print(string folder)
    {
        Console.WriteLine($"{"jurisdictions", 13} {"check ms", 10} {"compile ms", 10} {"judge ms", 10}");
        _ = Measure(folder, Sizes[0]); // lets the runtime compile
        double[][] measured = [.. Sizes.Select(size => Measure(folder, size))];
        for (var i = 0; i < Sizes.Length; i++)
            Console.WriteLine($"{Sizes[i], 13} {string.Join(' ', measured[i].Select(each => Figure(each, 10)))}");
        for (var i = 1; i < Sizes.Length; i++)
        {
            var grown = Math.Log((double)Sizes[i] / Sizes[0]);
            var exponents = measured[i].Zip(measured[0], (large, small) => Figure(Math.Log(large / small) / grown, 10));
            Console.WriteLine($"{$"{Sizes[0]} to {Sizes[i]}", 13} {string.Join(' ', exponents)}");
        }
    }

    private static double[] Measure(string folder, int size)
    {
        var files = BookFolder.Of(Files(folder, size));
        var example = Path.Combine(folder, "examples", "touring-wagon.yaml");
        double[] least = [double.MaxValue, double.MaxValue, double.MaxValue];
        for (var round = 0; round < 3; round++)
        {
            Book? book = null;
            Keep(0, () => book = Inspection.Run(files, Day).Book ?? throw new InvalidOperationException("the copies are no sound book"));
            Keep(1, () => book!.Jurisdictions.ToList().ForEach(place => TableBook.Of(book).Table(place.Id, Day)));
            var job = JobReader.Read(YamlText.ReadFile(example, example), book!);
            Keep(2, () => book!.Jurisdictions.ToList().ForEach(place => _ = Assessor.Assess(book, job, place.Id).Findings));
        }

        return least;

        void Keep(int at, Action act)
        {
            GC.Collect();
            var start = Environment.CpuUsage.TotalTime;
            act();
            least[at] = Math.Min(least[at], (Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        }
    }

    private static IEnumerable<BookBytes> Files(string folder, int size)
    {
        foreach (var path in Within("schema/vocabulary").Concat(Within("schema/reference")))
            yield return new BookBytes(path, File.ReadAllBytes(Path.Combine(folder, path)));
        string[] places = [.. Directory.GetDirectories(Path.Combine(folder, "jurisdictions"), "au*").Select(Path.GetFileName)!];
        string[] states = [.. places.Where(place => place != "au").Order(StringComparer.Ordinal)];
        for (var i = 0; i < size; i++)
        {
            var place = i < places.Length ? places[i] : states[i % states.Length];
            var copy = i < places.Length ? place : $"zz-{i:000}";
            foreach (var path in Within($"jurisdictions/{place}"))
                yield return new BookBytes(
                    path.Replace($"/{place}/", $"/{copy}/", StringComparison.Ordinal),
                    Encoding.UTF8.GetBytes(File.ReadAllText(Path.Combine(folder, path)).Replace(place, copy, StringComparison.Ordinal))
                );
        }

        IEnumerable<string> Within(string under) =>
            Directory.GetFiles(Path.Combine(folder, under), "*.yaml").Select(file => $"{under}/{Path.GetFileName(file)}");
    }

    private static string Figure(double value, int width) => value.ToString("0.00", CultureInfo.InvariantCulture).PadLeft(width);
}
