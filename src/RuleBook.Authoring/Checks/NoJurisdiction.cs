using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>
/// A list of sources that does not say whose it is; the schema, which the sources of <c>schema/reference</c> share, cannot ask for it.
/// </summary>
internal static class NoJurisdiction
{
    /// <summary>As the schema says it of the other files of a jurisdiction.</summary>
    internal const string Text = "the key 'jurisdiction' is missing";

    internal static readonly CheckInfo Info = ReadingCodes.All.Single(info => info.Code == "missing-key");

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from file in book.Files
        where file.Path.Split('/') is ["jurisdictions", _, "sources.yaml"] && file.Root is Mapping keys && keys.Find("jurisdiction") is null
        select Info.At(file.Root.Mark, Text, "add 'jurisdiction:'");
}
