using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Telling;

/// <summary>What a reader should know of a version in force: its notes, and what data say of it that is no limit.</summary>
internal static class NoteWords
{
    /// <summary>A sentence or more each.</summary>
    public static IEnumerable<string> Of(ResolvedVersion version)
    {
        if (version.InWhole is { } unit)
            yield return $"The classes are written in whole {unit}; a rating between two whole {unit}, as a plate in other units may have "
                + "it, is taken to be in the lower class.";
        foreach (var note in version.Notes)
            yield return note.Trim();
        if (version.NotFound is [_, ..])
            yield return $"Looked for and not found: {string.Join("; ", version.NotFound)}."
                + (version.Content is NotEstablished ? " That is no proof that there is no limit." : "");
    }
}
