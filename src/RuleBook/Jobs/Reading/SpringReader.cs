using Fractions;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads <c>modification.springs</c>.</summary>
internal static class SpringReader
{
    public static AxleSprings? Read(Fields? modification, Axle axle, HeightReading? trim)
    {
        var word = axle == Axle.Front ? "front" : "rear";
        if (modification?.Nested("springs")?.Nested(word) is not { } fields)
            return null;
        var rate = fields.AboveZero("wheel-rate", Dimension.Rate);
        var (gain, at) = (fields.Signed("height-gained", Dimension.Length), fields.Mass("at-axle-load"));
        var (free, unsprung) = (fields.AboveZero("free-height", Dimension.Length), fields.Mass("unsprung-mass"));
        var byGain = fields.Has("height-gained") || fields.Has("at-axle-load");
        var byFree = fields.Has("free-height") || fields.Has("unsprung-mass");
        if (byGain && byFree)
            fields.Add(
                "contradiction",
                fields.Mark,
                "the springs give both a height gained and a free height",
                "keep height-gained with at-axle-load, or free-height with unsprung-mass"
            );
        fields.Done();
        SpringHeight? height =
            byGain ? new SpringHeight.Gain(gain, at)
            : byFree ? new SpringHeight.Free(free, Mean(trim?.On(axle)), unsprung)
            : null;
        return new AxleSprings($"modification.springs.{word}", axle, rate, height);
    }

    private static Fraction? Mean(AxleHeights? heights) => (heights?.LeftMm + heights?.RightMm) / 2;
}
