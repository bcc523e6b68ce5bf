using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Authoring.Walk;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book with one scheme of certification changed.</summary>
internal sealed record SchemeChange(Book Book, Jurisdiction Place, Scheme Old, Scheme Now, Mark Mark, string What, string Becomes)
    : BookEdit(Book, $"{Place.Id}/{Certification}/{Old.Name}", Mark, What, Becomes)
{
    /// <summary>The topic of schemes.</summary>
    public const string Certification = "certification";

    public override IEnumerable<string> Places =>
        [Place.Id, .. Book.Jurisdictions.Where(place => place.Within == Place.Id).Select(place => place.Id)];

    public override string Topic => Certification;

    public override bool NoticedByAny(IEnumerable<PreparedCase> cases) => cases.Any(one => one.FailsOnCertification(Book));

    public override Unpinned? Effect(Book before) =>
        Days(Old)
            .Concat(Days(Now))
            .Distinct()
            .Order()
            .Select(day => (Day: day, Before: Words(Place.Schemes, day), After: Words(Place.Schemes.Replace(Old, Now), day)))
            .Where(each => each.Before != each.After || !ReferenceEquals(Old.For, Now.For))
            .Select(each => new Unpinned(
                Subject,
                Mark,
                What,
                Becomes,
                new Witness(Place.Id, each.Day, ImmutableDictionary<string, string>.Empty, [], []),
                each.Before,
                each.After
            ))
            .FirstOrDefault();

    /// <summary>Every change of every scheme of the jurisdictions chosen.</summary>
    public static IEnumerable<SchemeChange> Of(Book book, Func<Jurisdiction, bool> chosen)
    {
        var variants = new SchemeVariants(book.Vocabulary);
        return book.Jurisdictions.SelectMany(
            (place, at) =>
                place.Schemes.SelectMany(
                    (scheme, i) =>
                        (chosen(place) ? variants.Of(scheme) : []).Select(variant => new SchemeChange(
                            book with
                            {
                                Jurisdictions = book.Jurisdictions.SetItem(
                                    at,
                                    place with
                                    {
                                        Schemes = place.Schemes.SetItem(i, variant.Value),
                                    }
                                ),
                            },
                            place,
                            scheme,
                            variant.Value,
                            variant.Mark,
                            variant.What,
                            variant.To
                        ))
                )
        );
    }

    private static IEnumerable<DateOnly> Days(Scheme scheme) =>
        scheme
            .Versions.SelectMany(version => new[] { version.From, version.InForceBy, version.Until }.OfType<PartialDate>())
            .SelectMany(date => (DateOnly[])[date.Earliest.AddDays(-1), date.Earliest, date.Latest, date.Latest.AddDays(1)]);

    /// <summary>What a job is told on a day, by pathway: of the first scheme that serves it, where several might of each.</summary>
    private static string Words(ImmutableArray<Scheme> schemes, DateOnly day)
    {
        var serving = schemes
            .Select(scheme => (scheme, version: Certifying.At(scheme, day)))
            .Where(each => each.version is not null)
            .ToArray();
        var first = serving.TakeWhile(each => !each.scheme.For.Tests.IsEmpty).Count();
        return serving.Length == 0 ? "no scheme" : string.Join(" | ", serving.Take(first + 1).Select(each => Words(each.version!)));
    }

    private static string Words(SchemeVersion version)
    {
        var papers = version
            .Issued.OrderBy(issued => issued.Pathway)
            .Select(issued => $"{Wording.Of(issued.Pathway)}: {string.Join(", ", issued.Papers)}");
        var first = version
            .Steps.Where(step => step.BeforeWork)
            .SelectMany(step => step.Pathways)
            .Order()
            .GroupBy(Wording.Of)
            .Select(steps => $"{steps.Count()} on {steps.Key}");
        var accepted = version.AcceptsAppointedIn is { } others ? string.Join(", ", others) : "not established";
        return $"{version.Certifier ?? "no certifier"}; {string.Join("; ", papers)}; steps before the work: "
            + $"{string.Join(", ", first)}; accepts those of: {accepted}";
    }
}
