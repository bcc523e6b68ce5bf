using System.Collections.Immutable;
using nietras.SeparatedValues;
using RulesEngine.Models;
using Words = System.Collections.Immutable.ImmutableDictionary<string, string>;

namespace RuleBook.Benchmarks;

/// <summary>
/// A fleet by the package RulesEngine on all cores, from CSV to CSV: of each row the most onerous of the lines that hold, a workflow a
/// place. A row is written as it was read, with the verdict and, where it is open, between which pathways.
/// </summary>
internal static class RulesOverRows
{
    private static readonly string[] Pathways = ["no certificate", "certificate", "approval first", "not allowed"];

    public static void Judge(string file, string relations, string told)
    {
        var read = new Relations(relations);
        var lines = Vehicles.Places.ToDictionary(place => place, place => Lines(read, place).ToArray());
        var engine = new RulesEngine.RulesEngine(
            [.. lines.Select(each => Workflow(each.Key, each.Value))],
            new ReSettings { EnableFormattedErrorMessage = false, EnableScopedParams = false }
        );
        using var reader = Sep.Reader().FromFile(file);
        using var text = new StreamWriter(told);
        text.WriteLine($"{string.Join(',', reader.Header.ColNames)},verdict,headline");
        foreach (var row in reader.ParallelEnumerate(row => $"{row.Span},{Verdict(row[1].ToString(), Vehicle.Of(row))}"))
            text.WriteLine(row);

        string Verdict(string place, Vehicle vehicle)
        {
            var (best, worst) = (-1, -1);
            var results = engine.ExecuteAllRulesAsync(place, new RuleParameter("input1", vehicle)).AsTask().GetAwaiter().GetResult();
            for (var at = 0; at < results.Count; at++)
                if (results[at].IsSuccess)
                    (best, worst) = (Math.Max(best, lines[place][at].Best), Math.Max(worst, lines[place][at].Worst));
            return Told(best, worst);
        }
    }

    private static string Told(int best, int worst) =>
        (best, worst) switch
        {
            (-1, _) => "nothing-to-judge,nothing to judge",
            (0, 0) => "no-certificate,allowed without a certificate",
            (1, 1) => "certificate,allowed with a certificate",
            (2, 2) => "approval,allowed with the authority's approval first",
            (3, 3) => "prohibited,not allowed",
            _ => $"undecided,undecided: {Pathways[best]} to {Pathways[worst]}",
        };

    private static Workflow Workflow(string place, Line[] lines) =>
        new()
        {
            WorkflowName = place,
            Rules = lines.Select((line, at) => new Rule { RuleName = $"{at}", Expression = string.Join(" && ", line.When!) }),
        };

    /// <summary>The lines of all words that a row can state; what holds of several stands once, with the words of which it holds.</summary>
    private static IEnumerable<Line> Lines(Relations relations, string place) =>
        Vehicle
            .Facts.Aggregate(
                (IEnumerable<Words>)[Words.Empty],
                (all, fact) => all.SelectMany(_ => fact.Words, (words, word) => words.Add(fact.Fact, word))
            )
            .SelectMany(words => new Lines(relations, place, words).All(), (words, line) => (words, line))
            .GroupBy(of => (When: string.Join(" && ", of.line.When!), of.line.Best, of.line.Worst), of => of.words)
            .SelectMany(of => Where([.. of.Distinct()]).Select(where => new Line([.. where, of.Key.When], of.Key.Best, of.Key.Worst)));

    /// <summary>Any of some words of several facts: as one condition a fact, if they are all that it can have with the others.</summary>
    private static IEnumerable<IEnumerable<string>> Where(ImmutableArray<Words> any)
    {
        var facts = Vehicle.Facts.Select(fact => (fact.Fact, Words: any.Select(each => each[fact.Fact]).Distinct().ToList())).ToList();
        return any.Length == facts.Aggregate(1, (product, each) => product * each.Words.Count)
            ? [facts.Where(each => each.Words.Count == 1).Select(each => Is(each.Fact, each.Words[0]))]
            : any.Select(each => each.Select(word => Is(word.Key, word.Value)));
    }

    private static string Is(string fact, string word) => $"{Vehicle.Property(fact)} == \"{word}\"";
}
