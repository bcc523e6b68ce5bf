using RuleBook.Site.Templating;
using RuleBook.Telling;

namespace RuleBook.Site.Pages;

/// <summary>What would settle what is undecided: the work list for whoever has the documents.</summary>
internal static class OpenPage
{
    public static Page Of(SiteBook site)
    {
        var rows = site.Input.Open.Select(
            (open, i) =>
                new OpenRow(
                    i + 1,
                    open.Place.Name,
                    Links.Jurisdiction(open.Place.Id),
                    open.Document ?? "No document is named: somebody has to ask",
                    open.Ask,
                    open.Answers,
                    open.Alone,
                    [.. open.LookFor.Select(Phrases.Sentence)],
                    [.. open.Edit.Select(mark => new Link($"{mark.File}:{mark.Line}", Links.Line(mark)))]
                )
        );
        var body = Templates.Render("open", ("root", ""), ("day", Phrases.Day(site.Day)), ("rows", rows.ToArray()));
        return new Page("open.html", "What would settle it", "data", body, []);
    }
}

/// <summary>A document that nobody has read.</summary>
internal sealed record OpenRow(
    int Rank,
    string Place,
    string PlaceUrl,
    string Document,
    string Ask,
    int Answers,
    int Alone,
    string[] Settles,
    Link[] Edit
);
