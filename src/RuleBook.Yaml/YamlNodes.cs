using System.Collections.Immutable;
using RuleBook.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using Mark = RuleBook.Text.Mark;
using Scalar = RuleBook.Text.Scalar;
using YamlScalar = YamlDotNet.Core.Events.Scalar;

namespace RuleBook.Yaml;

/// <summary>Builds nodes from parser events, checking depth before it goes deeper.</summary>
internal sealed class YamlNodes(string text, string file)
{
    private readonly Parser parser = new(new StringReader(text));

    /// <summary>The brackets that are open at the current event, the innermost first.</summary>
    private readonly Stack<(Mark At, bool IsList)> open = [];

    /// <summary>The root of the only document.</summary>
    internal Node Read()
    {
        try
        {
            Next();
            Next();
            if (parser.Current is StreamEnd)
                throw Refuse(YamlProblems.Empty(new Mark(file, 1, 1)));
            Next();
            var root = Node(depth: 1);
            Next();
            Next();
            return parser.Current is StreamEnd ? root : throw Refuse(YamlProblems.SeveralDocuments(Here()));
        }
        catch (YamlException error)
        {
            throw Refuse(Unclosed(before: error.Start.Line) ?? YamlSyntax.Explain(error, text, file));
        }
        catch (Exception error) when (error is ArgumentException or InvalidOperationException or FormatException or OverflowException)
        {
            throw Refuse(Unclosed(before: long.MaxValue) ?? YamlProblems.Syntax(Here(), "this cannot be read as YAML", ""));
        }
    }

    /// <summary>The outermost bracket that is open, where it stands on an earlier line.</summary>
    private Problem? Unclosed(long before) =>
        open.Count > 0 && open.Last() is var (bracket, isList) && bracket.Line < before ? YamlSyntax.Unclosed(bracket, isList) : null;

    private static InputException Refuse(Problem problem) => new(problem);

    private void Next() => parser.MoveNext();

    private Mark Here() => parser.Current is { } current ? Place(current) : new Mark(file, 1, 1);

    private Mark Place(ParsingEvent at) => new(file, (int)Math.Max(at.Start.Line, 1), (int)Math.Max(at.Start.Column, 1));

    /// <summary>The node at the current event; afterwards the current event is the node's last.</summary>
    private Node Node(int depth)
    {
        var current = parser.Current!;
        var mark = Place(current);
        if (current is AnchorAlias)
            throw Refuse(YamlProblems.Alias(mark));
        if (current is not NodeEvent node)
            throw Refuse(YamlProblems.Syntax(mark, "a value is missing here", ""));
        if (!node.Anchor.IsEmpty)
            throw Refuse(YamlProblems.Alias(mark));
        if (!node.Tag.IsEmpty)
            throw Refuse(YamlProblems.Tag(mark, node.Tag.IsNonSpecific ? "!" : node.Tag.Value));
        if (node is YamlScalar scalar)
            return Word(scalar, mark);
        if (depth > YamlText.DeepestNesting)
            throw Refuse(YamlProblems.TooDeep(mark));
        var hasBracket = node is SequenceStart { Style: SequenceStyle.Flow } or MappingStart { Style: MappingStyle.Flow };
        if (hasBracket)
            open.Push((mark, node is SequenceStart));
        Node read = node is SequenceStart ? List(mark, depth) : Keys(mark, depth);
        if (hasBracket)
            open.Pop();
        return read;
    }

    private static Scalar Word(YamlScalar scalar, Mark mark)
    {
        if (YamlCharacters.FirstRefused(scalar.Value) is { } refused)
            throw Refuse(YamlProblems.ControlCharacter(mark, refused));
        var isNull = scalar is { Style: ScalarStyle.Plain, Value: "null" or "Null" or "NULL" or "~" };
        return new Scalar(isNull ? "" : scalar.Value, mark);
    }

    private Sequence List(Mark mark, int depth)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        for (Next(); parser.Current is not SequenceEnd; Next())
            items.Add(Node(depth + 1));
        return new Sequence(items.ToImmutable(), mark);
    }

    private Mapping Keys(Mark mark, int depth)
    {
        var entries = ImmutableArray.CreateBuilder<KeyValuePair<Scalar, Node>>();
        var seen = new Dictionary<string, Mark>(StringComparer.Ordinal);
        for (Next(); parser.Current is not MappingEnd; Next())
        {
            var start = Here();
            if (Node(depth + 1) is not Scalar key)
                throw Refuse(YamlProblems.KeyNotAWord(start));
            if (!seen.TryAdd(key.Text, key.Mark))
                throw Refuse(YamlProblems.DuplicateKey(key, seen[key.Text]));
            Next();
            entries.Add(new KeyValuePair<Scalar, Node>(key, Node(depth + 1)));
        }

        return new Mapping(entries.ToImmutable(), mark);
    }
}
