using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A character in the data that no reader sees, or that turns the direction of the text.</summary>
internal static class InvisibleCharacter
{
    internal static readonly CheckInfo Info = new(
        "invisible-character",
        "an invisible or direction-turning character is in the data",
        "What a reviewer sees would not be what the book says.",
        "take the character out, or write the word anew"
    );

    internal static IEnumerable<Problem> Find(Inspected book) => book.Files.SelectMany(file => In(file.Root));

    private static IEnumerable<Problem> In(Node node) =>
        node switch
        {
            Mapping keys => keys.Entries.SelectMany(entry => In(entry.Key).Concat(In(entry.Value))),
            Sequence list => list.Items.SelectMany(In),
            Scalar scalar when scalar.Text.FirstOrDefault(IsInvisible) is var found and not '\0' =>
            [
                Info.At(scalar.Mark, $"the text has the invisible character U+{(int)found:X4} in it"),
            ],
            _ => [],
        };

    /// <summary>Of category Cf (Unicode 15, section 23.2): zero-width, joining, direction marks, soft hyphen.</summary>
    private static bool IsInvisible(char letter) => char.GetUnicodeCategory(letter) == UnicodeCategory.Format;
}
