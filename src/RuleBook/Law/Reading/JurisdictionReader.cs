using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>jurisdiction.yaml</c>.</summary>
internal static class JurisdictionReader
{
    private const string Other = "other";

    public static Jurisdiction Read(
        Fields fields,
        string folder,
        Vocabulary vocabulary,
        ImmutableArray<Source> sources,
        ImmutableArray<Rule> rules,
        ImmutableArray<Scheme> schemes
    )
    {
        var id = fields.Required("jurisdiction");
        if (id != folder)
            fields.Add("wrong-folder", fields.Mark, $"'{id}' stands in the folder '{folder}'", "name the folder after the jurisdiction");
        var jurisdiction = new Jurisdiction
        {
            Id = folder,
            Aliases = fields.Texts("aliases"),
            Name = fields.Required("name"),
            Within = fields.Text("within"),
            Registers = fields.YesNo("registers") ?? true,
            RegistersNote = fields.Text("registers-note"),
            DecidedBy = fields.Word("decided-by", "work", "certification", "inspection"),
            Ask = ReadAuthority(fields),
            Coverage = ReadCoverage(fields, vocabulary),
            Cautions = fields.List("cautions", node => ReadCaution(new Fields(node, fields.Problems), vocabulary)),
            Sources = sources,
            Rules = rules,
            Schemes = schemes,
            Mark = fields.Mark,
        };
        fields.Done();
        return jurisdiction;
    }

    /// <summary>The jurisdiction that a file names is that of its folder: a file copied from another folder is caught.</summary>
    public static void Stands(Fields file, string folder)
    {
        if (file.Text("jurisdiction") is { } stated && stated != folder)
            file.Add(
                "wrong-folder",
                file.Node("jurisdiction")!.Mark,
                $"the file is one of '{stated}' and stands in the folder '{folder}'",
                "was it copied? name the jurisdiction whose rules these are"
            );
    }

    private static Authority ReadAuthority(Fields fields)
    {
        if (fields.Nested("ask") is not { } ask)
        {
            fields.Missing("ask");
            return new Authority("", null);
        }

        var authority = new Authority(ask.Required("authority"), ask.Text("url"));
        ask.Done();
        return authority;
    }

    private static Caution ReadCaution(Fields fields, Vocabulary vocabulary)
    {
        var caution = new Caution(
            fields.Required("caution"),
            new LimitReader(vocabulary).ReadPredicate(fields.Nested("when")),
            SourceReader.Citations(fields),
            fields.Mark
        );
        fields.Done();
        return caution;
    }

    /// <summary>One entry a topic; <c>other</c> stands for every topic that no entry names.</summary>
    private static ImmutableArray<Coverage> ReadCoverage(Fields fields, Vocabulary vocabulary)
    {
        var entries = fields.List("coverage", node => ReadCoverage(new Fields(node, fields.Problems)));
        return
        [
            .. entries.SelectMany(entry =>
                entry.Topic != Other
                    ? [entry]
                    : vocabulary
                        .Topics.Keys.Where(topic => entries.All(named => named.Topic != topic))
                        .Order(StringComparer.Ordinal)
                        .Select(topic => entry with { Topic = topic })
            ),
        ];
    }

    private static Coverage ReadCoverage(Fields fields)
    {
        var coverage = new Coverage(
            fields.Required("topic"),
            fields.Word("state", "complete", "partial", "none") ?? "none",
            fields.Text("lacks"),
            fields.Mark
        );
        fields.Done();
        return coverage;
    }
}
