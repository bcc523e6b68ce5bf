using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>jurisdiction.yaml</c>.</summary>
internal static class JurisdictionReader
{
    public static Jurisdiction Read(
        Fields fields, string folder, Vocabulary vocabulary, ImmutableArray<Source> sources, ImmutableArray<Rule> rules, ImmutableArray<Scheme> schemes)
    {
        var id = fields.Required("jurisdiction");
        if (id != folder) fields.Add("wrong-folder", fields.Mark, $"'{id}' stands in the folder '{folder}'", "name the folder after the jurisdiction");
        var jurisdiction = new Jurisdiction(
            folder,
            fields.Texts("aliases"),
            fields.Required("name"),
            fields.Text("within"),
            fields.YesNo("registers") ?? true,
            fields.Text("registers-note"),
            fields.Word("decided-by", "work", "certification", "inspection"),
            ReadAuthority(fields),
            fields.List("coverage", node => ReadCoverage(new Fields(node, fields.Problems))),
            fields.List("cautions", node => ReadCaution(new Fields(node, fields.Problems), vocabulary)),
            sources,
            rules,
            schemes,
            fields.Mark);
        fields.Done();
        return jurisdiction;
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
            fields.Required("caution"), new LimitReader(vocabulary).ReadPredicate(fields.Nested("when")), SourceReader.Citations(fields), fields.Mark);
        fields.Done();
        return caution;
    }

    private static Coverage ReadCoverage(Fields fields)
    {
        var coverage = new Coverage(
            fields.Required("topic"), fields.Word("state", "complete", "partial", "none") ?? "none", fields.Text("lacks"), fields.Mark);
        fields.Done();
        return coverage;
    }
}
