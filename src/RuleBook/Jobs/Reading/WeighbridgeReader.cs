using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads <c>measured.weighbridge</c>: vehicle alone, coupled, trailer alone.</summary>
internal static class WeighbridgeReader
{
    /// <summary>The readings, and the start of the mass budget where the state of the vehicle alone is stated.</summary>
    /// <param name="measured">The keys of <c>measured</c>.</param>
    /// <param name="reference">For the fuel in tare.</param>
    /// <param name="guardKg">Guard band of one reading, kg.</param>
    public static (WeighbridgeReadings? Readings, StartingMass? Start) Read(Fields measured, Reference reference, Fraction guardKg)
    {
        if (measured.Nested("weighbridge") is not { } fields)
            return (null, null);
        var readings = new WeighbridgeReadings(
            fields.Mass("front-alone"),
            fields.Mass("rear-alone"),
            fields.Mass("front-hitched"),
            fields.Mass("rear-hitched"),
            fields.Mass("trailer-axles"),
            fields.Mass("trailer-alone")
        )
        {
            MassAloneKg = fields.Mass("mass"),
        };
        var state = HeightReader.State(fields);
        fields.Done();
        return (
            readings,
            state is { } known && readings.Alone is not null
                ? StartingMass.Weighed(Of(known, reference), readings.FrontAloneKg, readings.RearAloneKg, readings.MassAloneKg) with
                {
                    ReadingGuardKg = guardKg,
                }
                : null
        );
    }

    private static MassStateDefinition Of(MassState state, Reference reference) =>
        state switch
        {
            MassState.Tare => MassStateDefinition.Tare(reference.TareFuelL ?? Fraction.Zero),
            MassState.Unladen => MassStateDefinition.Unladen,
            _ => MassStateDefinition.LoadedUnhitched,
        };
}
