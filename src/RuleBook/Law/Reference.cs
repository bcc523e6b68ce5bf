using System.Collections.Immutable;
using Fractions;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>Figures of no single jurisdiction that the reckoning leans on: <c>schema/reference/*.yaml</c>.</summary>
internal sealed record Reference
{
    /// <summary>Nothing recorded.</summary>
    public static Reference None { get; } = new();

    /// <summary>Fuels by name.</summary>
    public ImmutableDictionary<string, Fluid> Fluids { get; init; } = ImmutableDictionary<string, Fluid>.Empty;

    /// <summary>Fuel that tare mass includes, L in all; null where not recorded.</summary>
    public Fraction? TareFuelL { get; init; }

    /// <summary>Default expanded uncertainties of measured values, by measure (and <c>weighbridge</c> for one reading).</summary>
    public ImmutableDictionary<string, Uncertainty> Uncertainties { get; init; } = ImmutableDictionary<string, Uncertainty>.Empty;

    /// <summary>The guard band as a multiple of the expanded uncertainty.</summary>
    public Fraction GuardFactor { get; init; } = Fraction.One;

    /// <summary>Difference between left and right height above which to warn, mm; null where not recorded.</summary>
    public Fraction? LeftRightWarningMm { get; init; }

    /// <summary>Tyre sizes of the trade.</summary>
    public ImmutableArray<TyreSize> TyreSizes { get; init; } = [];

    /// <summary>Accuracy asked of speedometers, by day of manufacture, oldest first.</summary>
    public ImmutableArray<SpeedometerPeriod> Speedometer { get; init; } = [];

    /// <summary>Clearance above the road; null where not recorded.</summary>
    public ClearanceRule? Clearance { get; init; }

    /// <summary>Towing mass where the vehicle's maker gives none.</summary>
    public ImmutableArray<DefaultTowing> Towing { get; init; } = [];

    /// <summary>Where GVM and seats part the vehicle categories.</summary>
    public ImmutableArray<CategoryBounds> Categories { get; init; } = [];

    /// <summary>Speeds for which tyres in service have to be made.</summary>
    public ImmutableArray<TyreSpeedRule> TyreSpeeds { get; init; } = [];

    /// <summary>Tables of standards whose figures stand in the code.</summary>
    public ImmutableArray<ReferenceTable> Tables { get; init; } = [];

    /// <summary>What the file of that name cites: <c>fluids</c>, <c>speedometer</c>, ...</summary>
    public ImmutableDictionary<string, ImmutableArray<CitedSource>> Sources { get; init; } =
        ImmutableDictionary<string, ImmutableArray<CitedSource>>.Empty;
}

/// <summary>A table of a standard whose figures stand in the code.</summary>
/// <param name="Name">Its name: <c>load-index</c>, <c>speed-symbol</c>, <c>rim-code</c>, ...</param>
/// <param name="Title">For a reader.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record ReferenceTable(string Name, string Title, ImmutableArray<CitedSource> Sources);

/// <summary>A fuel.</summary>
/// <param name="Name">Its name in a job.</param>
/// <param name="DensityKgPerL">Density taken, kg/L.</param>
/// <param name="AtLeastKgPerL">Lower end of the band, kg/L.</param>
/// <param name="AtMostKgPerL">Upper end of the band, kg/L.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record Fluid(
    string Name,
    Fraction DensityKgPerL,
    Fraction? AtLeastKgPerL,
    Fraction? AtMostKgPerL,
    ImmutableArray<CitedSource> Sources
);

/// <summary>A default uncertainty.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Expanded">Expanded uncertainty, in the base unit of the measure.</param>
/// <param name="Why">Why this figure was chosen.</param>
internal sealed record Uncertainty(string Measure, Fraction Expanded, string Why);

/// <summary>The rules for vehicles made in <c>[From, Before)</c>.</summary>
/// <param name="Jurisdiction">Where they hold, and in the places within; null for everywhere.</param>
/// <param name="From">First day of manufacture; null when open.</param>
/// <param name="Before">First day no longer; null when open.</param>
/// <param name="Rules">The rules that may hold: none where no accuracy is asked for, two where it depends on the model.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record SpeedometerPeriod(
    string? Jurisdiction,
    DateOnly? From,
    DateOnly? Before,
    ImmutableArray<NamedSpeedometerRule> Rules,
    ImmutableArray<CitedSource> Sources
)
{
    /// <summary>Whether they may hold for a vehicle of a place that was made on a day.</summary>
    /// <param name="place">Id of the place, such as <c>au-qld</c>.</param>
    /// <param name="built">When it was made, as far as known.</param>
    public bool MayHold(string place, PartialDate built) =>
        Territory.Includes(Jurisdiction, place)
        && (From is not { } from || from <= built.Latest)
        && (Before is not { } end || built.Earliest < end);
}

/// <summary>A tolerance with its name.</summary>
/// <param name="Name">Name of the rule.</param>
/// <param name="Rule">The tolerance.</param>
internal sealed record NamedSpeedometerRule(string Name, SpeedometerRule Rule);

/// <summary>Least clearance above a level road.</summary>
/// <param name="Jurisdiction">Where it holds, and in the places within; null for everywhere.</param>
/// <param name="MidwayMmPerMetre">Midway between two axles, mm for each metre between them.</param>
/// <param name="RunningMm">Anywhere, mm.</param>
/// <param name="MidwayState">The mass state in which the first holds, in words.</param>
/// <param name="RunningState">The mass state in which the second holds, in words.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record ClearanceRule(
    string? Jurisdiction,
    Fraction MidwayMmPerMetre,
    Fraction RunningMm,
    string MidwayState,
    string RunningState,
    ImmutableArray<CitedSource> Sources
);

/// <summary>A share of the vehicle's own unloaded mass that it may tow where its maker gives no figure.</summary>
/// <param name="Jurisdiction">Where it holds.</param>
/// <param name="Braked">Ratio for a trailer whose brakes the driver works.</param>
/// <param name="Unbraked">Ratio for a trailer without brakes.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record DefaultTowing(string Jurisdiction, Fraction Braked, Fraction Unbraked, ImmutableArray<CitedSource> Sources);

/// <summary>The least speed for which tyres have to be made, by category.</summary>
/// <param name="Jurisdiction">Where it holds, and in the places within; null for everywhere.</param>
/// <param name="Condition">The condition of the vocabulary that it decides.</param>
/// <param name="Kinds">The first that has the category, or has none, holds.</param>
/// <param name="Sources">Where it comes from.</param>
internal sealed record TyreSpeedRule(
    string? Jurisdiction,
    string Condition,
    ImmutableArray<TyreSpeedKind> Kinds,
    ImmutableArray<CitedSource> Sources
)
{
    /// <summary>The speed for a category, km/h; null for an unknown one, and where the rule does not hold.</summary>
    /// <param name="category">The category, such as <c>MC</c>.</param>
    /// <param name="place">Id of the place, such as <c>au-qld</c>.</param>
    public Fraction? For(string? category, string place) =>
        category is null || !Territory.Includes(Jurisdiction, place)
            ? null
            : Kinds.FirstOrDefault(kind => kind.Categories.IsEmpty || kind.Categories.Contains(category))?.KilometresPerHour;
}

/// <summary>Categories with one speed.</summary>
/// <param name="Categories">The categories; empty for all others.</param>
/// <param name="KilometresPerHour">The speed, km/h.</param>
internal sealed record TyreSpeedKind(ImmutableArray<string> Categories, Fraction KilometresPerHour);
