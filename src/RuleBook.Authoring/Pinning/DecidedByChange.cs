using System.Collections.Immutable;
using RuleBook.Authoring.Walk;
using RuleBook.Law;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book in which a jurisdiction no longer says which of a job's days decides.</summary>
internal sealed record DecidedByChange(Book Book, Jurisdiction Place, string What, string Becomes)
    : BookEdit(Book, Place.Id, Place.Mark, What, Becomes)
{
    public override IEnumerable<string> Places => [Place.Id];

    public override string Topic => "";

    public override bool NoticedByAny(IEnumerable<PreparedCase> cases) => cases.Any(one => one.FailsOn(Book));

    /// <summary>It shows wherever a job's days lie on both sides of a first day.</summary>
    public override Unpinned? Effect(Book before) =>
        Place.Rules.SelectMany(rule => rule.Versions).Select(version => version.From).FirstOrDefault(from => from is not null) is { } from
            ? new Unpinned(
                Subject,
                Mark,
                What,
                Becomes,
                new Witness(Place.Id, from.Earliest, ImmutableDictionary<string, string>.Empty, [], []),
                "one of the job's days decides",
                "any of the job's days may decide"
            )
            : null;

    /// <summary>The changes of the jurisdictions chosen.</summary>
    public static IEnumerable<DecidedByChange> Of(Book book, Func<Jurisdiction, bool> chosen) =>
        book
            .Jurisdictions.Select((place, at) => (place, at))
            .Where(pair => pair.place.DecidedBy is not null && chosen(pair.place))
            .Select(pair => new DecidedByChange(
                book with
                {
                    Jurisdictions = book.Jurisdictions.SetItem(pair.at, pair.place with { DecidedBy = null }),
                },
                pair.place,
                $"the day of the {pair.place.DecidedBy} decides",
                "left out"
            ));
}
