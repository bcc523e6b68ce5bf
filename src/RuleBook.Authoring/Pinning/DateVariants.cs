using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>Dates moved by a day; of a date known only in part, its first and its last day.</summary>
internal static class DateVariants
{
    public static IEnumerable<(PartialDate Date, string To)> Of(PartialDate date)
    {
        foreach (var days in (int[])[-1, 1])
        {
            if (date.IsExact)
            {
                yield return Moved(date.Earliest.AddDays(days), date.Latest.AddDays(days));
                continue;
            }

            yield return Moved(date.Earliest.AddDays(days), date.Latest);
            yield return Moved(date.Earliest, date.Latest.AddDays(days));
        }
    }

    /// <summary>The last day moved only: a date by which a version is seen in force counts from there.</summary>
    public static IEnumerable<(PartialDate Date, string To)> OfLast(PartialDate date) =>
        ((int[])[-1, 1]).Select(days => date.Latest.AddDays(days)).Select(last => Moved(last < date.Earliest ? last : date.Earliest, last));

    private static (PartialDate Date, string To) Moved(DateOnly first, DateOnly last)
    {
        var (from, to) = (PartialDate.Of(first), PartialDate.Of(last));
        return first == last ? (from, from.Text) : (new PartialDate($"[{from.Text}..{to.Text}]", first, last), $"{from.Text} to {to.Text}");
    }
}
