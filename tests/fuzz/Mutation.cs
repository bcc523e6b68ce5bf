using System.Globalization;
using System.Text;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Fuzz;

/// <summary>Makes an input of another: letter by letter, line by line, or by its structure.</summary>
internal sealed class Mutation(Random random)
{
    private static readonly string[] Odd =
    [
        "",
        " ",
        "~",
        "null",
        "yes",
        "no",
        "unknown",
        "none",
        "not-established",
        "amended",
        "-1",
        "0",
        "1e9",
        "50 mm",
        "-50 mm",
        "0.0000000001 mm",
        "999999999999 kg",
        "-99999 kg",
        "3.5 t",
        "120 %",
        "265/70R17 115S",
        "31x10.50R15LT",
        "999/99R99 999Z",
        "0/0R0",
        "2018-10-26",
        "0001-01-01",
        "9999-12-31",
        "2999-12-31",
        "1900",
        "2999~",
        "[1900..2999]",
        "[2020-02-30..2020-03-01]",
        "au-qld",
        "au",
        "au/ride-height/raise-four-wheel-drive",
        "total-lift",
        "suspension-lift",
        "[]",
        "{}",
        "[[[[]]]]",
        "{ a: { b: [c] } }",
        "\u202e",
        "\u200b",
        "\ufeff",
        "\u0000",
        "\u001b[31m",
        "::error::",
        "=1+1",
        "`",
        "|",
        ">",
        "&a",
        "*a",
        "!!tag",
        "- - -",
        "? :",
        "%YAML 1.1",
        "---",
        "...",
        "😀",
        "é",
        "車検証",
        "\t",
    ];

    public int Next(int below) => random.Next(below);

    /// <summary>Letters and lines.</summary>
    public string Text(string from)
    {
        var text = new StringBuilder(from);
        for (var times = random.Next(1, 5); times > 0; times--)
        {
            var at = random.Next(text.Length + 1);
            var length = Math.Min(random.Next(1, 30), text.Length - at);
            switch (random.Next(7))
            {
                case 0:
                    text.Insert(at, Odd[random.Next(Odd.Length)]);
                    break;
                case 1:
                    text.Remove(at, length);
                    break;
                case 2:
                    text.Insert(random.Next(text.Length + 1), text.ToString(at, length));
                    break;
                case 3 when at < text.Length:
                    text[at] = (char)(random.Next(3) == 0 ? random.Next(0x10000) : random.Next(128));
                    break;
                case 4:
                    Lines(text);
                    break;
                case 5 when text.Length < 20_000:
                    text.Insert(at, string.Concat(Enumerable.Repeat(length > 0 ? text.ToString(at, length) : "[", random.Next(2, 200))));
                    break;
                default:
                    Word(text, at);
                    break;
            }
        }

        return text.ToString();
    }

    /// <summary>Keys and values; the result is JSON, which is YAML too. What cannot be read is changed by its letters.</summary>
    public string Structure(string from)
    {
        if (random.Next(4) == 0)
            return Text(from);
        try
        {
            var node = YamlText.Read(from, "");
            for (var times = random.Next(1, 6); times > 0; times--)
                node = Changed(node, 0);
            var json = new StringBuilder();
            Write(json, node);
            return json.ToString();
        }
        catch (InputException)
        {
            return Text(from);
        }
    }

