using System.Collections.Immutable;

namespace RuleBook.Authoring.Checks;

/// <summary>Codes of what can be wrong before the keys of a file are looked at.</summary>
internal static class SyntaxCodes
{
    private const string Bounded = "Input from outside is bounded, so that no file can exhaust the machine that reads it.";
    private const string OneReading = "A file must have one reading, for a person and for every program.";

    internal static ImmutableArray<CheckInfo> All { get; } =
    [
        new(
            "not-a-book",
            "the folder is not a book",
            "There is nothing to inspect.",
            "name the folder that has jurisdictions/ and schema/ in it"
        ),
        new(
            "link-in-book",
            "a file or folder of the book is a link",
            "What it leads to would be read, and published with the site, though it is not the book's.",
            "put the file itself there"
        ),
        new("too-large", "an input is too large", Bounded, "split it, or check that it is the file you meant"),
        new("nested-too-deep", "lists and mappings lie too deep", Bounded, "check the indentation and the brackets"),
        new(
            "anchor-or-alias",
            "an anchor or alias is used",
            Bounded + " What is the same elsewhere is said by adoption.",
            "write the value out"
        ),
        new("not-utf-8", "a text is not UTF-8", OneReading, "save the file as UTF-8"),
        new("control-character", "a control character is in the text", "It could play tricks where the text is shown.", "take it out"),
        new(
            "conflict-marker",
            "a conflict marker of git is left in a file",
            OneReading,
            "keep the lines that hold and take out the three markers"
        ),
        new("empty-input", "a file is empty", "An empty file says nothing, not even that nothing is known.", "fill it or remove it"),
        new("several-documents", "a file has several documents", OneReading, "take out the line '---'"),
        new("tag", "a tag is used", OneReading, "take it out; quote a text that begins with !"),
        new("key-not-a-word", "a key is not a word", OneReading, "write 'key: value'"),
        new("duplicate-key", "a key is given twice", "One of the two values would be passed over without a word.", "keep one of the two"),
        new("tab-indentation", "a tab is in the indentation", "YAML allows only spaces there.", "indent with spaces"),
        new("yaml-syntax", "a file is not YAML", OneReading, "quote texts with special characters; check indentation and brackets"),
    ];
}
