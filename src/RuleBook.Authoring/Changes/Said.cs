using System.Globalization;

namespace RuleBook.Authoring.Changes;

/// <summary>What two books say beside the pathways, as short statements, and where they differ.</summary>
/// <param name="From">First day on which they differ; null where that is the first day of all, or no matter of a day.</param>
/// <param name="Text">What is said no longer, and what now.</param>
internal sealed record Said(DateOnly? From, string Text)
{
    private const int MostTold = 4;

    /// <summary>The difference over some days, oldest first; null where they say the same on each.</summary>
    public static Said? Differently(
        IReadOnlyList<DateOnly> days,
        Func<DateOnly, IEnumerable<string>> before,
        Func<DateOnly, IEnumerable<string>> after
    )
    {
        var (gone, come) = (new List<string>(), new List<string>());
        var first = -1;
        foreach (var (i, day) in days.Index())
        {
            string[] was = [.. before(day).Distinct()],
                now = [.. after(day).Distinct()];
            if (first < 0 && !was.ToHashSet(StringComparer.Ordinal).SetEquals(now))
                first = i;
            gone.AddRange(was.Except(now).Except(gone));
            come.AddRange(now.Except(was).Except(come));
        }

        return first < 0 ? null : new Said(first == 0 ? null : days[first], Both(gone, come));
    }

    /// <summary>The difference where it is no matter of a day.</summary>
    public static Said? Differently(IEnumerable<string> before, IEnumerable<string> after) =>
        Differently([DateOnly.MinValue], _ => before, _ => after);

    private static string Both(List<string> gone, List<string> come) =>
        string.Join(
            "; ",
            new[]
            {
                gone.Count == 0 ? null : $"no longer {Listed(gone)}",
                come.Count == 0 ? null : $"{(gone.Count == 0 ? "new: " : "now ")}{Listed(come)}",
            }.OfType<string>()
        );

    private static string Listed(List<string> statements) =>
        statements.Count <= MostTold
            ? string.Join(", ", statements)
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join(", ", statements.Take(MostTold))} and {statements.Count - MostTold} more"
            );
}
