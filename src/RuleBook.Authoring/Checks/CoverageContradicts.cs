using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>Coverage that the topic's file does not bear out.</summary>
internal static class CoverageContradicts
{
    internal static readonly CheckInfo Info = new(
        "coverage-contradicts",
        "coverage says something else than the files",
        "A reader is told that something is known or not known, and it is the other way round.",
        "correct the state, or the files",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from place in book.Book.Jurisdictions
        from coverage in place.Coverage
        let wrong = Wrong(coverage.State, place, coverage.Topic)
        where wrong is not null
        select Info.At(book.Value(coverage.Mark, "state"), wrong);

    private static string? Wrong(string state, Jurisdiction place, string topic)
    {
        var versions = place.Rules.Where(rule => rule.Topic == topic).SelectMany(rule => rule.Versions).ToArray();
        var schemes = topic == "certification" ? place.Schemes.SelectMany(scheme => scheme.Versions).ToArray() : [];
        var known = versions.Any(version => version.Content is not NotEstablished);
        return state switch
        {
            "none" when known || schemes.Any(SaysSomething) => $"coverage of '{topic}' is none, yet its file says something",
            "complete" or "partial" when !known && schemes.Length == 0 && versions.All(version => version.Decides) =>
                $"coverage of '{topic}' is {state}, yet nothing is stated in its file",
            "complete" when versions.Any(IsOpen) || schemes.Any(version => version.NotEstablished.Length > 0) =>
                $"coverage of '{topic}' is complete, yet something in its file is not established",
            _ => null,
        };
    }

    /// <summary>A scheme of which only the open questions are written down says nothing yet.</summary>
    private static bool SaysSomething(SchemeVersion version) =>
        version
            is not {
                Certifier: null,
                AppointedBy: null,
                Decides: null,
                AcceptsAppointedIn: null,
                Issued.IsEmpty: true,
                Fees.IsEmpty: true
            };

    private static bool IsOpen(RuleVersion version) =>
        version.Content switch
        {
            NotEstablished or Stated { Beyond: null } => true,
            Stated stated => stated.Tiers.Any(tier => tier.Limits.Any(limit => limit.Kind == LimitKind.NotEstablished)),
            Adoption adoption => adoption.Exceptions.Any(change => change.Limits.Any(limit => limit.Kind == LimitKind.NotEstablished)),
            _ => false,
        };
}
