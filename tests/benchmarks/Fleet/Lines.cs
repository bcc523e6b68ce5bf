using System.Collections.Immutable;
using static System.Math;
using static RuleBook.Benchmarks.Relations;
using Cells = System.Collections.Generic.Dictionary<string, string>;

namespace RuleBook.Benchmarks;

/// <summary>Where all of some comparisons hold, the answer lies between two pathways (0 no certificate, 3 prohibited).</summary>
internal sealed record Line(ImmutableList<string>? When, int Best, int Worst);

/// <summary>
/// What the exported relations say of a place's vehicles of these words, read as <c>judge.sql</c> reads them: the verdict is the most
/// onerous of the lines that hold, and where none holds there is nothing to judge. All but the lengths is worked out here and stands in no
/// line.
/// </summary>
internal sealed class Lines(Relations relations, string place, ImmutableDictionary<string, string> words)
{
    private const int Prohibited = 3;

    private readonly string ruling = relations.Of("rulings", "place", place).Single()["ruling"];

    public IEnumerable<Line> All() =>
        Here("movement_topics").GroupBy(each => each["topic"]).SelectMany(OnTopic).Where(line => line.When is not null);

    private IEnumerable<Line> OnTopic(IGrouping<string, Cells> moves)
    {
        string[] moved = [.. moves.Select(each => Moved(each["measure"])).OfType<string>()];
        if (moved.Length == 0)
            yield break;
        if (moves.Any(each => each["own_rule"] == "1"))
            throw new NotSupportedException($"{moves.Key} asks for rules of its own");
        ImmutableList<string>? touched = [$"({string.Join(" || ", moved)})"];
        var unbound = touched;
        yield return new(touched, 0, 0);
        foreach (var version in Here("versions").Where(each => each["topic"] == moves.Key))
        {
            var (where, binds) = Held(relations.Of("tests", "version", version["version"]).Where(test => test["tier"] == ""));
            foreach (var line in binds == 0 ? [] : Given(version, And(touched, where)).Where(line => line.Worst > 0))
                yield return binds == 2 ? line : line with { Best = 0 };
            unbound = binds == 2 ? AndNot(unbound, where) : unbound;
        }

        yield return new(unbound, 0, Prohibited);
    }

    private IEnumerable<Line> Given(Cells version, ImmutableList<string>? when) =>
        version["says"] switch
        {
            "not regulated" => [],
            "not established" => [new(when, 0, Prohibited)],
            _ => Tried(
                when,
                [.. relations.Of("tiers", "version", version["version"]).OrderBy(each => Number(each["step"]))],
                Number(version["beyond"])
            ),
        };

    /// <summary>The first tier that certainly holds, with those before it that may; where none does, with what is beyond.</summary>
    private IEnumerable<Line> Tried(
        ImmutableList<string>? when,
        ImmutableList<Cells> tiers,
        decimal? beyond,
        decimal best = Prohibited,
        decimal worst = 0,
        decimal exceeded = 0
    )
    {
        if (when is null)
            return [];
        if (tiers.IsEmpty)
            return [new(when, (int)Min(best, beyond ?? exceeded), (int)Max(worst, beyond ?? Prohibited))];
        var (tier, rest, tests) = (tiers[0], tiers.RemoveAt(0), relations.Of("tests", "tier", tiers[0]["tier"]));
        var ((where, holds), (opening, opens)) = (Held(tests), Held(tests.Where(test => test["part"] == "when")));
        var pathway = Number(tier["pathway"])!.Value;
        var (within, not) = (And(when, where), holds == 0 ? when : AndNot(when, where));
        var (exceeds, closed) = opens == 2 && pathway < Prohibited ? (And(not, opening), AndNot(not, opening)) : (null, not);
        return
        [
            .. holds == 2 ? [new Line(within, (int)Min(best, pathway), (int)Max(worst, pathway))]
            : holds == 1 ? Tried(within, rest, beyond, Min(best, pathway), Max(worst, pathway), exceeded)
            : [],
            .. Tried(exceeds, rest, beyond, best, worst, Number(tier["exceeded"])!.Value),
            .. Tried(closed, rest, beyond, best, worst, exceeded),
        ];
    }

