using System.Collections.Immutable;
using System.Formats.Cbor;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Packing;

/// <summary>
/// A node as CBOR (RFC 8949): <c>[line, column, text]</c>, <c>[line, column, [node, ...]]</c> or
/// <c>[line, column, { key: [line, column, node], ... }]</c>, so that a packed book tells the same places as its files.
/// </summary>
internal static class NodeCbor
{
    /// <summary>A list or mapping takes at most three levels of CBOR.</summary>
    private const int DeepestNesting = 3 * (YamlText.DeepestNesting + 1);

    internal static void Write(CborWriter cbor, Node node)
    {
        cbor.WriteStartArray(3);
        Write(cbor, node.Mark);
        switch (node)
        {
            case Scalar scalar:
                cbor.WriteTextString(scalar.Text);
                break;
            case Sequence list:
                cbor.WriteStartArray(list.Items.Length);
                foreach (var item in list.Items)
                    Write(cbor, item);
                cbor.WriteEndArray();
                break;
            case Mapping keys:
                cbor.WriteStartMap(keys.Entries.Length);
                foreach (var (key, value) in keys.Entries)
                    Write(cbor, key, value);
                cbor.WriteEndMap();
                break;
        }

        cbor.WriteEndArray();
    }

    /// <exception cref="CborContentException">It is not a node, or lies deeper than any input of a book.</exception>
    internal static Node Read(CborReader cbor, string file)
    {
        if (cbor.CurrentDepth > DeepestNesting)
            throw new CborContentException("nested too deep");
        cbor.ReadStartArray();
        var mark = ReadMark(cbor, file);
        Node node = cbor.PeekState() switch
        {
            CborReaderState.TextString => new Scalar(cbor.ReadTextString(), mark),
            CborReaderState.StartArray => new Sequence(ReadItems(cbor, file), mark),
            _ => new Mapping(ReadEntries(cbor, file), mark),
        };
        cbor.ReadEndArray();
        return node;
    }

    private static void Write(CborWriter cbor, Scalar key, Node value)
    {
        cbor.WriteTextString(key.Text);
        cbor.WriteStartArray(3);
        Write(cbor, key.Mark);
        Write(cbor, value);
        cbor.WriteEndArray();
    }

    private static void Write(CborWriter cbor, Mark mark)
    {
        cbor.WriteInt32(mark.Line);
        cbor.WriteInt32(mark.Column);
    }

    private static Mark ReadMark(CborReader cbor, string file) => new(file, cbor.ReadInt32(), cbor.ReadInt32());

    private static ImmutableArray<Node> ReadItems(CborReader cbor, string file)
    {
        var items = ImmutableArray.CreateBuilder<Node>(cbor.ReadStartArray() ?? 0);
        while (cbor.PeekState() != CborReaderState.EndArray)
            items.Add(Read(cbor, file));
        cbor.ReadEndArray();
        return items.DrainToImmutable();
    }

    private static ImmutableArray<KeyValuePair<Scalar, Node>> ReadEntries(CborReader cbor, string file)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<Scalar, Node>>(cbor.ReadStartMap() ?? 0);
        while (cbor.PeekState() != CborReaderState.EndMap)
        {
            var key = string.Intern(cbor.ReadTextString());
            cbor.ReadStartArray();
            entries.Add(new(new Scalar(key, ReadMark(cbor, file)), Read(cbor, file)));
            cbor.ReadEndArray();
        }

        cbor.ReadEndMap();
        return entries.DrainToImmutable();
    }
}
