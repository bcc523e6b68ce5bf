using System.Globalization;

namespace RuleBook.Cli.Fleets;

/// <summary>The rows that an earlier book answered otherwise: how many by from and to, with the first row of each.</summary>
/// <param name="book">How the earlier book was named.</param>
internal sealed class FleetEffect(string book)
{
    /// <summary>What stands for the answer of a book that could not read the row.</summary>
    public const string Unreadable = "not readable";

    private const string Otherwise = "the same verdict, told otherwise";

    private readonly SortedDictionary<(string From, string To), (long Rows, long First, string State)> changed = [];

    /// <summary>Counts a row.</summary>
    /// <param name="number">Which row it is.</param>
    /// <param name="before">The earlier answer; null where that book could not read the row.</param>
    /// <param name="now">The answer.</param>
    public void Add(long number, Answered? before, Answered now)
    {
        if (before is not null && (ReferenceEquals(before.Line, now.Line) || before.Line == now.Line))
            return;
        var key = before?.Verdict == now.Verdict ? (Otherwise, now.Verdict) : (before?.Verdict ?? Unreadable, now.Verdict);
        var (rows, first, state) = changed.GetValueOrDefault(key, (0, number, now.State));
        changed[key] = (rows + 1, first, state);
    }

    /// <summary>What is counted so far.</summary>
    public EffectCount[] Counts
    {
        get =>
            [.. changed.Select(each => new EffectCount(each.Key.From, each.Key.To, each.Value.Rows, each.Value.First, each.Value.State))];
        init
        {
            foreach (var each in value)
                changed[(each.From, each.To)] = (each.Rows, each.First, each.State);
        }
    }

    /// <summary>The lines to tell.</summary>
    public IEnumerable<string> Lines()
    {
        var verdicts = changed.Where(each => each.Key.From != Otherwise).ToArray();
        yield return $"against {Text.Visible.Of(book)}: another verdict on {Figure(verdicts.Sum(each => each.Value.Rows))} rows";
        foreach (var ((from, to), (rows, first, state)) in verdicts.OrderByDescending(each => each.Value.Rows))
            yield return $"  {from} -> {to}: {Figure(rows)}, such as row {Figure(first)} ({state})";
        foreach (var ((_, to), (rows, first, state)) in changed.Except(verdicts).OrderByDescending(each => each.Value.Rows))
            yield return $"  still {to}, with another limit, margin, question or evidence: {Figure(rows)}, such as row "
                + $"{Figure(first)} ({state})";
    }

    private static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);
}
