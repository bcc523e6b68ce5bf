using System.Collections.Immutable;
using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads tiers, limits, predicates and departures against the vocabulary.</summary>
internal sealed partial class LimitReader(Vocabulary vocabulary)
{
    /// <summary>One tier, or the tiers of a table by classes.</summary>
    public ImmutableArray<Tier> ReadTiers(Fields fields)
    {
        var whens = ReadAlternatives(fields.Nested("when"));
        if (!fields.Has("classes"))
        {
            if (fields.Node("by") is { } alone)
                fields.Add(
                    "key-without-effect",
                    alone.Mark,
                    "'by' does nothing here: there are no classes",
                    "give 'classes', or take it out"
                );
            return Each(whens, ReadTier(fields, Predicate.Always));
        }

        var by = fields.Node("by") is Scalar name ? FindMeasure(fields, name) : null;
        if (!fields.Has("by"))
            fields.Missing("by");
        if (fields.Node("name") is { } named)
            fields.Add("key-without-effect", named.Mark, "'name' does nothing here: each class names its own tier", "take it out");
        var classes = fields.List("classes", node => by is null ? null : ReadClass(new Fields(node, fields.Problems), by));
        var shared = ReadTier(fields, Predicate.Always);
        return by is null ? [] : Each(whens, ClassTable.Tiers(shared, by, classes, fields.Problems));
    }

    /// <summary>The tiers once for each alternative that opens them, under the same name.</summary>
    private static ImmutableArray<Tier> Each(ImmutableArray<Predicate> whens, params ImmutableArray<Tier> tiers) =>
        [
            .. tiers.SelectMany(tier =>
                whens.Select(when =>
                    tier with
                    {
                        When = tier.When.Tests.IsEmpty ? when : new Predicate([.. when.Tests, .. tier.When.Tests]),
                    }
                )
            ),
        ];

    private ClassRow ReadClass(Fields fields, Measure by)
    {
        var row = new ClassRow(
            fields.Required("class"),
            ReadEnds(fields, by, fields.Mark),
            ReadLimits(fields.Nested("within")),
            SourceReader.Citations(fields),
            fields.Text("note"),
            fields.Mark
        );
        fields.Done();
        return row;
    }

    private Tier ReadTier(Fields fields, Predicate when)
    {
        var pathway = ReadPathway(fields, "pathway");
        if (!fields.Has("pathway"))
            fields.Missing("pathway");
        var tier = new Tier(
            fields.Text("name") ?? fields.Text("pathway") ?? "",
            pathway ?? Pathway.Prohibited,
            when,
            ReadLimits(fields.Nested("within")),
            ReadConditions(fields),
            fields.Texts("codes"),
            SourceReader.Citations(fields),
            fields.Text("note"),
            fields.Mark
        );
        fields.Done();
        return tier;
    }

    public Departure ReadDeparture(Fields fields)
    {
        var departure = new Departure(
            fields.Text("tier"),
            ReadLimits(fields.Nested("within")),
            fields.Has("provided") ? ReadConditions(fields) : null,
            fields.YesNo("drop") ?? false,
            fields.Nested("add") is { } added ? ReadTier(added, ReadPredicate(added.Nested("when"))) : null,
            SourceReader.Citations(fields),
            fields.Mark
        )
        {
            Loosens = fields.Text("loosens"),
            After = fields.Text("after"),
            Pathway = ReadPathway(fields, "pathway"),
            When = fields.Has("when") ? ReadPredicate(fields.Nested("when")) : null,
            Codes = fields.Has("codes") ? fields.Texts("codes") : null,
            Note = fields.Text("note"),
            Beyond = fields.Has("beyond") ? new BeyondChange(ReadBeyond(fields)) : null,
        };
        if (departure is { Added: null, After: not null })
            fields.Add(
                "key-without-effect",
                fields.Node("after")!.Mark,
                "'after' does nothing here: it places an added tier",
                "take it out, or say what is added"
            );
        if (departure is { Dropped: true, Tier: not null } && departure with { Dropped = false } is { IsEmpty: false })
            fields.Add(
                "key-without-effect",
                fields.Node("drop")!.Mark,
                "the tier is dropped, so that what else is said of it does nothing",
                "keep 'drop: yes', or what changes"
            );
        var (names, adds, beyond) = (fields.Has("tier"), fields.Has("add"), fields.Has("beyond"));
        if ((names ? 1 : 0) + (adds ? 1 : 0) + (beyond ? 1 : 0) != 1)
            fields.Add(
                "one-content",
                fields.Mark,
                "an exception changes one tier, adds one, or says what holds beyond them",
                "give one of 'tier', 'add' and 'beyond'"
            );
        fields.Done();
        return departure;
    }

    /// <summary>What holds beyond the tiers; null for not established.</summary>
    public static Pathway? ReadBeyond(Fields fields) =>
        fields.Node("beyond") is Scalar { Text: "not-established" } ? null : ReadPathway(fields, "beyond");

    public static Pathway? ReadPathway(Fields fields, string key) => fields.Node(key) is { } value ? PathwayOf(fields, value) : null;

