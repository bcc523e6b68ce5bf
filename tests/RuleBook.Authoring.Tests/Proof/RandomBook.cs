using System.Globalization;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Proof;

/// <summary>
/// A book of one jurisdiction with random rules on ride height: a few tiers, bounds of both kinds, tests, conditions, what is not
/// established.
/// </summary>
internal static class RandomBook
{
    private static readonly string[] Measures =
    [
        "suspension-lift",
        "body-lift",
        "tyre-lift",
        "total-lift",
        "tyre-diameter-growth",
        "new-gvm",
        "frame-height",
    ];
    private static readonly string[] Conditions = ["lane-change-test", "suspension-travel-kept-two-thirds"];
    private static readonly string[] Pathways = ["no-certificate", "certificate", "approval", "prohibited"];

    public static Book Of(Random random)
    {
        var rules = random.Next(1, 3);
        var text = string.Join('\n', Enumerable.Range(0, rules).Select(rule => Rule(random, rule)));
        return SmallBook.Of(("au-qld", $"topic: ride-height\nrules:\n{text}"));
    }

    private static string Rule(Random random, int at) =>
        $$"""
              - rule: rule-{{Word(at)}}
                title: Rule {{Word(at)}}
                for: { {{Opening(random)}} }
                versions:
            {{Versions(random)}}
            """;

    private static string Versions(Random random)
    {
        var until = random.Next(3) == 0 ? "2026" : "2020-01-01";
        return random.Next(2) == 0 ? Version(random, "2010-01-01") : $"{Version(random, "2010-01-01")}\n{Version(random, until)}";
    }

    private static string Version(Random random, string from) =>
        $$"""
                  - from: {{from}}
                    sources: [{ cite: law, clause: "1" }]
                    measured: { total: [{{(
                random.Next(2) == 0 ? "suspension-lift, tyre-lift" : "suspension-lift, body-lift, tyre-lift"
            )}}] }
            {{(random.Next(8) == 0 ? "        not-established: { ask: Somebody }" : Tiers(random))}}
            """;

    private static string Tiers(Random random)
    {
        var count = random.Next(1, 4);
        var first = random.Next(2);
        var tiers = Enumerable
            .Range(0, count)
            .Select(at =>
                $"          - {{ name: tier-{Word(at)}, pathway: {Pathways[Math.Min(first + at, 3)]}, when: {{ {Opening(random)} "
                + $"}}, within: {{ {Limits(random)} }}, provided: [{Provided(random)}] }}"
            );
        return $"        tiers:\n{string.Join('\n', tiers)}\n        beyond: "
            + $"{(random.Next(3) == 0 ? "not-established" : Pathways[random.Next(1, 4)])}";
    }

    private static string Tests(Random random) =>
        random.Next(4) switch
        {
            0 => "four-wheel-drive: yes",
            1 => "category: [MC, NA]",
            2 => $"new-gvm: {{ at-most: {Amount(random)} kg }}",
            _ => "",
        };

    /// <summary>What opens a tier, and whom a rule binds: also one of several, or none of them.</summary>
    private static string Opening(Random random) =>
        random.Next(6) switch
        {
            0 => $"any-of: [{{ {Some(random)} }}, {{ {Some(random)} }}]",
            1 => $"none-of: [{{ {Some(random)} }}]",
            _ => Tests(random),
        };

    private static string Some(Random random) =>
        Tests(random) is { Length: > 0 } tests
            ? tests
            : $"suspension-lift: {{ over: {random.Next(0, 50)} mm, under: {random.Next(50, 150)} mm }}";

    /// <summary>Several limits, or nothing but a share, so that it decides.</summary>
    private static string Limits(Random random) =>
        random.Next(2) == 0
            ? $"{Measures[random.Next(3)]}: {Share(random)}"
            : string.Join(
                ", ",
                Measures
                    .Where(_ => random.Next(3) == 0)
                    .Select(measure => $"{measure}: {Limit(random, measure, measure == "new-gvm" ? "kg" : "mm")}")
            );

    private static string Limit(Random random, string measure, string unit)
    {
        var (low, high) = (random.Next(-50, 50), random.Next(50, 150));
        return random.Next(unit == "mm" && measure != "total-lift" ? 8 : 7) switch
        {
            7 => Share(random),
            0 => "none",
            1 => "not-established",
            2 => $"{{ under: {high} {unit} }}",
            3 => $"{{ at-least: {low} {unit}, at-most: {high} {unit} }}",
            4 => $"{{ over: {low} {unit}, under: {high}.5 {unit} }}",
            _ => $"{high} {unit}",
        };
    }

    private static string Share(Random random)
    {
        var (low, high) = (random.Next(-50, 50), random.Next(50, 150));
        return random.Next(3) switch
        {
            0 => $"{{ at-most: {{ share: {high} %, of: wheelbase }} }}",
            1 => $"{{ under: [{high} mm, {{ share: {high}.5 %, of: wheelbase }}] }}",
            _ => $"{{ over: {low} mm, at-least: {{ share: {low} %, of: wheelbase }}, at-most: {{ share: {high} %, of: wheelbase }} }}",
        };
    }

    private static string Provided(Random random) =>
        random.Next(8) == 0
            ? $"{{ any-of: [{string.Join(", ", Conditions)}] }}"
            : string.Join(", ", Conditions.Where(_ => random.Next(4) == 0));

    private static string Amount(Random random) => (100 * random.Next(-1, 3)).ToString(CultureInfo.InvariantCulture);

    private static string Word(int at) => ((char)('a' + at)).ToString();
}
