using System.Collections.Immutable;

namespace RuleBook.Text;

/// <summary>Changes one value in an input without touching the rest.</summary>
internal static class NodeEdit
{
    private const int DeepestPath = 64;

    /// <summary>The same mapping with the value at <paramref name="path"/> (keys joined by dots) replaced or added.</summary>
    public static Mapping Set(Mapping root, string path, string value) =>
        Set(root, path, new Scalar(value, new Mark($"--set {path}", 1, 1)));

    /// <summary>The same with a value that has a place of its own.</summary>
    /// <exception cref="InputException">The path leads deeper than any input goes.</exception>
    public static Mapping Set(Mapping root, string path, Scalar value) =>
        path.AsSpan().Count('.') < DeepestPath
            ? Set(root, path.Split('.'), value)
            : throw new InputException(
                Problem.Error(
                    "nested-too-deep",
                    value.Mark with
                    {
                        File = "--set",
                    },
                    $"the path has more than {DeepestPath} parts",
                    "write keys joined by dots, such as vehicle.stability-control"
                )
            );

    /// <summary>The same mapping without a key.</summary>
    public static Mapping Remove(Mapping root, string key) =>
        root with
        {
            Entries = root.Entries.RemoveAll(entry => entry.Key.Text == key),
        };

    private static Mapping Set(Mapping at, ReadOnlySpan<string> path, Scalar value)
    {
        var key = path[0];
        Node changed = path.Length == 1 ? value : Set(at.Find(key) as Mapping ?? new Mapping([], value.Mark), path[1..], value);
        var index = IndexOf(at.Entries, key);
        var entry = KeyValuePair.Create(index < 0 ? new Scalar(key, value.Mark) : at.Entries[index].Key, changed);
        return at with { Entries = index < 0 ? at.Entries.Add(entry) : at.Entries.SetItem(index, entry) };
    }

    private static int IndexOf(ImmutableArray<KeyValuePair<Scalar, Node>> entries, string key)
    {
        for (var i = 0; i < entries.Length; i++)
            if (entries[i].Key.Text == key)
                return i;
        return -1;
    }
}
