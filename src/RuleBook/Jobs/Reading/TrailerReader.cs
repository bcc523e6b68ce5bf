using RuleBook.Physics.Towing;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads <c>trailer</c> and <c>vehicle.towbar</c>.</summary>
internal static class TrailerReader
{
    public static TrailerPlan? Read(Fields job, Fields? vehicle)
    {
        var towbar = vehicle?.Group("towbar", Pair);
        if (job.Nested("trailer") is not { } fields)
            return null;
        var ratings = fields.Group("ratings", inner => (inner.Mass("atm"), inner.Mass("gtm")).ToTuple());
        var coupling = fields.Group("coupling", Pair);
        var trailer = new TrailerPlan(
            fields.Mass("mass"),
            fields.Mass("axles"),
            fields.Mass("ball-load"),
            new TrailerLimits
            {
                Braked = fields.KnownYesNo("braked"),
                AtmKg = ratings?.Item1,
                GtmKg = ratings?.Item2,
                TowbarKg = towbar?.Item1,
                TowbarBallKg = towbar?.Item2,
                CouplingKg = coupling?.Item1,
                CouplingBallKg = coupling?.Item2,
            }
        );
        fields.Done();
        return trailer;
    }

    private static Tuple<Fractions.Fraction?, Fractions.Fraction?> Pair(Fields fields) =>
        (fields.Mass("mass"), fields.Mass("ball")).ToTuple();
}
