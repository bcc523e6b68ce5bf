using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Inspecting;
using RuleBook.Jobs.Reading;
using RuleBook.Telling;
using RuleBook.Yaml;

namespace RuleBook.Benchmarks;

/// <summary>
/// What an assessment of each example costs in processor time and memory: the pathways alone, all that it holds, and that written as JSON.
/// </summary>
internal static class Assessments
{
    private static readonly TimeSpan Slice = TimeSpan.FromMilliseconds(250);

    public static void Print(string folder, string examples)
    {
        var book = BookReading.Open(folder);
        Console.WriteLine($"{"", -28} {"verdicts/s", 11} {"kB", 7} {"whole/s", 9} {"kB", 7} {"as JSON/s", 9} {"kB", 7}");
        foreach (var file in Directory.GetFiles(Path.Combine(folder, "examples"), $"{examples}.yaml").Order(StringComparer.Ordinal))
        {
            var job = JobReader.Read(YamlText.ReadFile(file, file), book);
            var (verdict, whole, json) = (
                Cost(() => (int)Assessor.Assess(book, job).Between.Worst),
                Cost(() => Read(Assessor.Assess(book, job))),
                Cost(() => AssessmentJson.Write(Assessor.Assess(book, job)).Length)
            );
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Path.GetFileNameWithoutExtension(file), -28} {verdict.PerSecond, 11:0} {verdict.Kilobytes, 7:0.0} "
                        + $"{whole.PerSecond, 9:0} {whole.Kilobytes, 7:0.0} {json.PerSecond, 9:0} {json.Kilobytes, 7:0.0}"
                )
            );
        }
    }

    /// <summary>Makes everything that an assessment holds.</summary>
    private static int Read(Assessment made) =>
        made.Blockers.Length
        + made.NotJudged.Length
        + made.Measures.Length
        + made.Findings.Length
        + made.OfUse.Length
        + made.Undecided.Length
        + made.Gaps.Length
        + made.Held.Length
        + made.Cautions.Length
        + made.Foremost.Length
        + (made.Masses is null ? 0 : 1)
        + (made.Heights is null ? 0 : 1)
        + (made.Tyres is null ? 0 : 1)
        + (made.Certification is null ? 0 : 1);

    private static (double PerSecond, double Kilobytes) Cost(Func<int> make)
    {
        for (var round = 0; ; round++)
        {
            var (made, bytes, start) = (0, GC.GetAllocatedBytesForCurrentThread(), Environment.CpuUsage.TotalTime);
            TimeSpan used;
            do
            {
                for (var i = 0; i < 20; i++)
                    make();
                made += 20;
                used = Environment.CpuUsage.TotalTime - start;
            } while (used < Slice);
            if (round == 4)
                // The first rounds let the runtime compile.
                return (made / used.TotalSeconds, (GC.GetAllocatedBytesForCurrentThread() - bytes) / 1024.0 / made);
        }
    }
}