    /// <summary>Where tests hold together, and then how: 0 not, 1 perhaps, 2 certainly.</summary>
    private (ImmutableList<string> Where, int Truth) Held(IEnumerable<Cells> tests)
    {
        var (where, truth) = (ImmutableList<string>.Empty, 2);
        foreach (var test in tests)
            if (test["kind"] == "measure" && Sum(test["quantity"]).Stated is { } sum)
                where = And(
                    where,
                    [.. End(sum, ">", test["low"], test["low_closed"]), .. End(sum, "<", test["high"], test["high_closed"])]
                )!;
            else
                truth = Min(truth, Truth(test));
        return (where, truth);
    }

    private static string[] End(string sum, string sign, string end, string closed) =>
        end == "" ? [] : [$"{sum} {sign}{(closed == "1" ? "=" : "")} {end}m"];

    private int Truth(Cells test) =>
        test["kind"] switch
        {
            "never" => 0,
            "not established" => 1,
            "condition" => 2,
            "word" when words.TryGetValue(test["fact"], out var word) => relations
                .Of("test_words", "test", test["test"])
                .Any(each => each["word"] == word)
                ? 2
                : 0,
            "word" => (int)Number(test["unstated"])!,
            _ => Within(Sum(test["quantity"]), test),
        };

    private static int Within((string? Stated, decimal? Low, decimal? High) known, Cells test)
    {
        return Min(
            Above(known.Low, known.High, Number(test["low"]), test["low_closed"] == "1"),
            Above(-known.High, -known.Low, -Number(test["high"]), test["high_closed"] == "1")
        );

        static int Above(decimal? least, decimal? most, decimal? end, bool closed) =>
            end is null || least > end || (least == end && closed) ? 2
            : most < end || (most == end && !closed) ? 0
            : 1;
    }

    /// <summary>Where a vehicle has changed a measure; null where none has.</summary>
    private string? Moved(string measure)
    {
        var move = Here("movements").Single(each => each["measure"] == measure);
        var ((stated, low, high), unchanged) = (Sum(move["quantity"]), Number(move["unchanged"]));
        return stated is not null ? $"{stated} != {unchanged}m"
            : low == unchanged && high == unchanged ? null
            : move["only_known"] == "1" && !(low >= Number(move["first_edge"])) && !(high <= Number(move["last_edge"])) ? null
            : "true";
    }

    /// <summary>A quantity as a sum of what the rows state, or between which bounds it lies whatever they state.</summary>
    private (string? Stated, decimal? Low, decimal? High) Sum(string quantity)
    {
        var row = Here("quantities").Single(each => each["quantity"] == quantity);
        if (Vehicle.Property(row["measure"]) is { } property)
            return (property, null, null);
        var parts = Here("parts")
            .Where(each => each["quantity"] == quantity)
            .Select(each => (Factor: Number(each["factor"]), Of: Sum(each["part"])))
            .ToList();
        if (parts.Where(each => each.Of.Stated is not null).ToArray() is [_, ..] stated)
            return parts.Exists(each => each.Of is { Stated: null, Low: not 0 })
                ? throw new NotSupportedException($"a part of {quantity} is not stated")
                : ($"({string.Join(" + ", stated.Select(each => $"{each.Factor}m * {each.Of.Stated}"))})", null, null);
        if (parts.Count > 0)
            return (null, parts.Sum(each => each.Factor * each.Of.Low), parts.Sum(each => each.Factor * each.Of.High));
        var implied = relations
            .Of("implied", "measure", row["measure"])
            .SingleOrDefault(each => words.GetValueOrDefault(each["fact"]) == each["word"]);
        return implied is null
            ? (null, Number(row["unchanged"]), Number(row["unchanged"]))
            : (null, Number(implied["low"]), Number(implied["high"]));
    }

    private static ImmutableList<string>? And(ImmutableList<string>? when, IEnumerable<string> all)
    {
        string[] more = [.. all.Except(when ?? [])];
        return when is null || (more.Length > 0 && when.Contains(Not(more))) ? null : when.AddRange(more);
    }

    private static ImmutableList<string>? AndNot(ImmutableList<string>? when, IEnumerable<string> all)
    {
        string[] more = [.. all.Except(when ?? [])];
        return when is null || more.Length == 0 ? null : [.. when.Append(Not(more)).Distinct()];
    }

    private static string Not(string[] all) => $"!({string.Join(" && ", all)})";

    private IEnumerable<Cells> Here(string relation) => relations.Of(relation, "ruling", ruling);
}
