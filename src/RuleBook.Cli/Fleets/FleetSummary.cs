using System.Globalization;
using System.Runtime.InteropServices;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>How many rows came out how: by verdict, by state, by reason.</summary>
internal sealed class FleetSummary
{
    private const int MostReasons = 10;

    /// <summary>Reasons name what the jobs state; more different ones than that are not told apart.</summary>
    private const int MostCounted = 1000;

    private const int MostPending = 10_000;

    private readonly SortedDictionary<string, long> verdicts = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, long> states = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, long> reasons = new(StringComparer.Ordinal);

    /// <summary>Answers that are still to be counted, so that a row which is answered as one before costs no more than this.</summary>
    private readonly Dictionary<Answered, long> pending = new(ReferenceEqualityComparer.Instance);

    private long rows;

    /// <summary>Rows that could not be read.</summary>
    public long Rejected { get; private set; }

    /// <summary>Cells that a spreadsheet would have run.</summary>
    public long Defused { get; set; }

    public long Rows => rows + Rejected;

    /// <summary>What is counted so far.</summary>
    public FleetCounts Counts
    {
        get
        {
            CountPending();
            return new FleetCounts(rows, Rejected, Defused, new(verdicts), new(states), new(reasons));
        }
        init
        {
            (rows, Rejected, Defused) = (value.Rows, value.Rejected, value.Defused);
            foreach (var (into, from) in new[] { (verdicts, value.Verdicts), (states, value.States), (reasons, value.Reasons) })
            foreach (var (key, times) in from)
                into[key] = times;
        }
    }

    public void Reject() => Rejected++;

    /// <summary>Counts rows with the same answer.</summary>
    public void Add(Answered answer, long times)
    {
        rows += times;
        CollectionsMarshal.GetValueRefOrAddDefault(pending, answer, out _) += times;
        if (pending.Count >= MostPending)
            CountPending();
    }

    /// <summary>The lines to tell.</summary>
    public IEnumerable<string> Lines()
    {
        CountPending();
        var counts = Most(verdicts).Select(each => $"{Figure(each.Value)} {each.Key}").Append($"{Figure(Rejected)} rejected");
        yield return $"{Figure(Rows)} rows: {string.Join(", ", counts)}";
        foreach (var (state, rows) in states)
            yield return $"  {state}: {Figure(rows)}";
        if (reasons.Count > 0)
            yield return "most common reasons:";
        foreach (var (reason, rows) in Most(reasons).Take(MostReasons))
            yield return $"  {Figure(rows)}: {Visible.Of(reason)}";
        if (Defused > 0)
            yield return $"{Figure(Defused)} cells begin like a formula of a spreadsheet: each has an apostrophe before it in what "
                + "was written";
        yield return "This is not legal advice: the authority and the certifier decide. One row in full: --explain ROW";
    }

    private void CountPending()
    {
        foreach (var (answer, times) in pending)
        {
            Count(verdicts, answer.Verdict, times);
            Count(states, $"{answer.State} {answer.Verdict}", times);
            foreach (var reason in answer.Reasons)
                Count(reasons, reasons.Count < MostCounted || reasons.ContainsKey(reason) ? reason : "other reasons", times);
        }

        pending.Clear();
    }

    private static void Count(SortedDictionary<string, long> into, string key, long times) =>
        into[key] = into.GetValueOrDefault(key) + times;

    private static IEnumerable<KeyValuePair<string, long>> Most(SortedDictionary<string, long> counts) =>
        counts.OrderByDescending(each => each.Value);

    private static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);
}
