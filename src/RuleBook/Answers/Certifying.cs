using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Who certifies under the scheme of the state of registration.</summary>
internal static class Certifying
{
    /// <summary>
    /// The scheme in force on the day of certification; its steps are those of the topics on which something is certified.
    /// </summary>
    public static Certification? Of(
        Book book,
        Jurisdiction place,
        Job job,
        FactSet facts,
        Outcome outcome,
        ImmutableArray<Finding> findings
    )
    {
        var day = job.Dates.Certification ?? job.Dates.Latest;
        var national = place.Within is { } nation ? book.Jurisdiction(nation) : null;
        var scopes = TableBook.Of(book).Scopes(place);
        var row = scopes.Place(facts);
        var current = (national?.Schemes ?? [])
            .Where(scheme => !scheme.For.Tests.IsEmpty && scopes.Holds(scheme.For, row) == Truth.Yes)
            .Select(scheme => (owner: national!, scheme, version: At(scheme, day)))
            .Concat(
                place
                    .Schemes.Where(scheme => scopes.Holds(scheme.For, row) != Truth.No)
                    .Select(scheme => (owner: place, scheme, version: At(scheme, day)))
            )
            .FirstOrDefault(each => each.version is not null);
        if (current.version is not { } version)
            return null;
        var certified = findings
            .Where(finding => finding.Outcome.Worst >= Pathway.Certificate && finding.Outcome.Best <= Pathway.Approval)
            .Select(finding => finding.Version.Rule.Topic)
            .ToHashSet();
        var (may, why) = MayCertify(current.owner, version, job.CertifierAppointedIn);
        return new Certification(
            current.scheme.Title,
            version,
            [.. version.Issued.Where(issued => Possible(issued.Pathway, outcome)).SelectMany(issued => issued.Papers).Distinct()],
            [
                .. version
                    .Steps.Where(step => step.Pathways.Any(pathway => Possible(pathway, outcome)))
                    .Where(step => step.Topics.IsEmpty || step.Topics.Any(certified.Contains)),
            ],
            may,
            why,
            Resolver.Cited(book, current.owner.Id, version.Sources)
        );
    }

    /// <summary>The version in force on a day, the latest where several may be; null where none is.</summary>
    public static SchemeVersion? At(Scheme scheme, DateOnly day)
    {
        Timeline.Span[] spans = [.. scheme.Versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return Timeline.At(spans, day) is [.., var last] && last >= 0 ? scheme.Versions[last] : null;
    }

    private static bool Possible(Pathway pathway, Outcome outcome) => outcome.Best <= pathway && pathway <= outcome.Worst;

    private static (Truth? May, string? Why) MayCertify(Jurisdiction place, SchemeVersion version, ImmutableArray<string>? appointedIn)
    {
        if (appointedIn is not { } appointed)
            return (null, null);
        var certifier = version.Certifier ?? "certifier";
        if (appointed.Contains(place.Id))
            return (
                Truth.Yes,
                $"appointed in {place.Name}: certifies as {certifier} with the papers of {place.Name}, wherever the work is done"
            );
        if (version.AcceptsAppointedIn is { } accepted && accepted.Intersect(appointed).Any())
            return (Truth.Yes, $"{place.Name} accepts certifiers appointed in {string.Join(", ", accepted.Intersect(appointed))}");
        var needed = $"not appointed in {place.Name}; {(version.AppointedBy is { } by ? $"appointed there by {by}: " : "")}";
        return version.AcceptsAppointedIn is null
            ? (
                Truth.Unknown,
                $"{needed}whether one appointed elsewhere is accepted is not established: ask {place.Ask.Name}, or take "
                    + $"{One(certifier)} of {place.Name}"
            )
            : (Truth.No, $"{needed}{One(certifier)} of {place.Name} is needed");
    }

    /// <summary>With its article, by how it is said: an engineer, an LVV certifier, a VASS signatory.</summary>
    private static string One(string certifier)
    {
        var spelt = certifier.Length > 1 && char.IsAsciiLetterUpper(certifier[1]);
        var vowel = (spelt ? "AEFHILMNORSX" : "AEIOU").Contains(char.ToUpperInvariant(certifier[0]), StringComparison.Ordinal);
        return $"{(vowel ? "an" : "a")} {certifier}";
    }
}
