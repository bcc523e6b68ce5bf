using Newtonsoft.Json.Linq;
using RuleBook.Text;

namespace RuleBook.Authoring.Schemas;

/// <summary>Nodes as the validator's tokens, every scalar a string, and the way back from a token to its node.</summary>
internal sealed class Tokens
{
    private readonly Dictionary<JToken, Node> _nodes = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<JToken, Mark> _keys = new(ReferenceEqualityComparer.Instance);

    /// <summary>The token of a node; a value that is left out is null, so that no schema takes it for a text.</summary>
    internal JToken Of(Node node)
    {
        JToken token = node switch
        {
            Scalar { Text: "" } => JValue.CreateNull(),
            Scalar scalar => new JValue(scalar.Text),
            Sequence list => new JArray(list.Items.Select(Of)),
            Mapping keys => new JObject(keys.Entries.Select(entry => Entry(entry.Key, entry.Value))),
            _ => throw new ArgumentException($"{node.GetType().Name} is not a node", nameof(node)),
        };
        _nodes.Add(token, node);
        return token;
    }

    /// <summary>The node of a token, or null.</summary>
    internal Node? Find(JToken? token) =>
        token switch
        {
            null => null,
            JProperty property => Find(property.Value),
            _ => _nodes.GetValueOrDefault(token),
        };

    /// <summary>The place of an entry's key, or null when the token is no entry.</summary>
    internal Mark? FindKey(JToken? token) => token is not null && _keys.TryGetValue(token, out var mark) ? mark : null;

    private JProperty Entry(Scalar key, Node value)
    {
        var property = new JProperty(key.Text, Of(value));
        _keys.Add(property, key.Mark);
        return property;
    }
}
