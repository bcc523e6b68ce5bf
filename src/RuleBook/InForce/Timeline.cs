using System.Collections.Immutable;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>Which of a list of versions is or may be in force on a day, when starts may be known only in part.</summary>
internal static class Timeline
{
    /// <summary>A version's dates.</summary>
    /// <param name="From">Start; null when unknown.</param>
    /// <param name="InForceBy">
    /// Where the start is unknown: the day, month or year in which it is seen in force; it counts from its last day.
    /// </param>
    /// <param name="Until">Stated end, first day no longer in force.</param>
    public readonly record struct Span(PartialDate? From, PartialDate? InForceBy, PartialDate? Until)
    {
        internal DateOnly FirstStart => From?.Earliest ?? DateOnly.MinValue;

        internal DateOnly LastStart => From?.Latest ?? InForceBy?.Latest ?? DateOnly.MinValue;
    }

    /// <summary>
    /// The indexes of the spans that may be in force on <paramref name="day"/>, oldest first; -1 among them when it is possible that none
    /// is. A version ends where it says, or else where the next one starts.
    /// </summary>
    public static ImmutableArray<int> At(IReadOnlyList<Span> spans, DateOnly day)
    {
        var possible = ImmutableArray.CreateBuilder<int>();
        var certain = false;
        for (var i = 0; i < spans.Count; i++)
        {
            var (firstEnd, lastEnd) = End(spans, i);
            if (spans[i].FirstStart <= day && day < lastEnd)
                possible.Add(i);
            certain |= spans[i].LastStart <= day && day < firstEnd;
        }

        if (!certain && NoneIsPossible(spans, day))
            possible.Insert(0, -1);
        return possible.ToImmutable();
    }

    private static (DateOnly First, DateOnly Last) End(IReadOnlyList<Span> spans, int i)
    {
        if (spans[i].Until is { } until)
            return (until.Earliest, until.Latest);
        return i + 1 < spans.Count ? (spans[i + 1].FirstStart, spans[i + 1].LastStart) : (DateOnly.MaxValue, DateOnly.MaxValue);
    }

    private static bool NoneIsPossible(IReadOnlyList<Span> spans, DateOnly day)
    {
        if (spans.Count == 0 || day < spans[0].LastStart)
            return true;
        for (var i = 0; i < spans.Count; i++)
            if (
                spans[i].Until is { } until
                && until.Earliest <= day
                && (i + 1 == spans.Count || (until.Text != spans[i + 1].From?.Text && day < spans[i + 1].LastStart))
            )
                return true;
        return false;
    }
}
