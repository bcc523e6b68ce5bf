using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Finds the measures that the rules of a book bound as a share of another one, and makes a measure of each share.</summary>
internal static class ShareMeasures
{
    private static readonly string[] Ends = ["at-least", "over", "at-most", "under"];

    /// <summary>The measures of a vocabulary, with one for each share that some rule bounds.</summary>
    public static ImmutableDictionary<string, Measure> With(
        this ImmutableDictionary<string, Measure> measures,
        IReadOnlyList<BookFile> files
    )
    {
        var shares = files
            .Where(file => file.Path.StartsWith("jurisdictions/", StringComparison.Ordinal))
            .SelectMany(file => In(file.Root))
            .Distinct()
            .Where(share => Fault(share, measures) is null && !measures.ContainsKey(share.Name))
            .ToArray();
        foreach (var share in shares)
        {
            var (part, whole) = (measures[share.Part], measures[share.Whole]);
            measures = measures
                .SetItem(share.Name, Of(share, part, whole))
                .SetItem(part.Name, part with { InShares = true })
                .SetItem(whole.Name, whole with { InShares = true });
        }

        return measures;
    }

    /// <summary>Why one measure can't be a share of the other, and what would be right; null where it can.</summary>
    public static (string Why, string Tip)? Fault(MeasureShare share, IReadOnlyDictionary<string, Measure> measures)
    {
        if (!measures.TryGetValue(share.Part, out var part) || !measures.TryGetValue(share.Whole, out var whole))
            return ($"'{share.Whole}' is not a measure of the vocabulary", Spelling.Tip(share.Whole, [.. measures.Keys]));
        if (part == whole)
            return ("it is a share of itself", "name another measure of the same kind");
        if (part.IsDate || whole.IsDate || part.Unit.Dimension != whole.Unit.Dimension)
            return (
                $"{part.Title} ({part.Unit.Symbol}) is no share of {whole.Title} ({(whole.IsDate ? "date" : whole.Unit.Symbol)})",
                "name a measure of the same kind: a length of a length, a mass of a mass"
            );
        if (KnownWords.TotalLift is var total && (part.Name == total || whole.Name == total))
            return ("each rule adds a total lift up in its own way", "name one of its parts");
        return part.Share is null && whole.Share is null ? null : ("it is a share already", "name a measure of the vocabulary");
    }

    private static Measure Of(MeasureShare share, Measure part, Measure whole) =>
        new(
            share.Name,
            $"{part.Title} as a share of the {whole.Title}",
            Unit.Base(Dimension.Ratio),
            part.IfAbsent is null ? part.Job : whole.Job,
            null,
            false,
            true,
            false,
            $"100 times the {part.Title}, divided by the {whole.Title}.",
            part.Mark
        )
        {
            Share = share,
            BelowZero = part.BelowZero == BelowZero.Never ? BelowZero.Never : BelowZero.Derived,
        };

    private static IEnumerable<MeasureShare> In(Node node) =>
        node switch
        {
            Mapping map => map.Entries.SelectMany(entry =>
                entry.Key.Text == "within" && entry.Value is Mapping limits ? limits.Entries.SelectMany(Bounded) : In(entry.Value)
            ),
            Sequence list => list.Items.SelectMany(In),
            _ => [],
        };

    private static IEnumerable<MeasureShare> Bounded(KeyValuePair<Scalar, Node> limit) =>
        limit.Value is not Mapping ends
            ? []
            : ends
                .Entries.Where(end => Ends.Contains(end.Key.Text))
                .SelectMany(end => end.Value is Sequence all ? [.. all.Items] : ImmutableArray.Create(end.Value))
                .OfType<Mapping>()
                .Select(end => end.Find("of"))
                .OfType<Scalar>()
                .Select(whole => new MeasureShare(limit.Key.Text, whole.Text));
}
