using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Dynamics;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Tests.Telling;

/// <summary>Parts of an answer that are reckoned, made by hand: each figure is another one, so that none can stand for another.</summary>
internal static class ReckonedByHand
{
    internal const string Least = "at least 140 km/h where tyres are rated by the kind of vehicle, unless the vehicle is slower";

    internal static readonly MissingFact Wheelbase = new("vehicle.wheelbase", "the mass on each axle");

    internal static readonly LoadCheck Gvm = new("gvm", "vehicle against its GVM", 2060, 2050, "vehicle.ratings.gvm");
    internal static readonly LoadCheck NewGvm = new("gvm", "vehicle against its re-rated GVM", 2060, 2200, "modification.ratings.gvm");
    internal static readonly LoadCheck Front = new("front-axle", "front axle", 1100, 1050, "f") { Known = Known.AtLeast };
    internal static readonly LoadCheck Rear = new("rear-axle", "rear axle", 960, 1000, "r") { Known = Known.AtMost };

    internal static readonly BudgetLine Tare = Line("tare", null, Range(2000, 1100, 900), Range(2000, 1100, 900));

    internal static readonly BudgetLine Bars = Line(
        "bars",
        "2 x 30 kg",
        new MassRange(Interval.Of(60), new Interval(0, 60), new Interval(0, 60)),
        new MassRange(Interval.Of(2060), new Interval(1100, 1160), new Interval(900, 960))
    );

    internal static readonly BudgetLine Crate = Line(
        "crate",
        null,
        new MassRange(new Interval(80, null), new Interval(null, 20), new Interval(0, null)),
        new MassRange(new Interval(2140, null), new Interval(1100, 1180), new Interval(900, null))
    );

    internal static readonly MassAnswer Light = Masses(new MassBudget(MassState.Unladen, [Tare, Bars], [], []));

    internal static MassAnswer Combined =>
        Light with
        {
            Loaded = Light.Unladen with { Left = [Rear] },
            Towing = Towing with
            {
                PlannedCombination = new Combination(2240, null, 1400, 1500, 100),
                Planned = new CombinationCheck([Rear, new LoadCheck("gcm", "all of it", 3640, 3700, "g")], []),
                WeighedCombination = new Combination(2250, null, 1410, 1520, 110),
                Weighed = new CombinationCheck([Rear], []),
                BallByTrailerKg = 110,
                BallByVehicleKg = 105,
                BallDisagreementKg = 5,
                ImpliedArmMm = 1230,
                CargoLeft = new CargoLeft(60, 40),
                Capacity = new TowRating(3000, true, "t"),
                DownRating = new DownRating(50, new LoadCheck("gvm", "vehicle, so advised", 2240, 2150, "g")),
            },
            TradeOff = [new TradeOffPoint(2240, 1400, ["GCM", "tow rating"]), new TradeOffPoint(2000, 1500, [])],
            ReratedTradeOff = [new TradeOffPoint(2300, 1300, ["GCM"])],
            RearLoadAgainstBall = [new TradeOffPoint(0, 300, ["rear axle"])],
        };

    internal static HeightAnswer Heights =>
        new HeightAnswer(
            new MeasuredLift(new AxleLift(50, 49, -2, 20, 1, false), new AxleLift(60, 30, 0, 0, 30, true), "no", "mind it", []),
            new Interval(28, 45),
            "so",
            5,
            [Wheelbase]
        )
        {
            DecidingAxle = Axle.Rear,
            Predicted =
            [
                new PredictedAxle(
                    new PredictedLift(Axle.Front, 60, 10, []),
                    new Interval(58, 62),
                    2,
                    1100,
                    [new LiftStep(0, 60), new LiftStep(50, 55)],
                    [
                        new MassNeeded(Pathway.NoCertificate, 50, 100, 200, 150),
                        new MassNeeded(Pathway.Certificate, 55, 50, null, null),
                        new MassNeeded(Pathway.Approval, 75, 0, 1, 1),
                    ]
                ),
                new PredictedAxle(new PredictedLift(Axle.Rear, null, null, []), Interval.Anything, 0, null, [], []),
            ],
            Denied = new DeniedLift(70, new Interval(78, 82), "thus"),
            Uneven = [new UnevenAxle(Axle.Rear, 530, 561, 10)],
        };

    internal static TyreAnswer Tyres
    {
        get
        {
            var rule = new SpeedometerRule(0, 10, 4);
            SpeedometerCheck Check(string name, SpeedometerFinding? finding, int largest, int? left) =>
                new(new NamedSpeedometerRule(name, rule), finding, largest, left);
            return new TyreAnswer(
                TyreSize.Parse("265/70R17"),
                Growth,
                new TyreCapacity(Figure("a"), Figure("b"), ""),
                [Front, Rear],
                [new LoadIndexNeed(Axle.Front, 1650, 2, new LoadIndex(101)), new LoadIndexNeed(Axle.Rear, 9000, 2, null)],
                [Wheelbase]
            )
            {
                NotCompared = ["load index"],
                Speeds = [Speed("S", true), Speed("M", false), Speed("H", null)],
                Speedometer = new SpeedometerAnswer(
                    100,
                    100,
                    true,
                    Figure("103.6 km/h"),
                    [
                        Check("one", SpeedometerFinding.Within, 8, 5),
                        Check("two", SpeedometerFinding.ReadsLow, 2, -1),
                        Check("three", SpeedometerFinding.ReadsHigh, 4, null),
                        Check("four", SpeedometerFinding.NotCovered, 6, 0),
                        Check("five", null, 7, null),
                    ],
                    [new SpeedometerPeriod("xa", null, null, [], []), new SpeedometerPeriod("xa", null, null, [], [])]
                ),
                Road = new RoadAnswer(
                    95,
                    new LengthCheck(90, 95),
                    new LengthCheck(110, 100),
                    new Fractions.Fraction(10, 9),
                    1,
                    new ClearanceRule("xa", 1, 100, "loaded", "unladen", [])
                ),
            };
        }
    }

    internal static TowingAnswer Towing => new(null, null, null, null, null, null, null, null);

    internal static TyreGrowth Growth =>
        TyreGrowth.Of(TyreSize.Parse("265/70R17"), [TyreSize.Parse("265/65R17")], DiameterBasis.Handbook) with
        {
            Growth = Figure("28 mm = 804 - 776"),
            WidthPercent = Figure("100 % = 265 / 265"),
            GrowthPercent = Figure("percent"),
            TyreLift = Figure("lift"),
        };

    internal static TyreSpeedCheck Speed(string symbol, bool? enough) =>
        new("kept", SpeedSymbol.Find(symbol)!, 140, enough, new TyreSpeedRule(null, "kept", [], []));

    internal static DerivedFigure Figure(string derivation) => new(1, derivation);

    internal static MassRange Range(int total, int front, int rear) => new(Interval.Of(total), Interval.Of(front), Interval.Of(rear));

    internal static BudgetLine Line(string item, string? derivation, MassRange own, MassRange running) =>
        new(item, own.Total.Exact, null, running.Total.Exact, null, derivation) { Possible = own, RunningPossible = running };

    internal static MassAnswer Masses(MassBudget unladen) => new(unladen, null, null, null, []);
}
