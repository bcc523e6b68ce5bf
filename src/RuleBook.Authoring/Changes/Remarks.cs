using System.Text;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// What changes beside the pathways: what was wrong before, how a measure is taken, which day decides, who certifies, and what no verdict
/// shows.
/// </summary>
internal static class Remarks
{
    public static IEnumerable<Remark> Of(Book before, Book after, Jurisdiction old, Jurisdiction now)
    {
        var topics = old.Rules.Concat(now.Rules).Select(rule => rule.Topic).Distinct().Order(StringComparer.Ordinal);
        foreach (var pair in topics.SelectMany(topic => RulePair.Of(old, now, topic)))
        {
            if (pair is not { Before: { } left, After: { } right })
                continue;
            foreach (var remark in Corrected(left, right, now))
                yield return remark;
            var (was, by) = (Decides(left, old), Decides(right, now));
            if (was != by)
                yield return new Remark(
                    RemarkKind.DecidedBy,
                    now.Id,
                    now.Name,
                    right.Id,
                    null,
                    $"{was} decided, now {by} does",
                    right.Mark
                );
            if (Measured(before, after, left, right, now) is { } measured)
                yield return measured;
        }

        foreach (var remark in SchemeRemarks.Of(before, after, old, now).Concat(OtherRemarks.Of(before, after, old, now)))
            yield return remark;
    }

    /// <summary>What the new book says that the old one had wrong.</summary>
    private static IEnumerable<Remark> Corrected(Rule left, Rule right, Jurisdiction place)
    {
        var known = left
            .Versions.SelectMany(version => version.Corrected)
            .Select(correction => (correction.On, correction.Was))
            .ToHashSet();
        return from version in right.Versions
            from correction in version.Corrected
            where !known.Contains((correction.On, correction.Was))
            select new Remark(
                RemarkKind.Corrected,
                place.Id,
                place.Name,
                right.Id,
                version.From?.Earliest,
                $"past answers were wrong, for jobs that the version from {version.From?.Text ?? "an unknown day"} decides: the "
                    + $"book said {correction.Was}; {correction.Because}",
                correction.Mark
            );
    }

    private static string Decides(Rule rule, Jurisdiction place) =>
        (rule.DecidedBy ?? place.DecidedBy) is { } by ? $"the day of the {by}" : "any day of the job";

    private static Remark? Measured(Book before, Book after, Rule left, Rule right, Jurisdiction place)
    {
        DateOnly[] days = [.. DayEdges.Of(before, [left]).Concat(DayEdges.Of(after, [right])).Distinct().Order()];
        foreach (var (day, i) in days.Select((day, i) => (day, i)))
        {
            var (was, now) = (Basis(before, left, day), Basis(after, right, day));
            if (was == now || was.Length == 0 || now.Length == 0)
                continue;
            var mark =
                right.Versions.LastOrDefault(version => version.Decides && (version.From?.Earliest ?? DateOnly.MinValue) <= day)?.Mark
                ?? right.Mark;
            return new Remark(
                RemarkKind.Measured,
                place.Id,
                place.Name,
                right.Id,
                i == 0 ? null : day,
                $"measured {now} instead of {was}",
                mark
            );
        }

        return null;
    }

    private static string Basis(Book book, Rule rule, DateOnly day) =>
        string.Join(
            " or ",
            Resolver
                .Resolve(book, rule, day)
                .Where(version => version.Content is Stated { Tiers.IsEmpty: false })
                .Select(version => version.Measured is { } measured ? Text(measured) : "in no way that is said")
                .Distinct()
                .Order(StringComparer.Ordinal)
        );

    private static string Text(Measured measured)
    {
        var text = new StringBuilder("at ").Append(measured.MassState ?? "a mass not given");
        return measured.Between.IsDefaultOrEmpty
            ? text.ToString()
            : text.Append(" between ").AppendJoin(" and ", measured.Between).ToString();
    }
}
