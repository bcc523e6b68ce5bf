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

    public override Unpinned? Effect(Book before) => Effect(this, Place.Id, Place.Rules);

    /// <summary>It shows wherever a job's days lie on both sides of a first day.</summary>
    public static Unpinned? Effect(BookEdit edit, string place, IEnumerable<Rule> rules) =>
        rules.SelectMany(rule => rule.Versions).Select(version => version.From).FirstOrDefault(from => from is not null) is { } from
            ? new Unpinned(
                edit.Subject,
                edit.Mark,
                edit.What,
                edit.Becomes,
                new Witness(place, from.Earliest, ImmutableDictionary<string, string>.Empty, [], []),
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
