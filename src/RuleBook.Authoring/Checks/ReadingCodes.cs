using System.Collections.Immutable;

namespace RuleBook.Authoring.Checks;

/// <summary>Codes of what can be wrong with keys and values.</summary>
internal static class ReadingCodes
{
    private const string Exact = "A limit is compared exactly, so what is written must have exactly one meaning.";
    private const string OneWord = "One word for one thing: otherwise a rule would silently not apply.";

    internal static ImmutableArray<CheckInfo> All { get; } =
    [
        new(
            "unknown-key",
            "a key is not known",
            "A key that nobody reads changes nothing, and nobody would notice.",
            "use one of the known keys"
        ),
        new("missing-key", "a key is missing", "Without it the entry cannot be used.", "add it"),
        new(
            "wrong-shape",
            "a value has the wrong shape",
            "A text, a list and keys with values are three things.",
            "write what the key needs"
        ),
        new(
            "not-well-formed",
            "a text does not have the form needed",
            "Ids, dates and addresses are compared letter by letter.",
            "write it in the form described"
        ),
        new("not-a-quantity", "a quantity cannot be read", Exact, "write a number, a space and a unit: 50 mm"),
        new("wrong-unit", "a unit measures something else", Exact, "use a unit of the measure's own kind"),
        new("not-a-date", "a date cannot be read", Exact, "write 2018-10-26, 2016-12, 2013, 2009~ or \"[2018-05-15..2019-01-31]\""),
        new("not-a-word", "a word is not one of those allowed", OneWord, "use one of the words named"),
        new("unknown-measure", "a measure or fact is not in the vocabulary", OneWord, "correct the word, or add it to schema/vocabulary"),
        new(
            "unknown-condition",
            "a condition is not in the vocabulary",
            OneWord,
            "correct the word, or add it to schema/vocabulary/conditions.yaml"
        ),
        new(
            "alternatives",
            "alternatives cannot be told apart here",
            "A rule, a scheme, a caution and an exception say one thing; a tier may be opened by any of several, but by something.",
            "write each alternative by itself"
        ),
        new(
            "missing-file",
            "a file is missing",
            "A jurisdiction is known by its jurisdiction.yaml, and the words by the vocabulary.",
            "add the file"
        ),
        new(
            "wrong-folder",
            "a file stands in the wrong place",
            "An id is read from the folder and from the file; both must say the same.",
            "rename one of the two"
        ),
        new(
            "one-content",
            "a version says several things, or nothing",
            "It could not be known which of them decides.",
            "give one of tiers, like, adopts, not-established or not-regulated"
        ),
        new(
            "unknown-version",
            "a version is not there",
            "What is taken over from it would be nothing.",
            "name a version above by its 'from' as it is written there"
        ),
        new(
            "nothing-to-change",
            "a version changes tiers of one that has none",
            "The change would have no effect.",
            "state the tiers, or take 'change' out"
        ),
        new(
            "unknown-step",
            "a step is like one that does not stand above it",
            "What the step does not say would be nowhere.",
            "give the 'step' of one above it in the scheme"
        ),
        new(
            "change-alone",
            "a change does not say of what",
            "The change would have no effect.",
            "add 'like' with the 'from' of the version that it changes"
        ),
        new(
            "key-without-effect",
            "a key does nothing where it stands",
            "It looks as if it held, and it does not.",
            "take it out, or put it where it has an effect"
        ),
        new(
            "classes-gap",
            "two classes of a table leave a gap",
            "A vehicle between them has no limit, and nobody would notice.",
            "begin each class where the one before it ends"
        ),
        new(
            "classes-overlap",
            "two classes of a table overlap",
            "A vehicle of both would have the easier limit.",
            "write the classes in rising order, each from where the one before it ends"
        ),
        new(
            "no-share",
            "a bound is a share of something of another kind",
            "A mass is no share of a length, and a date none of anything; the limit would be left out.",
            "name a measure of the same kind under 'of'"
        ),
        new(
            "two-ends",
            "one end of a range is given twice",
            Exact,
            "keep the closed end (at-least, at-most) or the open one (over, under)"
        ),
    ];
}
