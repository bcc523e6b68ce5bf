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
        if (under?.Node(key) is not { } node)
            yield break;
        var nodes = node is Sequence many ? many.Items : [node];
        for (var i = 0; i < nodes.Length; i++)
        {
            var fields = new Fields(nodes[i], under.Problems);
            yield return new MassItem(
                $"{path}.{key}[{i}]",
                fields.Text("name") ?? $"{key} {i + 1}",
                kind,
                mayBeNegative ? fields.Signed("mass", Dimension.Mass) : fields.Mass("mass"),
                fields.Signed("behind-front-axle", Dimension.Length)
            );
            fields.Done();
        }
    }

    /// <param name="under">The keys of the vehicle or of the modification.</param>
    /// <param name="path">Their path.</param>
    /// <param name="auxiliary">What a tank is unless it says otherwise.</param>
    public IEnumerable<FuelTank> Tanks(Fields? under, string path, bool auxiliary)
    {
        if (under?.Node("tanks") is not { } node)
            yield break;
        var nodes = node is Sequence many ? many.Items : [node];
        for (var i = 0; i < nodes.Length; i++)
        {
            var fields = new Fields(nodes[i], under.Problems);
            var density = Density(fields);
            var replaces = auxiliary && fields.YesNo("replaces") is true;
            var at = $"{path}.tanks[{i}]";
            var name = fields.Text("name") ?? (auxiliary ? $"added tank {i + 1}" : $"tank {i + 1}");
            var behind = fields.Signed("behind-front-axle", Dimension.Length);
            yield return new FuelTank(
                at,
                name,
                fields.AboveZero("capacity", Dimension.Volume),
                density,
                behind,
                fields.YesNo("auxiliary") ?? (auxiliary && !replaces)
            )
            {
                Itself = auxiliary
                    ? new MassItem(
                        at,
                        $"{name}, empty",
                        ItemKind.FixedAccessory,
                        replaces ? fields.Signed("mass", Dimension.Mass) : fields.Mass("mass"),
                        behind
                    )
                    : null,
                Replaces = replaces,
                AnyFuel = density is null ? AnyFuel() : MassRange.FromZero,
            };
            fields.Done();
        }
    }

    /// <summary>Of the fuels recorded, from the lightest to the heaviest.</summary>
    private Interval AnyFuel() =>
        reference.Fluids.IsEmpty
            ? MassRange.FromZero
            : new Interval(
                reference.Fluids.Values.Min(fluid => fluid.DensityKgPerL),
                reference.Fluids.Values.Max(fluid => fluid.DensityKgPerL)
            );

    private Fraction? Density(Fields fields)
    {
        if (fields.Node("fuel") is not { } node || fields.TextOf(node) is not { } fuel || fuel == "unknown")
            return null;
        if (reference.Fluids.TryGetValue(fuel, out var fluid))
            return fluid.DensityKgPerL;
        fields.Add(
            "unknown-fuel",
            node.Mark,
            $"'{fuel}' is not a fuel whose density is recorded",
            Spelling.Tip(fuel, [.. reference.Fluids.Keys])
        );
        return null;
    }
}
