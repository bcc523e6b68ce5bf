using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>Lays one input over another.</summary>
internal static class NodeMerge
{
    /// <summary>The keys of both; where both have one, mappings are merged and anything else is replaced.</summary>
    public static Mapping Over(Mapping below, Mapping above)
    {
        var entries = below.Entries.ToBuilder();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < entries.Count; i++)
            places.TryAdd(entries[i].Key.Text, i);
        foreach (var (key, value) in above.Entries)
            if (places.TryGetValue(key.Text, out var at))
                entries[at] = KeyValuePair.Create(key, entries[at].Value is Mapping old && value is Mapping over ? Over(old, over) : value);
            else
            {
                places[key.Text] = entries.Count;
                entries.Add(KeyValuePair.Create(key, value));
            }

        return below with
        {
            Entries = entries.DrainToImmutable(),
        };
    }
}