    public static Pathway? PathwayOf(Fields fields, Node value) =>
        fields.WordOf(value, "no-certificate", "certificate", "approval", "prohibited") switch
        {
            "no-certificate" => Pathway.NoCertificate,
            "certificate" => Pathway.Certificate,
            "approval" => Pathway.Approval,
            "prohibited" => Pathway.Prohibited,
            _ => null,
        };

    private ImmutableArray<Limit> ReadLimits(Fields? fields) =>
        fields is null
            ? []
            :
            [
                .. DecimalCommas(fields)
                    .SelectMany(entry =>
                        FindMeasure(fields, entry.Key) is { } measure ? ReadLimits(fields, entry.Key, entry.Value, measure) : []
                    ),
            ];

    /// <summary>The entries without a figure whose decimal comma made two of it, as <c>{ suspension-lift: 50,5 mm }</c>.</summary>
    private static IEnumerable<(Scalar Key, Node Value)> DecimalCommas(Fields fields)
    {
        var entries = fields.Entries.ToArray();
        for (var i = 0; i < entries.Length; i++)
            if (
                i + 1 < entries.Length
                && entries[i].Value is Scalar { Text: { } whole }
                && whole.All(char.IsAsciiDigit)
                && entries[i + 1] is { Key.Text: [>= '0' and <= '9', ..] rest, Value: Scalar { Text: "" } }
            )
                fields.Add(
                    "not-a-quantity",
                    entries[i++].Value.Mark,
                    $"'{whole},{rest}': a comma is no decimal point here, it parts entries",
                    $"write {whole}.{rest}, or {whole}{rest} where thousands are meant"
                );
            else
                yield return entries[i];
    }

    /// <summary>The limit on the measure itself, and those on it as a share of others.</summary>
    private ImmutableArray<Limit> ReadLimits(Fields fields, Scalar key, Node value, Measure measure)
    {
        if (!ShareReader.HasShares(value))
            return ReadLimit(fields, key, value, measure) is { } plain ? [plain] : [];
        var (own, shares) = new ShareReader(vocabulary, fields).Read(key, (Mapping)value, measure);
        return own is not null && ReadLimit(fields, key, own, measure) is { } beside ? [beside, .. shares] : shares;
    }

    private static Limit? ReadLimit(Fields fields, Scalar key, Node value, Measure measure) =>
        value switch
        {
            Scalar { Text: "none" } => new Limit(measure.Name, LimitKind.None, null, key.Mark),
            Scalar { Text: "not-established" } => new Limit(measure.Name, LimitKind.NotEstablished, null, key.Mark),
            _ => ReadBounds(fields, value, measure) is { } bounds ? new Limit(measure.Name, LimitKind.Bounded, bounds, key.Mark) : null,
        };

    private static Bounds? ReadBounds(Fields fields, Node value, Measure measure)
    {
        if (value is Scalar)
            return Edge(fields, value, measure, closed: true) is { } single ? new Bounds(null, single) : null;
        var inner = new Fields(value, fields.Problems);
        var bounds = ReadEnds(inner, measure, value.Mark);
        inner.Done();
        return bounds;
    }

    private static Bounds ReadEnds(Fields inner, Measure measure, Mark mark)
    {
        var (closedLow, openLow, closedHigh, openHigh) = measure.IsDate
            ? (inner.Node("from"), inner.Node("after"), inner.Node("to"), inner.Node("before"))
            : (inner.Node("at-least"), inner.Node("over"), inner.Node("at-most"), inner.Node("under"));
        var bounds = new Bounds(End(closedLow, openLow), End(closedHigh, openHigh));
        if (bounds is { Lower: null, Upper: null })
            inner.Add("wrong-shape", mark, "a range needs an end", "give at-least, over, at-most or under");
        return bounds;

        Bound? End(Node? closed, Node? open)
        {
            if (closed is not null && open is not null)
                inner.Add("two-ends", open.Mark, "one end of a range is given twice, closed and open", "keep one of the two");
            return (closed ?? open) is { } end ? Edge(inner, end, measure, closed is not null) : null;
        }
    }

    private static Bound? Edge(Fields fields, Node value, Measure measure, bool closed) =>
        measure.IsDate
            ? fields.DayOf(value) is { } day
                ? new Bound(new Fraction(day.DayNumber), closed)
                : null
            : fields.QuantityOf(value, measure.Unit.Dimension) is { } quantity
                ? new Bound(quantity.Base, closed) { Written = quantity }
                : null;

    public Measure? FindMeasure(Fields fields, Scalar key)
    {
        if (vocabulary.Measures.TryGetValue(key.Text, out var measure))
            return measure;
        string[] words = [.. vocabulary.Measures.Keys, .. vocabulary.Facts.Keys];
        fields.Add("unknown-measure", key.Mark, $"'{key.Text}' is not a measure or fact of the vocabulary", Spelling.Tip(key.Text, words));
        return null;
    }

    private static ImmutableArray<string> ReadWords(Fields fields, Node value, FactWord fact)
    {
        var words = value is Sequence many ? many.Items : [value];
        foreach (var word in words.OfType<Scalar>().Where(word => !fact.Values.Contains(word.Text)))
            fields.Add("not-a-word", word.Mark, $"'{word.Text}' is not a value of {fact.Name}", Spelling.Tip(word.Text, fact.Values));
        return [.. words.OfType<Scalar>().Select(word => word.Text)];
    }
}