    private Node Changed(Node node, int depth)
    {
        var here = random.Next(3) == 0 || node is Scalar || depth > 20;
        switch (node)
        {
            case Mapping { Entries.Length: > 0 } map:
                var at = random.Next(map.Entries.Length);
                var (key, value) = map.Entries[at];
                return map with
                {
                    Entries = !here
                        ? map.Entries.SetItem(at, KeyValuePair.Create(key, Changed(value, depth + 1)))
                        : random.Next(4) switch
                        {
                            0 => map.Entries.RemoveAt(at),
                            1 => map.Entries.SetItem(at, KeyValuePair.Create(key, map.Entries[random.Next(map.Entries.Length)].Value)),
                            2 => map.Entries.SetItem(
                                at,
                                KeyValuePair.Create(new Scalar(Odd[random.Next(Odd.Length)] + "k", key.Mark), value)
                            ),
                            _ => map.Entries.SetItem(
                                at,
                                KeyValuePair.Create(key, (Node)new Scalar(Odd[random.Next(Odd.Length)], key.Mark))
                            ),
                        },
                };
            case Sequence { Items.Length: > 0 } list:
                var item = random.Next(list.Items.Length);
                return list with
                {
                    Items = !here
                        ? list.Items.SetItem(item, Changed(list.Items[item], depth + 1))
                        : random.Next(3) switch
                        {
                            0 => list.Items.RemoveAt(item),
                            1 => list.Items.AddRange(Enumerable.Repeat(list.Items[item], random.Next(1, 120))),
                            _ => list.Items.Insert(item, Changed(list.Items[item], depth + 1)),
                        },
                };
            default:
                return random.Next(8) switch
                {
                    0 => new Sequence([node], node.Mark),
                    1 => new Mapping([KeyValuePair.Create(new Scalar("mass", node.Mark), node)], node.Mark),
                    2 when node is Scalar scalar => scalar with { Text = Text(scalar.Text) },
                    3 or 4 when node is Scalar number => number with { Text = Number(number.Text) },
                    _ => new Scalar(Odd[random.Next(Odd.Length)], node.Mark),
                };
        }
    }

    /// <summary>Another figure with the same unit.</summary>
    private string Number(string text)
    {
        var unit = text.AsSpan().TrimStart("+-0123456789.");
        var value = random.Next(4) switch
        {
            0 => random.Next(-100, 100),
            1 => random.Next(5000),
            2 => random.NextInt64(-1_000_000_000, 1_000_000_000),
            _ => random.Next(1000) / 10m,
        };
        return string.Create(CultureInfo.InvariantCulture, $"{value}{unit}");
    }

    private void Lines(StringBuilder text)
    {
        var lines = text.ToString().Split('\n').ToList();
        var (one, other) = (random.Next(lines.Count), random.Next(lines.Count));
        switch (random.Next(3))
        {
            case 0:
                lines.RemoveAt(one);
                break;
            case 1:
                lines.Insert(one, lines[other]);
                break;
            default:
                (lines[one], lines[other]) = (lines[other], lines[one]);
                break;
        }

        text.Clear().AppendJoin('\n', lines);
    }

    private void Word(StringBuilder text, int at)
    {
        var whole = text.ToString();
        var (from, to) = (at, at);
        while (from > 0 && whole[from - 1] is not (' ' or '\n' or ',' or ':'))
            from--;
        while (to < whole.Length && whole[to] is not (' ' or '\n' or ',' or ':'))
            to++;
        text.Remove(from, to - from).Insert(from, Odd[random.Next(Odd.Length)]);
    }

    private static void Write(StringBuilder json, Node node)
    {
        switch (node)
        {
            case Scalar scalar:
                json.Append('"').Append(System.Text.Json.JsonEncodedText.Encode(Whole(scalar.Text))).Append('"');
                break;
            case Sequence list:
                Join(json, '[', list.Items, ']', item => Write(json, item));
                break;
            case Mapping map:
                Join(
                    json,
                    '{',
                    map.Entries,
                    '}',
                    entry =>
                    {
                        json.Append('"').Append(System.Text.Json.JsonEncodedText.Encode(Whole(entry.Key.Text))).Append("\": ");
                        Write(json, entry.Value);
                    }
                );
                break;
        }
    }

    private static void Join<T>(StringBuilder json, char open, IEnumerable<T> items, char close, Action<T> write)
    {
        json.Append(open);
        var first = true;
        foreach (var item in items)
        {
            if (!first)
                json.Append(", ");
            first = false;
            write(item);
        }

        json.Append(close);
    }

    /// <summary>Half of a surrogate pair cannot be encoded.</summary>
    private static string Whole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));
}
