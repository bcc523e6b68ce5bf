using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>Lays one input over another.</summary>
internal static class NodeMerge
{
    /// <summary>The keys of both; where both have one, mappings are merged and anything else is replaced.</summary>
    public static Mapping Over(Mapping below, Mapping above)
    {
        var entries = below.Entries;
        foreach (var (key, value) in above.Entries)
        {
            var at = entries.Select(entry => entry.Key.Text).ToList().IndexOf(key.Text);
            var merged = at >= 0 && entries[at].Value is Mapping old && value is Mapping over ? Over(old, over) : value;
            entries = at < 0 ? entries.Add(KeyValuePair.Create(key, merged)) : entries.SetItem(at, KeyValuePair.Create(key, merged));
        }

        return below with { Entries = entries };
    }
}
