using Fractions;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Reads what stands on or hangs from the vehicle: accessories, tanks, occupants, luggage and goods.</summary>
internal sealed class ItemReader(Reference reference)
{
    public static IEnumerable<MassItem> Items(Fields? under, string path, string key, ItemKind kind, bool mayBeNegative = false)
    {
        if (under?.Node(key) is not { } node) yield break;
        var nodes = node is Sequence many ? many.Items : [node];
        for (var i = 0; i < nodes.Length; i++)
        {
            var fields = new Fields(nodes[i], under.Problems);
            yield return new MassItem(
                $"{path}.{key}[{i}]",
                fields.Text("name") ?? $"{key} {i + 1}",
                kind,
                mayBeNegative ? fields.Signed("mass", Dimension.Mass) : fields.Mass("mass"),
                fields.Signed("behind-front-axle", Dimension.Length));
            fields.Done();
        }
    }

    /// <param name="under">The keys of the vehicle or of the modification.</param>
    /// <param name="path">Their path.</param>
    /// <param name="auxiliary">What a tank is unless it says otherwise.</param>
    public IEnumerable<FuelTank> Tanks(Fields? under, string path, bool auxiliary)
    {
        if (under?.Node("tanks") is not { } node) yield break;
        var nodes = node is Sequence many ? many.Items : [node];
        for (var i = 0; i < nodes.Length; i++)
        {
            var fields = new Fields(nodes[i], under.Problems);
            yield return new FuelTank(
                $"{path}.tanks[{i}]",
                fields.Text("name") ?? (auxiliary ? $"added tank {i + 1}" : $"tank {i + 1}"),
                fields.AboveZero("capacity", Dimension.Volume),
                Density(fields),
                fields.Signed("behind-front-axle", Dimension.Length),
                fields.YesNo("auxiliary") ?? auxiliary);
            fields.Done();
        }
    }

    private Fraction? Density(Fields fields)
    {
        if (fields.Node("fuel") is not { } node || fields.TextOf(node) is not { } fuel || fuel == "unknown") return null;
        if (reference.Fluids.TryGetValue(fuel, out var fluid)) return fluid.DensityKgPerL;
        fields.Add("unknown-fuel", node.Mark, $"'{fuel}' is not a fuel whose density is recorded", Spelling.Tip(fuel, [.. reference.Fluids.Keys]));
        return null;
    }
}
