using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>
/// Reads the ends of a range that are shares of another measure: <c>at-most: { share: 60 %, of: wheelbase }</c>, or in a list beside a
/// quantity where all of them must hold (whichever is less): <c>at-most: [3700 mm, { share: 60 %, of: wheelbase }]</c>.
/// </summary>
internal sealed class ShareReader(Vocabulary vocabulary, Fields fields)
{
    /// <summary>Whether some end of the range is a share or a list.</summary>
    public static bool HasShares(Node value) => value is Mapping range && range.Entries.Any(end => end.Value is not Scalar);

    /// <summary>What is left of the range once its shares are taken out (null for nothing), and a limit for each other measure.</summary>
    public (Mapping? Own, ImmutableArray<Limit> Shares) Read(Scalar key, Mapping range, Measure measure)
    {
        var own = ImmutableArray.CreateBuilder<KeyValuePair<Scalar, Node>>();
        var shares = new List<Limit>();
        foreach (var (end, value) in range.Entries)
        {
            var items = value is Sequence list ? list.Items : [value];
            foreach (var item in items)
                if (item is not Mapping share)
                    own.Add(KeyValuePair.Create(end, item));
                else if (ReadShare(end, share, measure) is { } found)
                    Add(shares, new Limit(found.Share.Name, LimitKind.Bounded, found.Bounds, key.Mark) { Share = found.Share }, end);
        }

        foreach (var twice in own.GroupBy(end => end.Key.Text).Where(same => same.Count() > 1))
            fields.Add("two-ends", twice.Last().Value.Mark, $"'{twice.Key}' gives two quantities", "keep the one that holds");
        return (own.Count == 0 ? null : range with { Entries = own.ToImmutable() }, [.. shares]);
    }

    private (MeasureShare Share, Bounds Bounds)? ReadShare(Scalar end, Mapping node, Measure measure)
    {
        var inner = new Fields(node, fields.Problems);
        var (percent, whole) = (inner.Quantity("share", Dimension.Ratio), inner.Required("of"));
        if (!inner.Has("share"))
            inner.Missing("share");
        inner.Done();
        var share = new MeasureShare(measure.Name, whole);
        if (percent is null || whole.Length == 0)
            return null;
        if (ShareMeasures.Fault(share, vocabulary.Measures) is var (why, tip))
        {
            fields.Add(vocabulary.Measures.ContainsKey(whole) ? "no-share" : "unknown-measure", inner.Node("of")!.Mark, why, tip);
            return null;
        }

        if (vocabulary.Measures[share.Name].Share != share)
        {
            fields.Add("no-share", end.Mark, $"'{share.Name}' is another measure of the vocabulary already", "give that one another name");
            return null;
        }

        var bound = new Bound(percent.Base, end.Text is "at-least" or "at-most") { Written = percent };
        switch (end.Text)
        {
            case "at-least" or "over":
                return (share, new Bounds(bound, null));
            case "at-most" or "under":
                return (share, new Bounds(null, bound));
            default:
                fields.Add("unknown-key", end.Mark, $"'{end.Text}' is not a key here", "give at-least, over, at-most or under");
                return null;
        }
    }

    /// <summary>Two ends that are shares of the same measure are one range.</summary>
    private void Add(List<Limit> shares, Limit limit, Scalar end)
    {
        var at = shares.FindIndex(other => other.Measure == limit.Measure);
        if (at < 0)
            shares.Add(limit);
        else if ((limit.Bounds!.Lower is null) == (shares[at].Bounds!.Lower is null))
            fields.Add(
                "two-ends",
                end.Mark,
                $"one end of a range is given twice as a share of {limit.Share!.Whole}",
                "keep one of the two"
            );
        else
            shares[at] = Departures.Replace(shares[at], limit);
    }
}
