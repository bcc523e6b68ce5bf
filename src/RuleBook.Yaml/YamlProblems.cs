using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Yaml;

/// <summary>The texts of what can be wrong with a file before its keys are looked at.</summary>
internal static class YamlProblems
{
    internal static Problem NoFile(string file) =>
        Problem.Error("no-file", Top(file), "there is no such file", "check the path, and that it is a file and not a folder");

    internal static Problem Unreadable(string file, string why) =>
        Problem.Error("unreadable-file", Top(file), $"the file cannot be read: {why}", "check its permissions");

    internal static Problem TooLarge(string file) =>
        Problem.Error(
            "too-large",
            Top(file),
            string.Create(CultureInfo.InvariantCulture, $"the input is larger than {YamlText.LargestInput} bytes"),
            "split it, or check that this is the file you meant"
        );

    internal static Problem TooDeep(Mark mark) =>
        Problem.Error(
            "nested-too-deep",
            mark,
            string.Create(
                CultureInfo.InvariantCulture,
                $"lists and mappings lie more than {YamlText.DeepestNesting} deep inside one another"
            ),
            "check the indentation and the brackets; no input needs that depth"
        );

    internal static Problem NotUtf8(Mark mark) =>
        Problem.Error("not-utf-8", mark, "the text is not UTF-8 from here on", "save the file as UTF-8");

    internal static Problem ControlCharacter(Mark mark, char character) =>
        Problem.Error(
            "control-character",
            mark,
            string.Create(CultureInfo.InvariantCulture, $"the control character U+{(int)character:X4} is not allowed"),
            "take it out"
        );

    internal static Problem ConflictMarker(Mark mark) =>
        Problem.Error(
            "conflict-marker",
            mark,
            "this is a conflict marker of git: two edits of the same lines were not put together",
            "keep the lines that hold and take out the three markers"
        );

    internal static Problem Empty(Mark mark) => Problem.Error("empty-input", mark, "there is nothing in it", "");

    internal static Problem SeveralDocuments(Mark mark) =>
        Problem.Error("several-documents", mark, "a second document begins here", "take out the line '---'; one file is one document");

    internal static Problem Alias(Mark mark) =>
        Problem.Error(
            "anchor-or-alias",
            mark,
            "anchors (&) and aliases (*) are not allowed",
            "write the value out; a rule that is the same elsewhere is taken over with 'adopts'; a text that begins with & or * "
                + "must be quoted"
        );

    internal static Problem Tag(Mark mark, string tag) =>
        Problem.Error("tag", mark, $"tags are not allowed, and '{tag}' is one", "take it out; a text that begins with ! must be quoted");

    internal static Problem KeyNotAWord(Mark mark) =>
        Problem.Error("key-not-a-word", mark, "a key must be a single word", "write 'key: value'; a list or mapping cannot be a key");

    internal static Problem DuplicateKey(Scalar key, Mark first) =>
        Problem.Error(
            "duplicate-key",
            key.Mark,
            string.Create(CultureInfo.InvariantCulture, $"'{key.Text}' is already given at line {first.Line}, column {first.Column}"),
            "keep one of the two"
        );

    internal static Problem Tab(Mark mark) =>
        Problem.Error("tab-indentation", mark, "a tab stands in the indentation", "indent with spaces");

    internal static Problem Syntax(Mark mark, string text, string tip) => Problem.Error("yaml-syntax", mark, text, tip);

    private static Mark Top(string file) => new(file, 1, 1);
}
