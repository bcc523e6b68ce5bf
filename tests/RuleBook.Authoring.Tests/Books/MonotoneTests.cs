using System.Globalization;
using CsCheck;
using RuleBook.Tables;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// Properties of the real book over random jobs: a mistake in a limit or in the evaluator would break them (derived, no source).
/// </summary>
public sealed class MonotoneTests
{
    private static readonly string[] Places = ["au", "au-act", "au-nsw", "au-nt", "au-qld", "au-sa", "au-tas", "au-vic", "au-wa"];
    private static readonly Gen<string> Place = Gen.Int[0, 8].Select(index => Places[index]);
    private static readonly Gen<int> Millimetres = Gen.Int[0, 120];

    [Fact]
    public void More_lift_or_growth_never_makes_a_verdict_easier() =>
        Gen.Select(Place, Day(), Millimetres, Millimetres, Millimetres, Gen.Int[1, 60], Gen.Int[0, 2])
            .Sample(
                (place, day, suspension, body, growth, more, which) =>
                {
                    var before = Judge(place, day, suspension, body, growth);
                    var after = Judge(
                        place,
                        day,
                        suspension + (which == 0 ? more : 0),
                        body + (which == 1 ? more : 0),
                        growth + (which == 2 ? more : 0)
                    );
                    return after.Best >= before.Best && after.Worst >= before.Worst;
                },
                iter: 400,
                threads: 1
            );

    [Fact]
    public void What_is_known_in_part_never_contradicts_what_is_known_in_full() =>
        Gen.Select(Place, Day(), Millimetres, Millimetres, Gen.Bool.Select(fitted => fitted ? "yes" : "no"))
            .Sample(
                (place, day, suspension, growth, control) =>
                {
                    var part = RealBook.Assess(Job(place, day, suspension, 0, growth, "unknown")).Between;
                    var full = RealBook.Assess(Job(place, day, suspension, 0, growth, control)).Between;
                    return part.Best <= full.Best && full.Worst <= part.Worst;
                },
                iter: 300,
                threads: 1
            );

    private static Gen<string> Day() =>
        Gen.Int[0, 6000].Select(days => new DateOnly(2011, 1, 1).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static Outcome Judge(string place, string day, int suspension, int body, int growth) =>
        RealBook.Assess(Job(place, day, suspension, body, growth, "no")).Between;

    private static string Job(string place, string day, int suspension, int body, int growth, string control) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            registered-in: {{place}}
            on: {{day}}
            vehicle: { category: MC, four-wheel-drive: yes, stability-control: {{control}} }
            modification: { suspension-lift: {{suspension}} mm, body-lift: {{body}} mm, tyre-diameter-growth: {{growth}} mm }
            """
        );
}
