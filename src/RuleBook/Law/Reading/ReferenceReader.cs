using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using RuleBook.Physics.Tyres;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>schema/reference/*.yaml</c>.</summary>
internal sealed class ReferenceReader(IReadOnlyList<BookFile> files, Func<string, Source?> elsewhere, List<Problem> problems)
{
    private readonly ImmutableDictionary<string, ImmutableArray<CitedSource>>.Builder cited = ImmutableDictionary.CreateBuilder<
        string,
        ImmutableArray<CitedSource>
    >();

    private readonly List<CitedSource> seen = [];

    private ImmutableArray<Source> sources = [];

    public Reference Read()
    {
        if (Open("sources") is { } list)
            sources = SourceReader.ReadAll(list, "reference");
        var uncertainties = Open("uncertainties");
        var reference = new Reference
        {
            Fluids = Items("fluids", ReadFluid).ToImmutableDictionary(fluid => fluid.Name),
            TareFuelL = One("tare", fields => fields.Quantity("fuel", Dimension.Volume))?.Base,
            GuardFactor = uncertainties is null ? Fraction.One : Factor(uncertainties),
            LeftRightWarningMm = uncertainties?.Nested("left-right-warning") is { } warning ? Warning(warning) : null,
            Uncertainties = uncertainties is null
                ? ImmutableDictionary<string, Uncertainty>.Empty
                : Each(uncertainties, "uncertainties", ReadUncertainty).ToImmutableDictionary(each => each.Measure),
            TyreSizes = One("tyre-sizes", fields => fields.List("sizes", node => ReadSize(fields, node)).ToArray()) is { } sizes
                ? [.. sizes]
                : [],
            Speedometer = Items("speedometer", ReadPeriod),
            Clearance = One("clearance", ReadClearance),
            Towing = Items("towing", ReadTowing),
            TyreSpeeds = Items("tyre-speeds", ReadTyreSpeeds),
            Categories = Items("categories", ReadCategory),
            Tables = Items("tables", fields => new ReferenceTable(fields.Required("table"), fields.Required("title"), Cited(fields))),
        };
        if (uncertainties is not null)
            cited["uncertainties"] = Cited(uncertainties);
        uncertainties?.Text("guard-factor-why");
        uncertainties?.Done();
        return reference with { Sources = cited.ToImmutable() };
    }

    private Fields? Open(string name) =>
        files.FirstOrDefault(file => file.Path == $"schema/reference/{name}.yaml") is { } file ? new Fields(file.Root, problems) : null;

    private ImmutableArray<T> Items<T>(string name, Func<Fields, T> read)
        where T : class
    {
        if (Open(name) is not { } top)
            return [];
        seen.Clear();
        var items = Each(top, name, read);
        cited[name] = [.. seen];
        top.Done();
        return items;
    }

    private ImmutableArray<T> Each<T>(Fields top, string name, Func<Fields, T> read)
        where T : class =>
        top.List(
            name,
            node =>
            {
                var fields = new Fields(node, problems);
                var item = read(fields);
                fields.Done();
                return item;
            }
        );

    private T? One<T>(string name, Func<Fields, T?> read)
        where T : class
    {
        if (Open(name) is not { } top || top.Nested(name) is not { } fields)
            return null;
        var item = read(fields);
        cited[name] = Cited(fields);
        fields.Done();
        top.Done();
        return item;
    }

    private static Fraction Factor(Fields fields)
    {
        if (fields.Text("guard-factor") is not { } text)
            return Fraction.One;
        if (Quantity.TryParse($"{text} mm", out var factor, out _) && !factor.Amount.IsNegative)
            return factor.Amount;
        fields.Add(
            "not-a-number",
            fields.Node("guard-factor")!.Mark,
            $"'{text}' is not a factor",
            "write a number of zero or more, such as 1"
        );
        return Fraction.One;
    }

    private static TyreSize? ReadSize(Fields fields, Node node)
    {
        if (fields.TextOf(node) is not { } text)
            return null;
        if (TyreSize.TryParse(text, out var size, out var error))
            return size;
        fields.Add("not-a-tyre-size", node.Mark, error, "");
        return null;
    }

    private Fraction Warning(Fields fields)
    {
        var difference = Amount(fields, "difference", Dimension.Length);
        Cited(fields);
        fields.Done();
        return difference;
    }

    private Fluid ReadFluid(Fields fields) =>
        new(
            fields.Required("fluid"),
            Amount(fields, "density", Dimension.Density),
            fields.Quantity("at-least", Dimension.Density)?.Base,
            fields.Quantity("at-most", Dimension.Density)?.Base,
            Cited(fields)
        );

    private static Uncertainty ReadUncertainty(Fields fields)
    {
        var measure = fields.Required("measure");
        return new Uncertainty(
            measure,
            Amount(fields, "uncertainty", measure == "weighbridge" ? Dimension.Mass : Dimension.Length),
            fields.Required("why")
        );
    }

    private SpeedometerPeriod ReadPeriod(Fields fields) =>
        new(
            fields.Text("jurisdiction"),
            fields.Day("from"),
            fields.Day("before"),
            Each(
                fields,
                "rules",
                rule => new NamedSpeedometerRule(
                    rule.Required("rule"),
                    new SpeedometerRule(
                        Amount(rule, "under", Dimension.Ratio),
                        Amount(rule, "over", Dimension.Ratio),
                        Amount(rule, "over-constant", Dimension.Speed),
                        rule.Quantity("above", Dimension.Speed)?.Base
                    )
                )
            ),
            Cited(fields)
        );

    private ClearanceRule ReadClearance(Fields fields) =>
        new(
            fields.Text("jurisdiction"),
            Amount(fields, "midway-per-metre", Dimension.Length),
            Amount(fields, "running", Dimension.Length),
            fields.Required("midway-state"),
            fields.Required("running-state"),
            Cited(fields)
        );

    private DefaultTowing ReadTowing(Fields fields) =>
        new(
            fields.Required("jurisdiction"),
            Amount(fields, "braked", Dimension.Ratio) / 100,
            Amount(fields, "unbraked", Dimension.Ratio) / 100,
            Cited(fields)
        );

    private CategoryBounds ReadCategory(Fields fields) =>
        new(
            fields.Required("category"),
            fields.Text("family"),
            fields.Quantity("gvm-over", Dimension.Mass)?.Base,
            fields.Quantity("gvm-up-to", Dimension.Mass)?.Base,
            Count(fields, "seats-from"),
            Count(fields, "seats-up-to"),
            Cited(fields)
        );

    private static int? Count(Fields fields, string key)
    {
        if (fields.Text(key) is not { } text)
            return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            return count;
        fields.Add("not-a-number", fields.Node(key)!.Mark, $"'{text}' is not a whole number", "write a number such as 9");
        return null;
    }

    private TyreSpeedRule ReadTyreSpeeds(Fields fields) =>
        new(
            fields.Text("jurisdiction"),
            fields.Required("condition"),
            Each(fields, "kinds", kind => new TyreSpeedKind(kind.Texts("category"), Amount(kind, "speed", Dimension.Speed))),
            Cited(fields)
        );

    private static Fraction Amount(Fields fields, string key, Dimension dimension)
    {
        if (!fields.Has(key))
            fields.Missing(key);
        return fields.Quantity(key, dimension)?.Base ?? Fraction.Zero;
    }

    private ImmutableArray<CitedSource> Cited(Fields fields)
    {
        var found = ImmutableArray.CreateBuilder<CitedSource>();
        foreach (var citation in SourceReader.Citations(fields))
        {
            var source = citation.Cite.Contains('/', StringComparison.Ordinal)
                ? elsewhere(citation.Cite)
                : sources.FirstOrDefault(each => each.Id == citation.Cite);
            if (source is not null)
                found.Add(new CitedSource(citation, source));
            else
                fields.Add(
                    "unknown-source",
                    citation.Mark,
                    $"'{citation.Cite}' is not a source",
                    Spelling.Tip(citation.Cite, [.. sources.Select(each => each.Id)])
                );
        }

        seen.AddRange(found);
        return found.ToImmutable();
    }
}
