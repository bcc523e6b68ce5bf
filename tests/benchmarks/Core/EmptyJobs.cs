using System.Globalization;
using RuleBook.Answers;
using RuleBook.Authoring.Inspecting;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Yaml;

namespace RuleBook.Benchmarks;

/// <summary>
/// What a job costs that says nothing, or nothing but one change, in each jurisdiction: everything is open. The whole answer as JSON, in
/// processor time; the first of a place also compiles its tables.
/// </summary>
internal static class EmptyJobs
{
    private static readonly string[] Said =
    [
        "vehicle: {}",
        "modification: { suspension-lift: 45 mm }",
        "modification: { tyre-diameter-growth: 40 mm }",
    ];

    public static void Print(string folder)
    {
        var book = BookReading.Open(folder);
        Console.WriteLine($"{"", -48} {"first ms", 9} {"again ms", 9}  slowest place");
        foreach (var said in Said)
        {
            (string Place, double First, double Again)[] measured =
            [
                .. book.Jurisdictions.Where(place => place.Registers).Select(place => Measure(book, place.Id, said)),
            ];
            var (place, first, again) = measured.MaxBy(each => each.Again);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{said, -48} {measured.Max(each => each.First), 9:0.00} {again, 9:0.00}  {place}"
                )
            );
        }
    }

    private static (string Place, double First, double Again) Measure(Book book, string place, string said)
    {
        var job = JobReader.Read(YamlText.Read($"registered-in: {place}\non: 2026-11-27\n{said}\n", "job.yaml"), book);
        var (first, again) = (Cost(1), double.MaxValue);
        for (var round = 0; round < 5; round++)
            again = Math.Min(again, Cost(20));
        return (place, first, again);

        double Cost(int times)
        {
            var start = Environment.CpuUsage.TotalTime;
            for (var i = 0; i < times; i++)
                _ = AssessmentJson.Write(Assessor.Assess(book, job));
            return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds / times;
        }
    }
}
