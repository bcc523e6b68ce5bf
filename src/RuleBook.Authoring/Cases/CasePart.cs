using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>One question of a case as written: the case itself, or what a name under its <c>then</c> makes of it.</summary>
/// <param name="Id">Id of the case, with the name under <c>then</c>.</param>
/// <param name="Keys">The keys of a case, with what differs laid over.</param>
/// <param name="IsEdge">Whether it has no reason of its own and shares that of the case.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record CasePart(string Id, Mapping Keys, bool IsEdge, Mark Mark)
{
    private static readonly string[] MayDiffer = ["says", "vehicle", "changes", "on", "dates", "each", "expect", "because"];

    /// <summary>The case and each name under its <c>then</c>.</summary>
    public static IEnumerable<CasePart> Of(Node node, List<Problem> problems)
    {
        var fields = new Fields(node, problems);
        if (node is not Mapping keys)
            yield break;
        var id = fields.Required("id");
        yield return new CasePart(id, keys, false, node.Mark);
        if (fields.Nested("then") is not { } then)
            yield break;
        foreach (var (name, value) in then.Entries)
            if (Different(new Fields(value, problems)) && value is Mapping over)
                yield return new CasePart($"{id}/{name.Text}", Laid(keys, over), over.Find("because") is null, value.Mark);
    }

    private static bool Different(Fields fields)
    {
        foreach (var key in MayDiffer)
            fields.Node(key);
        if (!fields.Has("expect"))
            fields.Missing("expect");
        fields.Done();
        return fields.Has("expect");
    }

    /// <summary>Changes and lists of values are merged; a day, an expectation and a reason stand for themselves.</summary>
    private static Mapping Laid(Mapping keys, Mapping over)
    {
        string[] own = [.. over.Entries.Select(entry => entry.Key.Text)];
        string[] gone =
        [
            "then",
            .. own.Except(["changes", "each"]),
            .. own.Any(key => key is "on" or "dates") ? (string[])["on", "dates"] : [],
        ];
        return NodeMerge.Over(gone.Aggregate(keys, NodeEdit.Remove), over);
    }
}
