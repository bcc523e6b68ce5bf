using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.InForce;

/// <summary>What a change of a rule was.</summary>
internal enum ChangeKind
{
    /// <summary>Stated in full.</summary>
    Stated,

    /// <summary>Took over another jurisdiction's rule.</summary>
    Adopted,

    /// <summary>Seen in force; nobody has established what it says.</summary>
    NotEstablished,

    /// <summary>No such rule.</summary>
    NotRegulated,

    /// <summary>Ended without a next version.</summary>
    Ended,

    /// <summary>Announced for a day.</summary>
    Announced,

    /// <summary>Proposed only.</summary>
    Proposed,
}

/// <summary>One change of one rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Kind">What changed.</param>
/// <param name="Since">The day, as far as it is known; null when the start is unknown or there is none.</param>
/// <param name="SeenBy">Where the start is unknown: when the version is seen in force.</param>
/// <param name="Adopts">Id of the rule taken over; null otherwise.</param>
/// <param name="AsOf">The day as on which a fixed adoption took it over; null for a moving one.</param>
/// <param name="Exceptions">How many exceptions the adopting jurisdiction makes.</param>
/// <param name="Version">The version.</param>
internal sealed record Change(
    Rule Rule,
    ChangeKind Kind,
    PartialDate? Since,
    PartialDate? SeenBy,
    string? Adopts,
    DateOnly? AsOf,
    int Exceptions,
    RuleVersion Version
)
{
    /// <summary>The day by which changes are put in order; what has none comes last.</summary>
    public DateOnly Order => Since?.Earliest ?? SeenBy?.Earliest ?? DateOnly.MaxValue;
}

/// <summary>How each jurisdiction's rules on a topic came about, oldest first.</summary>
internal static class History
{
    /// <summary>Every change of every rule on a topic; announced and proposed ones last where they have no day.</summary>
    public static ImmutableArray<Change> Of(Book book, string topic) =>
        [
            .. book
                .Jurisdictions.SelectMany(place => place.Rules)
                .Where(rule => rule.Topic == topic)
                .SelectMany(rule => rule.Versions.SelectMany(version => Changes(book, rule, version)))
                .OrderBy(change => change.Order)
                .ThenBy(change => change.Rule.Id, StringComparer.Ordinal),
        ];

    /// <summary>
    /// The position of a jurisdiction on a nation's rule, on a day: in force, with exceptions, announced, proposed, not-established or not.
    /// </summary>
    public static string Position(Book book, Rule national, Jurisdiction place, DateOnly day)
    {
        var versions = place
            .Rules.Where(rule => rule.Topic == national.Topic)
            .SelectMany(rule => rule.Versions.Select(version => (rule, version)))
            .ToArray();
        var adopting = versions.Where(pair => pair.version.Content is Adoption adoption && book.Rule(adoption.Rule) == national).ToArray();
        foreach (var (rule, version) in adopting.Where(pair => pair.version.Decides))
            if (
                Resolver
                    .Resolve(book, rule, day)
                    .Any(resolved => resolved.From == version.From && resolved.Adopted.Any(step => step.Rule == national.Id))
            )
                return ((Adoption)version.Content).Exceptions.IsEmpty
                    ? $"in force {Since(version)}"
                    : $"in force with exceptions {Since(version)}";
        if (adopting.Any(pair => pair.version.Announced is not null))
            return $"announced for {adopting.First(pair => pair.version.Announced is not null).version.Announced!.Words}";
        if (adopting.Any(pair => pair.version.Proposed))
            return "proposed";
        return versions.Any(pair =>
            pair.version.Content is NotEstablished { Indication: { } indication } && book.Rule(indication) == national
        )
            ? "not-established"
            : "not";
    }

    private static string Since(RuleVersion version) =>
        version.From is { } from ? $"since {from.Words}" : $"since an unknown day, seen {version.InForceBy?.Words}";

    private static IEnumerable<Change> Changes(Book book, Rule rule, RuleVersion version)
    {
        var adoption = version.Content as Adoption;
        var kind =
            version.Proposed ? ChangeKind.Proposed
            : version.Announced is not null ? ChangeKind.Announced
            : version.Content switch
            {
                Adoption => ChangeKind.Adopted,
                NotEstablished => ChangeKind.NotEstablished,
                NotRegulated => ChangeKind.NotRegulated,
                _ => ChangeKind.Stated,
            };
        yield return new Change(
            rule,
            kind,
            version.From ?? version.Announced,
            version.InForceBy,
            adoption?.Rule,
            adoption?.AsOf,
            adoption?.Exceptions.Length ?? 0,
            version
        );
        if (version.Until is { } until && rule.Versions.All(other => other.From?.Text != until.Text))
            yield return new Change(rule, ChangeKind.Ended, until, null, null, null, 0, version);
    }
}
