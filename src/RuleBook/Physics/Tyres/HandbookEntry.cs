using System.Collections.Frozen;
using Fractions;

namespace RuleBook.Physics.Tyres;

/// <summary>A diameter that stands in a handbook's table only: no formula gives it.</summary>
/// <param name="Millimetres">Overall diameter in mm; of the highway tread where tread types differ.</param>
/// <param name="Traction">Overall diameter in mm of the traction tread, where it differs.</param>
/// <param name="Origin">Where the figure comes from and how it is known.</param>
internal sealed record HandbookEntry(Fraction Millimetres, Fraction? Traction, string Origin)
{
    private const string Manual = "Tyre and Rim Association of Australia, Standards Manual 2002, as quoted in a forum: secondary";
    private const string Design = "design diameter of a flotation size: memory";

    private static readonly FrozenDictionary<string, HandbookEntry> Table = new Dictionary<string, HandbookEntry>
    {
        ["7.50R16LT"] = new(804, 812, Manual),
        ["205R16LT"] = new(736, 747, Manual),
        ["205R16C"] = new(736, 747, Manual),
        ["31x10.50R15LT"] = new(775, null, Design),
        ["33x12.50R15LT"] = new(826, null, Design),
        ["35x12.50R17LT"] = new(877, null, Design),
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public string? Caution =>
        Traction is { } traction ? $"highway tread; the traction tread is {traction} mm"
        : Origin == Design ? "not read in a standard: a measured tyre or the handbook itself should be consulted"
        : null;

    public static HandbookEntry? Find(TyreSize size) => Table.GetValueOrDefault(size.Designation);
}
