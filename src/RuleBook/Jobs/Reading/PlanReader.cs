using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads what a job says of masses, axles, springs, heights and the trailer.</summary>
internal static class PlanReader
{
    public static JobPlan Read(Fields job, Fields? vehicle, Fields? modification, Fields? measured, Book book)
    {
        var items = new ItemReader(book.Reference);
        var load = job.Nested("load");
        ImmutableArray<FuelTank> added = [.. items.Tanks(modification, "modification", auxiliary: true)];
        ImmutableArray<MassItem> aboard =
        [
            .. ItemReader.Items(modification, "modification", "accessories", ItemKind.FixedAccessory, mayBeNegative: true),
            .. added.Select(tank => tank.Itself).OfType<MassItem>(),
            .. ItemReader.Items(load, "load", "occupants", ItemKind.Occupant),
            .. ItemReader.Items(load, "load", "luggage", ItemKind.Luggage),
            .. ItemReader.Items(load, "load", "goods", ItemKind.Load),
        ];
        load?.Done();
        var (tare, axles) = (
            vehicle?.Mass("tare"),
            vehicle?.Group("tare-axles", inner => (inner.Mass("front"), inner.Mass("rear")).ToTuple())
        );
        var trim = vehicle is null ? null : HeightReader.Trim(vehicle);
        var uncertainties = measured is null ? ImmutableDictionary<string, Fraction>.Empty : HeightReader.Uncertainties(measured, book);
        var reading =
            uncertainties.TryGetValue("weighbridge", out var stated) ? stated
            : book.Reference.Uncertainties.TryGetValue("weighbridge", out var usual) ? usual.Expanded
            : Fraction.Zero;
        var (weighed, start) = measured is null
            ? (null, null)
            : WeighbridgeReader.Read(measured, book.Reference, reading * book.Reference.GuardFactor);
        var plan = new JobPlan
        {
            Reference = book.Reference,
            TareKg = tare,
            Start = start ?? StartingMass.Tare(tare, axles?.Item1, axles?.Item2, book.Reference.TareFuelL ?? Fraction.Zero),
            WheelbaseMm = vehicle?.AboveZero("wheelbase", Dimension.Length),
            BallBehindRearAxleMm = vehicle?.Length("ball-behind-rear-axle"),
            Seats = vehicle is null ? null : Seats(vehicle),
            Ratings = vehicle?.Group("ratings", Ratings) ?? Physics.Masses.Ratings.None,
            Rerated = modification?.Group("ratings", Ratings),
            Tanks = [.. items.Tanks(vehicle, "vehicle", auxiliary: false), .. added],
            Items = aboard,
            DownRating = vehicle?.List("down-rating", node => Row(new Fields(node, vehicle.Problems))) ?? [],
            DualRearWheels = vehicle?.KnownYesNo("dual-rear-wheels") ?? false,
            TrackMm = vehicle?.AboveZero("track", Dimension.Length),
            WheelOffset = modification?.Group(
                "wheel-offset",
                inner => new WheelOffset(inner.Signed("before", Dimension.Length), inner.Signed("after", Dimension.Length))
            ),
            CentreOfMassMm = vehicle?.AboveZero("centre-of-mass", Dimension.Length),
            Speedometer =
                vehicle?.Group("speedometer", Speedometer) is { Indicated: var indicated, True: var real }
                && !indicated.IsZero
                && !real.IsZero
                    ? new SpeedometerReading(indicated, real)
                    : null,
            FrontSprings = SpringReader.Read(modification, Axle.Front, trim),
            RearSprings = SpringReader.Read(modification, Axle.Rear, trim),
            Weighed = weighed,
            ReadingKg = reading,
            Uncertainties = uncertainties,
            ClearanceMidwayMm = measured?.Length("clearance-midway"),
            Trailer = TrailerReader.Read(job, vehicle),
        };
        modification?.Group("springs", inner => (inner.Node("front"), inner.Node("rear")).ToTuple());
        return plan with { Heights = HeightReader.Read(measured, trim, plan, book.Reference) };
    }

    private static Ratings Ratings(Fields fields) =>
        new()
        {
            GvmKg = fields.Mass("gvm"),
            GcmKg = fields.Mass("gcm"),
            FrontAxleKg = fields.Mass("front-axle"),
            RearAxleKg = fields.Mass("rear-axle"),
            BrakedTowKg = fields.Mass("braked-tow"),
            UnbrakedTowKg = fields.Mass("unbraked-tow"),
            BallKg = fields.Mass("ball"),
        };

    private static DownRatingRow Row(Fields fields)
    {
        foreach (var key in (ReadOnlySpan<string>)["ball-up-to", "less"])
            if (!fields.Has(key))
                fields.Missing(key);
        var row = new DownRatingRow(fields.Mass("ball-up-to") ?? Fraction.Zero, fields.Mass("less") ?? Fraction.Zero);
        fields.Done();
        return row;
    }

    private static SpeedometerReading Speedometer(Fields fields) =>
        new(fields.AboveZero("indicated", Dimension.Speed) ?? Fraction.Zero, fields.AboveZero("true", Dimension.Speed) ?? Fraction.Zero);

    private static int? Seats(Fields vehicle)
    {
        if (vehicle.Node("seats") is not { } node || vehicle.TextOf(node) is not { } text || text == "unknown")
            return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seats) && seats > 0)
            return seats;
        vehicle.Add("not-a-number", node.Mark, $"'{text}' is not a number of seats", "write a whole number, the driver's seat counted");
        return null;
    }
}
