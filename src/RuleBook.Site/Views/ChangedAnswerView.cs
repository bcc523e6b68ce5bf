using RuleBook.Answers;
using RuleBook.Site.Templating;
using RuleBook.Tables;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>A pathway, or from which to which, with the class that marks it.</summary>
internal sealed record OutcomeView(string Mark, string Words)
{
    public static OutcomeView Of(Outcome outcome) =>
        outcome.Decided
            ? new(Wording.Of(outcome.Best), Phrases.Outcome(outcome))
            : new("not-established", $"undecided: {Phrases.Outcome(outcome)}");
}

/// <summary>A change of an answer as an entry.</summary>
internal sealed record ChangedAnswerView(
    string Days,
    string Vehicles,
    OutcomeView Before,
    OutcomeView After,
    string Smallest,
    string Furthest,
    string Rule,
    string? Url,
    string? Line,
    string Job
)
{
    /// <summary>The markup around the texts, in bytes.</summary>
    private const long Markup = 700;

    /// <summary>Bytes that the entry takes of a page, about.</summary>
    public long Size => Markup + new[] { Days, Vehicles, Smallest, Furthest, Rule, Url ?? "", Line ?? "", Job }.Sum(EscapingContext.Size);

    public static ChangedAnswerView Of(SiteBook site, ChangedAnswer answer)
    {
        var rule = site.Book.Rule(answer.Rule);
        return new ChangedAnswerView(
            SiteBook.Heading(answer.Days),
            answer.Vehicles,
            OutcomeView.Of(answer.Before),
            OutcomeView.Of(answer.After),
            answer.Smallest,
            answer.Furthest ?? "",
            rule?.Title ?? answer.Rule,
            rule is null ? null : Links.Rule(rule),
            answer.Line is { } line && site.Input.Files.Any(file => file.Path == line.File) ? Links.Line(line) : null,
            answer.Job.TrimEnd('\n')
        );
    }
}

/// <summary>A change beside the answers as an entry.</summary>
internal sealed record OtherChangeView(string Place, string About, string? Url, string Text)
{
    /// <summary>Bytes that the entry takes of a page, about.</summary>
    public long Size => 100 + new[] { Place, About, Url ?? "", Text }.Sum(EscapingContext.Size);

    /// <summary>What has slashes is a rule or a source, of this or the earlier edition; other words are the place or a scheme.</summary>
    public static OtherChangeView Of(SiteBook site, OtherChange other)
    {
        if (site.Book.Rule(other.About) is { } rule)
            return new OtherChangeView(other.Place, rule.Title, Links.Rule(rule), other.Text);
        var page = site.Book.Jurisdiction(other.Jurisdiction) is { } place ? Links.Jurisdiction(place.Id) : null;
        var slashes = other.About.Contains('/', StringComparison.Ordinal);
        var url =
            slashes && site.Book.Source(other.Jurisdiction, other.About) is { } source ? Links.Source(source)
            : page is null || slashes || other.About == other.Jurisdiction ? page
            : $"{page}#certification";
        return new OtherChangeView(other.Place, other.About, url, other.Text);
    }
}
