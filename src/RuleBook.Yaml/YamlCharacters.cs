using RuleBook.Text;

namespace RuleBook.Yaml;

/// <summary>Characters that no input needs and that could play tricks where the text is shown again.</summary>
internal static class YamlCharacters
{
    /// <summary>Refuses control characters other than tab and line ends, and half of a surrogate pair (YAML 1.2.2, 5.1).</summary>
    internal static void Check(string text, string file)
    {
        for (var index = 0; index < text.Length; index++)
        {
            if (char.IsHighSurrogate(text[index]) && index + 1 < text.Length && char.IsLowSurrogate(text[index + 1]))
                index++;
            else if (IsRefused(text[index]))
                throw new InputException(YamlProblems.ControlCharacter(Place(text, index, file), text[index]));
            else if (IsConflictMarker(text.AsSpan(index)) && (index == 0 || text[index - 1] == '\n'))
                throw new InputException(YamlProblems.ConflictMarker(Place(text, index, file)));
        }
    }

    /// <summary>The first refused character of a value after its escapes were resolved, or null.</summary>
    internal static char? FirstRefused(string value)
    {
        for (var index = 0; index < value.Length; index++)
        {
            if (char.IsHighSurrogate(value[index]) && index + 1 < value.Length && char.IsLowSurrogate(value[index + 1]))
                index++;
            else if (IsRefused(value[index]))
                return value[index];
        }

        return null;
    }

    /// <summary>Line and column of a character, both from 1.</summary>
    internal static Mark Place(string text, int index, string file)
    {
        var before = text.AsSpan(0, index);
        var line = before.Count('\n') + 1;
        return new Mark(file, line, index - before.LastIndexOf('\n'));
    }

    /// <summary>
    /// As git writes them at the start of a line (gitformat of merges: seven signs, then a space or the end of the line).
    /// </summary>
    private static bool IsConflictMarker(ReadOnlySpan<char> rest) =>
        rest.StartsWith("<<<<<<< ", StringComparison.Ordinal)
        || rest.StartsWith(">>>>>>> ", StringComparison.Ordinal)
        || rest.StartsWith("=======\n", StringComparison.Ordinal)
        || rest.StartsWith("=======\r", StringComparison.Ordinal);

    private static bool IsRefused(char character) =>
        (char.IsControl(character) && character is not ('\t' or '\n' or '\r'))
        || char.IsSurrogate(character)
        || character is '\uFFFE' or '\uFFFF';
}
