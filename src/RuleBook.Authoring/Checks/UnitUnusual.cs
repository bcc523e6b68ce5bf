using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>A figure in inches or pounds where the place writes metric ones, or the reverse.</summary>
internal static class UnitUnusual
{
    internal static readonly CheckInfo Info = new(
        "unit-unusual",
        "a figure stands in a unit that is unusual there",
        "A law is written in one system of units: 6000 kg among pounds is more likely a slip than a figure of the law.",
        "compare the unit with the source; a figure stands as the law writes it",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Figures.Where(figure =>
                !figure.Bound.Value.IsZero && figure.Bound.Written?.Unit.Dimension is Dimension.Length or Dimension.Mass
            )
            .GroupBy(figure => (Path.GetDirectoryName(figure.Mark.File), figure.Bound.Written!.Unit.Dimension))
            .Select(place => place.ToLookup(figure => IsCustomary(figure.Bound.Written!.Unit)))
            .Where(systems => systems[true].Count() != systems[false].Count())
            .SelectMany(systems => systems.OrderBy(system => system.Count()).SkipLast(1).SelectMany(rare => rare))
            .Select(figure =>
                Info.At(
                    figure.Mark,
                    $"{figure.Measure} {figure.Bound.Written} is written in "
                        + $"{(IsCustomary(figure.Bound.Written!.Unit) ? "inches or pounds" : "metric units")}, most figures of this "
                        + "kind here are not"
                )
            );

    private static bool IsCustomary(Unit unit) => unit.Symbol is "in" or "lb";
}
