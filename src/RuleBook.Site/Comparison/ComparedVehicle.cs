using System.Collections.Immutable;
using System.Text.Json;
using Fractions;
using RuleBook.Law;
using RuleBook.Site.Templating;
using RuleBook.Units;

namespace RuleBook.Site.Comparison;

/// <summary>
/// A vehicle for which the states are compared, <c>site-templates/compare.json</c>: one is always chosen, so that a cell is short.
/// </summary>
/// <param name="Id">In the page's address.</param>
/// <param name="Nation">Id of the nation in whose comparison it stands.</param>
/// <param name="Title">For a reader.</param>
/// <param name="Facts">Words known of it, in the order of their names, so that every run writes the same page.</param>
/// <param name="Measures">Measures known of it, in base units; what is absent is not known.</param>
internal sealed record ComparedVehicle(
    string Id,
    string Nation,
    string Title,
    ImmutableSortedDictionary<string, string> Facts,
    ImmutableDictionary<string, Fraction> Measures
)
{
    private static readonly Lazy<ImmutableArray<ComparedVehicle>> Known = new(Read);

    /// <summary>One of which nothing is known.</summary>
    public static ComparedVehicle Any { get; } =
        new("any", "", "any vehicle", ImmutableSortedDictionary<string, string>.Empty, ImmutableDictionary<string, Fraction>.Empty);

    /// <summary>Those of a nation, the first one chosen unless a reader says otherwise; every one where none names the nation.</summary>
    public static ImmutableArray<ComparedVehicle> Of(string nation) =>
        Known.Value.Where(vehicle => vehicle.Nation == nation).ToImmutableArray() is { IsEmpty: false } own ? own : Known.Value;

    /// <summary>Whether all tests hold of it.</summary>
    public Truth Passes(Predicate predicate) => predicate.Tests.Select(Passes).All();

    /// <summary>The tests of which that is not known.</summary>
    public Predicate Open(Predicate predicate) => new([.. predicate.Tests.Where(test => Passes(test) == Truth.Unknown)]);

    private Truth Passes(FactTest test)
    {
        if (test.Bounds is not { } bounds)
            return !Facts.TryGetValue(test.Fact, out var word) ? Truth.Unknown
                : test.OneOf.Contains(word) ? Truth.Yes
                : Truth.No;
        if (!Measures.TryGetValue(test.Fact, out var value))
            return Truth.Unknown;
        return
            bounds.Lower is { } low && (value < low.Value || value == low.Value && !low.Closed)
            || bounds.Upper is { } high && (value > high.Value || value == high.Value && !high.Closed)
            ? Truth.No
            : Truth.Yes;
    }

    private static ImmutableArray<ComparedVehicle> Read()
    {
        using var description = JsonDocument.Parse(Templates.File("compare.json"));
        return
        [
            .. description
                .RootElement.GetProperty("vehicles")
                .EnumerateArray()
                .Select(vehicle => new ComparedVehicle(
                    vehicle.GetProperty("id").GetString()!,
                    vehicle.GetProperty("nation").GetString()!,
                    vehicle.GetProperty("title").GetString()!,
                    vehicle
                        .GetProperty("facts")
                        .EnumerateObject()
                        .ToImmutableSortedDictionary(fact => fact.Name, fact => fact.Value.GetString()!, StringComparer.Ordinal),
                    vehicle
                        .GetProperty("measures")
                        .EnumerateObject()
                        .ToImmutableDictionary(measure => measure.Name, measure => Quantity.Parse(measure.Value.GetString()!).Base)
                )),
        ];
    }
}
