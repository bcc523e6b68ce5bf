using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Tests.Jobs;

/// <summary>Nodes from JSON, each with the path of keys to it as its place.</summary>
internal static class Nodes
{
    public static Mapping Of(string json) => (Mapping)Read(JsonDocument.Parse(json).RootElement, "");

    private static Node Read(JsonElement value, string path) =>
        value.ValueKind switch
        {
            JsonValueKind.Object => new Mapping([.. value.EnumerateObject().Select(each => Entry(each, path))], At(path)),
            JsonValueKind.Array => new Sequence(
                [.. value.EnumerateArray().Select((item, index) => Read(item, $"{path}[{index}]"))],
                At(path)
            ),
            JsonValueKind.String => new Scalar(value.GetString()!, At(path)),
            _ => new Scalar(value.GetRawText(), At(path)),
        };

    private static KeyValuePair<Scalar, Node> Entry(JsonProperty property, string path)
    {
        var at = path.Length == 0 ? property.Name : $"{path}.{property.Name}";
        return KeyValuePair.Create(new Scalar(property.Name, At(at)), Read(property.Value, at));
    }

    private static Mark At(string path) => new(path, 1, 1);
}
