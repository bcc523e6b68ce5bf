using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Answers;
using RuleBook.Text;
using Unit = RuleBook.Units.Unit;

namespace RuleBook.Tests.Jobs.Reading;

/// <summary>The words that jobs are read against here, and a reference of a scenario of our own.</summary>
internal static class JobBook
{
    public static readonly Book Book = new()
    {
        Digest = "made",
        Vocabulary = Vocabulary.None with
        {
            Measures = new[]
            {
                Measure("suspension-lift", "mm", "modification.suspension-lift", 0) with
                {
                    BelowZero = BelowZero.Stated,
                },
                Measure("body-lift", "mm", "modification.body-lift", 0),
                Measure(FactSet.TyreGrowth, "mm", "modification.tyre-diameter-growth", 0) with
                {
                    BelowZero = BelowZero.Stated,
                },
                Measure("tyre-diameter-reduction", "mm", "modification.tyre-diameter-reduction", 0),
                Measure("tyre-diameter-growth-percent", "%", "modification.tyre-diameter-growth-percent", 0) with
                {
                    IsDerived = true,
                },
                Measure("track-increase", "mm", "modification.track-increase", 0) with
                {
                    BelowZero = BelowZero.Stated,
                },
                Measure("gvm", "kg", "vehicle.ratings.gvm", null),
                Measure("new-gvm", "kg", "modification.ratings.gvm", null),
                Measure("frame-height", "mm", "measured.frame-height", null),
                Measure("trailer-mass", "kg", "trailer.mass", null),
                Measure("combination-mass", "kg", "combination-mass", 0) with
                {
                    IsDerived = true,
                },
                Measure("built", "mm", "vehicle.built", null) with
                {
                    IsDate = true,
                },
            }.ToImmutableDictionary(measure => measure.Name),
            Facts = new[]
            {
                new FactWord("category", "category", "vehicle.category", ["MC", "NA", "NB1"], "category", Made.Mark),
                new FactWord(
                    "stability-control",
                    "stability control",
                    "vehicle.stability-control",
                    ["yes", "no"],
                    "stability control",
                    Made.Mark
                ),
                new FactWord(JobFacts.Registered, "registered", "vehicle.first-registered", ["yes", "no"], "registered", Made.Mark),
            }.ToImmutableDictionary(fact => fact.Name),
            Conditions = new (string Name, Comparison? DecidedBy)[]
            {
                ("lane-change-test", null),
                ("tyre-load-rating-kept", Comparison.TyresAgainstPlacard),
                ("tyres-carry-new-mass", Comparison.TyresAgainstRatings),
                ("axle-ratings-carry-gvm", Comparison.AxlesAgainstGvm),
                ("trailer-braked", Comparison.TrailerBrakes),
                ("trailer-within-tow-ratings", Comparison.TrailerAgainstRatings),
                ("trailer-within-towing-apparatus", Comparison.TrailerAgainstApparatus),
            }.ToImmutableDictionary(
                each => each.Name,
                each => new Term(each.Name, each.Name, each.Name, Made.Mark) { DecidedBy = each.DecidedBy }
            ),
            CategoryGvms = ImmutableDictionary<string, CategoryGvm>
                .Empty.Add("MC", new CategoryGvm(null, 4500, true))
                .Add("NB1", new CategoryGvm(3500, 4500, false)),
        },
        Jurisdictions = [Made.Place("xa"), Made.Place("xb")],
        Reference = new Reference
        {
            TareFuelL = 10,
            Fluids = ImmutableDictionary<string, Fluid>
                .Empty.Add("diesel", new Fluid("diesel", new Fraction(835, 1000), null, null, []))
                .Add("petrol", new Fluid("petrol", new Fraction(745, 1000), null, null, [])),
            Uncertainties = ImmutableDictionary<string, Uncertainty>
                .Empty.Add("suspension-lift", new Uncertainty("suspension-lift", 5, "tape"))
                .Add("weighbridge", new Uncertainty("weighbridge", 10, "scale")),
            GuardFactor = new Fraction(1, 2),
            LeftRightWarningMm = 20,
        },
    };

    /// <summary>A job in <c>xa</c> on 25 November 2026, with further keys in JSON.</summary>
    public static Job Read(string more = "") =>
        JobReader.Read(Nodes.Of($$"""{ "registered-in": "xa", "on": "2026-11-25"{{(more.Length > 0 ? ", " : "")}}{{more}} }"""), Book);

    /// <summary>What is wrong with such a job: its code and its place.</summary>
    public static IEnumerable<string> Wrong(string more) => WrongWhole($$"""{ "registered-in": "xa", "on": "2026-11-25", {{more}} }""");

    /// <summary>What is wrong with a whole job.</summary>
    public static IEnumerable<string> WrongWhole(string job) =>
        Should
            .Throw<InputException>(() => JobReader.Read(Nodes.Of(job), Book))
            .Problems.Select(problem => $"{problem.Code} {problem.Mark.File}");

    /// <summary>What is known of a job.</summary>
    public static FactSet Facts(string more, DiameterBasis basis = DiameterBasis.Handbook)
    {
        var job = Read(more);
        return JobFacts.Of(job, Book.Vocabulary, job.Dates.For(null), basis);
    }

    private static Measure Measure(string name, string unit, string job, int? absent) =>
        new(name, name, Unit.Find(unit)!, job, absent is { } value ? (Fraction)value : null, false, false, false, name, Made.Mark);
}
