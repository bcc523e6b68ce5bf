using System.Text.Json;

namespace RuleBook.Text;

/// <summary>Nodes as JSON: mappings as objects, sequences as arrays, and every scalar as its text.</summary>
internal static class NodeJson
{
    /// <summary>Writes a node and all that it holds; places are left out.</summary>
    public static void Write(Utf8JsonWriter json, Node node)
    {
        switch (node)
        {
            case Mapping map:
                json.WriteStartObject();
                foreach (var (key, value) in map.Entries)
                {
                    json.WritePropertyName(key.Text);
                    Write(json, value);
                }

                json.WriteEndObject();
                break;
            case Sequence list:
                json.WriteStartArray();
                foreach (var item in list.Items)
                    Write(json, item);
                json.WriteEndArray();
                break;
            case Scalar scalar:
                json.WriteStringValue(scalar.Text);
                break;
        }
    }
}
