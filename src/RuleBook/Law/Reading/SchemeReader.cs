using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>certification.yaml</c>.</summary>
internal static class SchemeReader
{
    /// <summary>Stands for an amount that cannot be read, which is reported.</summary>
    private static readonly Quantity NoAmount = new(0, Unit.Base(Dimension.Count));

    public static ImmutableArray<Scheme> ReadAll(Fields file, string jurisdiction, Vocabulary vocabulary)
    {
        var stated = file.Required("topic");
        if (stated != "certification")
            file.Add("wrong-folder", file.Mark, $"the topic '{stated}' stands in certification.yaml", "name the file after the topic");
        JurisdictionReader.Stands(file, jurisdiction);
        var schemes = file.List(
            "schemes",
            node =>
            {
                var fields = new Fields(node, file.Problems);
                var scheme = new Scheme(
                    fields.Required("scheme"),
                    fields.Texts("aliases"),
                    fields.Required("title"),
                    new LimitReader(vocabulary).ReadPredicate(fields.Nested("for")),
                    fields.List("versions", version => ReadVersion(new Fields(version, file.Problems))),
                    fields.Mark
                );
                fields.Done();
                return scheme;
            }
        );
        file.Done();
        return schemes;
    }

    private static SchemeVersion ReadVersion(Fields fields)
    {
        var version = new SchemeVersion(
            RuleReader.ReadFrom(fields),
            fields.Partial("in-force-by"),
            fields.Partial("until"),
            fields.Text("certifier"),
            fields.Text("appointed-by"),
            fields.Word("decides", "certifier", "authority"),
            fields.Has("accepts-appointed-in") ? fields.Texts("accepts-appointed-in") : null,
            fields.List("issued", node => ReadIssued(new Fields(node, fields.Problems))),
            fields.List("steps", node => ReadStep(new Fields(node, fields.Problems))),
            fields.Text("reregistering"),
            fields.List("fees", node => ReadFee(new Fields(node, fields.Problems))),
            fields.Texts("not-established"),
            SourceReader.Citations(fields),
            fields.Text("note"),
            fields.Mark
        );
        fields.Done();
        return version;
    }

    private static Issued ReadIssued(Fields fields)
    {
        var issued = new Issued(LimitReader.ReadPathway(fields, "pathway") ?? Pathway.Certificate, fields.Texts("papers"));
        fields.Done();
        return issued;
    }

    private static Step ReadStep(Fields fields)
    {
        var step = new Step(
            fields.Required("text"),
            fields.YesNo("before-work") ?? false,
            ReadPathways(fields),
            SourceReader.Citations(fields)
        )
        {
            Topics = fields.Texts("topics"),
        };
        fields.Done();
        return step;
    }

    private static ImmutableArray<Pathway> ReadPathways(Fields fields) =>
        fields.Node("pathways") switch
        {
            null => [],
            Sequence many => [.. many.Items.Select(node => LimitReader.PathwayOf(fields, node)).OfType<Pathway>()],
            var one => LimitReader.PathwayOf(fields, one) is { } pathway ? [pathway] : [],
        };

    private static Fee ReadFee(Fields fields)
    {
        var fee = new Fee(
            fields.Required("what"),
            fields.Quantity("amount", Dimension.Money) ?? NoAmount,
            fields.RequiredPartial("from"),
            SourceReader.Citations(fields)
        );
        fields.Done();
        return fee;
    }
}
