using System.Collections.Immutable;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads heights from wheel centre to guard edge, corner by corner, and how well they are known.</summary>
internal static class HeightReader
{
    /// <summary>The maker's trim height; unladen unless it says otherwise.</summary>
    public static HeightReading? Trim(Fields vehicle) =>
        vehicle.Group("trim-height", fields => Corners(fields, State(fields) ?? MassState.Unladen));

    public static LiftMeasurement Read(Fields? measured, HeightReading? trim, JobPlan plan, Reference reference) =>
        new()
        {
            MakersTrim = trim,
            Before = measured?.Group("before", Reading),
            After = measured?.Group("after", Reading),
            FrontWheelRateNPerMm = plan.FrontSprings?.WheelRateNPerMm,
            RearWheelRateNPerMm = plan.RearSprings?.WheelRateNPerMm,
            LoadDifferenceKg = Difference(measured),
            LeftRightWarningMm = reference.LeftRightWarningMm,
        };

    public static ImmutableDictionary<string, Fraction> Uncertainties(Fields measured, Book book)
    {
        var stated = ImmutableDictionary.CreateBuilder<string, Fraction>();
        if (measured.Nested("uncertainty") is not { } fields)
            return stated.ToImmutable();
        foreach (var (key, _) in fields.Entries)
        {
            var dimension =
                key.Text == "weighbridge" ? Dimension.Mass : book.Vocabulary.Measures.GetValueOrDefault(key.Text)?.Unit.Dimension;
            if (dimension is { } known && fields.Amount(key.Text, known) is { } amount)
                stated[key.Text] = amount;
        }

        fields.Done();
        return stated.ToImmutable();
    }

    private static AxleMasses? Difference(Fields? measured)
    {
        var both = measured?.Group(
            "axle-load-difference",
            fields => (fields.Signed("front", Dimension.Mass), fields.Signed("rear", Dimension.Mass)).ToTuple()
        );
        return both is { Item1: { } front, Item2: { } rear } ? new AxleMasses(front, rear) : null;
    }

    private static HeightReading Reading(Fields fields)
    {
        if (!fields.Has("mass-state"))
            fields.Missing("mass-state");
        return Corners(fields, State(fields) ?? MassState.Unladen);
    }

    private static HeightReading Corners(Fields fields, MassState state) => new(state, On(fields, "front"), On(fields, "rear"));

    private static AxleHeights On(Fields fields, string axle) =>
        new(fields.AboveZero($"{axle}-left", Dimension.Length), fields.AboveZero($"{axle}-right", Dimension.Length));

    internal static MassState? State(Fields fields) =>
        fields.Word("mass-state", "tare", "unladen", "loaded") switch
        {
            "tare" => MassState.Tare,
            "unladen" => MassState.Unladen,
            "loaded" => MassState.Loaded,
            _ => null,
        };
}
