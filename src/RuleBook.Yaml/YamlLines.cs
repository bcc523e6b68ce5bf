using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Yaml;

/// <summary>Writes keys and values as YAML, a line each.</summary>
public static class YamlLines
{
    /// <summary>The lines, each ending with a line feed; a value that plain YAML would read as something else is quoted.</summary>
    /// <param name="root">Keys with texts or further keys; lists are of texts.</param>
    public static string Write(Mapping root)
    {
        var text = new StringBuilder();
        Append(text, root, "");
        return text.ToString();
    }

    private static void Append(StringBuilder text, Mapping at, string indent)
    {
        foreach (var (key, value) in at.Entries)
            if (value is Mapping { Entries.IsEmpty: false } inner)
                Append(text.Append(CultureInfo.InvariantCulture, $"{indent}{key.Text}:\n"), inner, indent + "  ");
            else
                text.Append(CultureInfo.InvariantCulture, $"{indent}{key.Text}: {Value(value)}\n");
    }

    private static string Value(Node value) =>
        value switch
        {
            Scalar scalar => IsPlain(scalar.Text)
                ? scalar.Text
                : $"\"{JsonEncodedText.Encode(scalar.Text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"",
            Sequence list => $"[{string.Join(", ", list.Items.Select(Value))}]",
            _ => "{}",
        };

    private static bool IsPlain(string text) =>
        text.Length > 0
        && char.IsAsciiLetterOrDigit(text[text[0] is '-' or '+' && text.Length > 1 ? 1 : 0])
        && text.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is ' ' or '.' or '/' or '-' or '+' or '%')
        && !text.EndsWith(' ');
}
