using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>All jurisdictions, loaded.</summary>
public sealed record Book
{
    /// <summary>
    /// <c>sha256:</c> over the files' names and contents: of each file, in ordinal order of their paths, the path, a zero byte, the text in
    /// UTF-8 with lines that end with a line feed, a zero byte. The list of editions is left out.
    /// </summary>
    public required string Digest { get; init; }

    /// <summary>Sentences that every verdict carries.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>By id.</summary>
    public ImmutableArray<Jurisdiction> Jurisdictions { get; init; } = [];

    /// <summary>The states of the book that have a name, oldest first.</summary>
    public ImmutableArray<Edition> Editions { get; init; } = [];

    /// <summary>The words.</summary>
    internal Vocabulary Vocabulary { get; init; } = Vocabulary.None;

    /// <summary>Figures of no single jurisdiction.</summary>
    internal Reference Reference { get; init; } = Reference.None;

    /// <summary>The edition that this book is; null where it was changed since the last one.</summary>
    public Edition? Edition => Editions.LastOrDefault(edition => edition.Digest == Digest);

    /// <summary>The jurisdiction with this id or alias, or null.</summary>
    public Jurisdiction? Jurisdiction(string id)
    {
        foreach (var jurisdiction in Jurisdictions)
            if (jurisdiction.Id == id)
                return jurisdiction;
        foreach (var jurisdiction in Jurisdictions)
            if (jurisdiction.Aliases.Contains(id))
                return jurisdiction;
        return null;
    }

    /// <summary>A tip for what is no id: the place of that name, the nearest id or name, or every id.</summary>
    internal string PlaceTip(string written)
    {
        string[] ids = [.. Jurisdictions.Select(place => place.Id)];
        var near =
            Spelling.Nearest(written, ids) is { } id ? id
            : Spelling.Nearest(written, Jurisdictions.Select(place => place.Name)) is { } name
                ? Jurisdictions.First(place => place.Name == name).Id
            : null;
        return near is null ? Spelling.Tip(written, ids) : $"did you mean '{near}'?";
    }

    /// <summary>The rule with this full id (aliases followed), or null.</summary>
    public Rule? Rule(string id)
    {
        if (id.Split('/') is not [var place, var topic, var name])
            return null;
        Rule? byAlias = null;
        foreach (var rule in Jurisdiction(place)?.Rules ?? [])
        {
            if (rule.Topic != topic)
                continue;
            if (rule.Name == name)
                return rule;
            if (byAlias is null && rule.Aliases.Contains(name))
                byAlias = rule;
        }

        return byAlias;
    }

    /// <summary>
    /// The source that <paramref name="cite"/> names, seen from <paramref name="jurisdiction"/>; null when there is none.
    /// </summary>
    public Source? Source(string jurisdiction, string cite)
    {
        var (place, id) = cite.Contains('/') && cite.Split('/') is [var elsewhere, var there] ? (elsewhere, there) : (jurisdiction, cite);
        Source? byAlias = null;
        foreach (var source in Jurisdiction(place)?.Sources ?? [])
        {
            if (source.Id == id)
                return source;
            if (byAlias is null && source.Aliases.Contains(id))
                byAlias = source;
        }

        return byAlias;
    }
}
