using System.Collections.Immutable;
using System.Globalization;

namespace RuleBook.Site.Views;

/// <summary>What this edition changes: as much of it as a page holds, a share of each jurisdiction and topic.</summary>
internal sealed record EditionView(
    string Earlier,
    string Digest,
    string Sum,
    PlaceChangesView[] Places,
    OtherChangeView[] Others,
    int OthersLeft
)
{
    /// <summary>Bytes of the page that the answers may take, and what stands beside them.</summary>
    private const long MostForAnswers = 4_000;
    private const long MostForOthers = 4_000;

    public static EditionView? Of(SiteBook site, EditionChanges? edition)
    {
        if (edition is null)
            return null;
        ChangedAnswer[][] groups =
        [
            .. edition.Answers.GroupBy(answer => (answer.Jurisdiction, answer.Topic)).Select(group => group.ToArray()),
        ];
        ChangedAnswerView[][] told = [.. groups.Select(group => group.Select(answer => ChangedAnswerView.Of(site, answer)).ToArray())];
        var shown = Fitting([.. told.Select(group => group.Select(answer => answer.Size).ToArray())], MostForAnswers);
        OtherChangeView[] others = [.. edition.Others.Select(other => OtherChangeView.Of(site, other))];
        var fitting = Fitting(
            [
                [.. others.Select(other => other.Size)],
            ],
            MostForOthers
        )[0];
        return new EditionView(
            edition.Earlier,
            edition.Digest,
            Summary(edition),
            [
                .. groups
                    .Index()
                    .GroupBy(group => group.Item[0].Jurisdiction)
                    .Select(place => new PlaceChangesView(
                        site.PlaceName(place.Key),
                        site.Book.Jurisdiction(place.Key) is { } known ? Links.Jurisdiction(known.Id) : null,
                        [
                            .. place.Select(group => new TopicChangesView(
                                SiteBook.Heading(group.Item[0].Topic),
                                told[group.Index][..shown[group.Index]],
                                group.Item.Length - shown[group.Index]
                            )),
                        ]
                    )),
            ],
            others[..fitting],
            others.Length - fitting
        );
    }

    /// <summary>How many of each group are shown: all the first ones before any second one, until the bytes are used up.</summary>
    private static ImmutableArray<int> Fitting(long[][] sizes, long most)
    {
        var shown = new int[sizes.Length];
        for (var rank = 0; rank < sizes.Select(group => group.Length).DefaultIfEmpty().Max(); rank++)
        for (var i = 0; i < sizes.Length; i++)
            if (rank < sizes[i].Length && (most -= sizes[i][rank]) >= 0)
                shown[i]++;
        return [.. shown];
    }

    private static string Summary(EditionChanges edition)
    {
        var answers = edition.Answers.Length switch
        {
            0 => "No answer changes",
            1 => "One answer changes",
            var count => string.Create(CultureInfo.InvariantCulture, $"{count} answers change"),
        };
        return edition.Others.Length switch
        {
            0 => $"{answers}.",
            1 => $"{answers}; one thing beside the answers does.",
            var count => string.Create(CultureInfo.InvariantCulture, $"{answers}; {count} things beside the answers do."),
        };
    }
}

/// <summary>The changes of a jurisdiction; no address where this edition has it no longer.</summary>
internal sealed record PlaceChangesView(string Name, string? Url, TopicChangesView[] Topics);

/// <summary>The changes of one of its topics, and how many are left out.</summary>
internal sealed record TopicChangesView(string Title, ChangedAnswerView[] Answers, int Left);
