using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads a topic file: rules and their versions.</summary>
internal sealed class RuleReader(string jurisdiction, string topic, Vocabulary vocabulary)
{
    private readonly LimitReader limits = new(vocabulary);

    public ImmutableArray<Rule> ReadAll(Fields file)
    {
        var stated = file.Required("topic");
        if (stated != topic) file.Add("wrong-folder", file.Mark, $"the topic '{stated}' stands in {topic}.yaml", "name the file after the topic");
        var rules = file.List("rules", node => ReadRule(new Fields(node, file.Problems)));
        file.Done();
        return rules;
    }

    private Rule ReadRule(Fields fields)
    {
        var rule = new Rule(
            jurisdiction,
            topic,
            fields.Required("rule"),
            fields.Texts("aliases"),
            fields.Required("title"),
            limits.ReadPredicate(fields.Nested("for")),
            fields.Word("decided-by", "work", "certification", "inspection"),
            fields.Word("governed-by", "registration", "travel") == "travel",
            fields.List("versions", node => ReadVersion(new Fields(node, fields.Problems))),
            fields.Mark);
        fields.Done();
        return rule;
    }

    private RuleVersion ReadVersion(Fields fields)
    {
        var version = new RuleVersion(
            ReadFrom(fields),
            fields.Partial("in-force-by"),
            fields.Partial("until"),
            fields.Partial("announced"),
            fields.YesNo("proposed") ?? false,
            SourceReader.Citations(fields),
            fields.Nested("measured") is { } measured ? ReadMeasured(measured) : null,
            ReadContent(fields),
            fields.List("disputed", node => ReadDispute(new Fields(node, fields.Problems))),
            fields.Text("note"),
            fields.Mark);
        fields.Done();
        return version;
    }

    /// <summary>A date, or null for <c>unknown</c> or nothing.</summary>
    public static Units.PartialDate? ReadFrom(Fields fields) =>
        fields.Node("from") is Scalar { Text: "unknown" } ? null : fields.Partial("from");

    private Content ReadContent(Fields fields)
    {
        var tiers = fields.List("tiers", node => limits.ReadTier(new Fields(node, fields.Problems)));
        var beyond = fields.Node("beyond") is Scalar { Text: "not-established" } ? null : LimitReader.ReadPathway(fields, "beyond");
        var exceptions = fields.List("except", node => limits.ReadDeparture(new Fields(node, fields.Problems)));
        var contents = new List<Content>();
        if (tiers.Length > 0 || fields.Has("tiers")) contents.Add(new Stated(tiers, beyond));
        if (fields.Nested("adopts") is { } adopts) contents.Add(ReadAdoption(adopts, exceptions));
        if (fields.Nested("not-established") is { } unknown) contents.Add(ReadNotEstablished(unknown));
        if (fields.Text("not-regulated") is { } why) contents.Add(new NotRegulated(why));
        if (contents.Count == 1) return contents[0];
        fields.Add(
            "one-content", fields.Mark, $"a version says one thing, this one says {contents.Count}", "give one of tiers, adopts, not-established or not-regulated");
        return new NotEstablished("", null, null);
    }

    private static Adoption ReadAdoption(Fields fields, ImmutableArray<Departure> exceptions)
    {
        var amended = fields.Node("as-of") is Scalar { Text: "amended" };
        if (!fields.Has("as-of")) fields.Missing("as-of");
        var adoption = new Adoption(fields.Required("rule"), amended ? null : fields.Day("as-of"), exceptions, fields.Mark);
        fields.Done();
        return adoption;
    }

    private static NotEstablished ReadNotEstablished(Fields fields)
    {
        var content = new NotEstablished(fields.Required("ask"), fields.Text("open"), fields.Text("indication"));
        fields.Done();
        return content;
    }

    private static Measured ReadMeasured(Fields fields)
    {
        var measured = new Measured(
            fields.Texts("between"), fields.Word("mass-state", "tare", "unladen", "loaded", "not-established"), fields.Texts("total"), fields.Text("note"));
        fields.Done();
        return measured;
    }

    private static Dispute ReadDispute(Fields fields)
    {
        var dispute = new Dispute(
            fields.Required("about"),
            fields.List("readings", node =>
            {
                var inner = new Fields(node, fields.Problems);
                var reading = new DisputedReading(inner.Required("says"), SourceReader.Citations(inner));
                inner.Done();
                return reading;
            }),
            fields.Required("taken"),
            fields.Required("because"),
            fields.Mark);
        fields.Done();
        return dispute;
    }
}
