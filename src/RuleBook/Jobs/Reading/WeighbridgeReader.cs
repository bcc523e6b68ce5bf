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
    public static (WeighbridgeReadings? Readings, StartingMass? Start) Read(Fields measured, Reference reference)
    {
        if (measured.Nested("weighbridge") is not { } fields) return (null, null);
        var readings = new WeighbridgeReadings(
            fields.Mass("front-alone"),
            fields.Mass("rear-alone"),
            fields.Mass("front-hitched"),
            fields.Mass("rear-hitched"),
            fields.Mass("trailer-axles"),
            fields.Mass("trailer-alone"));
        var mass = fields.Mass("mass");
        var state = HeightReader.State(fields);
        fields.Done();
        var alone = (readings.FrontAloneKg ?? readings.RearAloneKg ?? mass) is not null;
        return (readings, state is { } known && alone
            ? StartingMass.Weighed(Of(known, reference), readings.FrontAloneKg, readings.RearAloneKg, mass)
            : null);
    }

    private static MassStateDefinition Of(MassState state, Reference reference) => state switch
    {
        MassState.Tare => MassStateDefinition.Tare(reference.TareFuelL ?? Fraction.Zero),
        MassState.Unladen => MassStateDefinition.Unladen,
        _ => MassStateDefinition.LoadedUnhitched,
    };
}
