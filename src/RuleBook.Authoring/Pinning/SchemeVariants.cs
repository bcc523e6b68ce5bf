using RuleBook.Answers;
using RuleBook.Law;

namespace RuleBook.Authoring.Pinning;

/// <summary>A scheme of certification changed in one place.</summary>
internal sealed class SchemeVariants(Vocabulary vocabulary)
{
    private readonly BoundVariants bounds = new(vocabulary);

    public IEnumerable<Variant<Scheme>> Of(Scheme scheme) =>
        [
            .. bounds.Of(scheme.For).Select(variant => variant.In(scope => scheme with { For = scope })),
            .. scheme.Versions.OfEach(Of).Select(variant => variant.In(versions => scheme with { Versions = versions })),
        ];

    private static IEnumerable<Variant<SchemeVersion>> Of(SchemeVersion version) =>
        [
            .. version.From is { } from
                ? DateVariants.Of(from).Select(moved => Changed(version with { From = moved.Date }, $"from {from.Text}", moved.To))
                : [],
            .. version.InForceBy is { } by
                ? DateVariants
                    .OfLast(by)
                    .Select(moved => Changed(version with { InForceBy = moved.Date }, $"in-force-by {by.Text}", moved.To))
                : [],
            .. version.Until is { } until
                ? DateVariants.Of(until).Select(moved => Changed(version with { Until = moved.Date }, $"until {until.Text}", moved.To))
                : [],
            .. version.Certifier is { } certifier
                ? [Changed(version with { Certifier = null }, $"certifier {certifier}", "left out")]
                : Array.Empty<Variant<SchemeVersion>>(),
            .. version
                .Issued.OfEach(issued => Papers(issued, version))
                .Select(variant => variant.In(issued => version with { Issued = issued })),
            .. version.Steps.OfEach(step => Before(step, version)).Select(variant => variant.In(steps => version with { Steps = steps })),
            .. (version.AcceptsAppointedIn ?? [])
                .Without(_ => version.Mark, place => $"accepts certifiers appointed in {place}")
                .Select(variant => variant.In(places => version with { AcceptsAppointedIn = places })),
        ];

    private static IEnumerable<Variant<Issued>> Papers(Issued issued, SchemeVersion version) =>
        issued
            .Papers.Without(_ => version.Mark, paper => $"{paper} issued on {Wording.Of(issued.Pathway)}")
            .Select(variant => variant.In(papers => issued with { Papers = papers }));

    private static IEnumerable<Variant<Step>> Before(Step step, SchemeVersion version) =>
        [
            new(
                step with
                {
                    BeforeWork = !step.BeforeWork,
                },
                version.Mark,
                $"{(step.BeforeWork ? "before" : "after")} the work: {step.Text}",
                step.BeforeWork ? "after it" : "before it"
            ),
        ];

    private static Variant<SchemeVersion> Changed(SchemeVersion version, string what, string to) => new(version, version.Mark, what, to);
}
