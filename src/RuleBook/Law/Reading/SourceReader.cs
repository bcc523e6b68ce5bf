using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads <c>sources.yaml</c> and citations.</summary>
internal static class SourceReader
{
    public static ImmutableArray<Source> ReadAll(Fields file, string jurisdiction)
    {
        JurisdictionReader.Stands(file, jurisdiction);
        var sources = file.List("sources", node => Read(new Fields(node, file.Problems), jurisdiction));
        file.Done();
        return sources;
    }

    /// <summary>The citations under <c>sources</c>.</summary>
    public static ImmutableArray<Citation> Citations(Fields fields) =>
        fields.List("sources", node => Citation(new Fields(node, fields.Problems)));

    /// <summary>One citation.</summary>
    public static Citation Citation(Fields inner)
    {
        var citation = new Citation(inner.Required("cite"), inner.Text("clause"), inner.Text("note"), inner.Mark)
        {
            Carries = inner.Has("carries") ? inner.Texts("carries") : null,
        };
        inner.Done();
        return citation;
    }

    private static Source Read(Fields fields, string jurisdiction)
    {
        var source = new Source(
            fields.Required("source"),
            jurisdiction,
            fields.Texts("aliases"),
            fields.Required("title"),
            fields.Required("publisher"),
            fields.Text("edition"),
            fields.Partial("dated"),
            fields.Text("url"),
            ReadAsOf(fields),
            fields.RequiredPartial("checked"),
            fields.RequiredPartial("recheck-after"),
            fields.Text("note"),
            fields.Mark
        )
        {
            PartsRead = fields.Has("parts-read") ? fields.Texts("parts-read") : null,
            Copy = fields.List("copy", word => fields.WordOf(word, Source.CopyWords.AsSpan())),
            From = fields.Partial("from"),
            Until = fields.Partial("until"),
            HasClauses = fields.Word("clauses", "none") is null,
        };
        fields.Done();
        return source;
    }

    private static ReadAs ReadAsOf(Fields fields)
    {
        if (!fields.Has("read-as"))
            fields.Missing("read-as");
        return fields.Word("read-as", "primary", "secondary", "common-practice", "memory") switch
        {
            "primary" => ReadAs.Primary,
            "secondary" => ReadAs.Secondary,
            "common-practice" => ReadAs.CommonPractice,
            _ => ReadAs.Memory,
        };
    }
}
