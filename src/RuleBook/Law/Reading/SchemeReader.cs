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
                var steps = new Dictionary<string, Step>(StringComparer.Ordinal);
                var scheme = new Scheme(
                    fields.Required("scheme"),
                    fields.Texts("aliases"),
                    fields.Required("title"),
                    new LimitReader(vocabulary).ReadPredicate(fields.Nested("for")),
                    fields.List("versions", version => ReadVersion(new Fields(version, file.Problems), steps)),
                    fields.Mark
                );
                fields.Done();
                return scheme;
            }
        );
        file.Done();
        return schemes;
    }

    private static SchemeVersion ReadVersion(Fields fields, Dictionary<string, Step> steps)
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
            fields.List("steps", node => ReadStep(new Fields(node, fields.Problems), steps)),
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

    /// <summary>A step; one that is <c>like</c> a named one above it is as that one in all that it does not say.</summary>
    private static Step ReadStep(Fields fields, Dictionary<string, Step> steps)
    {
        var like = fields.Text("like");
        var model = like is null ? null : steps.GetValueOrDefault(like);
        if (like is not null && model is null)
            fields.Add(
                "unknown-step",
                fields.Node("like")!.Mark,
                $"no step of this scheme above is '{like}'",
                Spelling.Tip(like, [.. steps.Keys])
            );
        var step = new Step(
            model is null || fields.Has("text") ? fields.Required("text") : model.Text,
            fields.YesNo("before-work") ?? model?.BeforeWork ?? false,
            model is null || fields.Has("pathways") ? ReadPathways(fields) : model.Pathways,
            model is null || fields.Has("sources") ? SourceReader.Citations(fields) : model.Sources
        )
        {
            Topics = model is null || fields.Has("topics") ? fields.Texts("topics") : model.Topics,
        };
        if (fields.Text("step") is { } name)
            steps.TryAdd(name, step);
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
