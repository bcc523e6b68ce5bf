using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Site.Limits;

namespace RuleBook.Site;

/// <summary>The input with what several pages need of it.</summary>
internal sealed class SiteBook
{
    public SiteBook(SiteInput input)
    {
        Input = input;
        ChangeDays = Limits.ChangeDays.Of(Book.Jurisdictions);
        Topics = [.. Words.Topics.Values.OrderBy(topic => topic.Mark)];
        Places = [.. Book.Jurisdictions.OrderBy(place => place.Within is not null).ThenBy(place => place.Id, StringComparer.Ordinal)];
        Lines = [.. Places.SelectMany(place => LimitStatements.Of(Book, place, Day))];
        Shown = [.. Lines.Select(line => (line.Rule.Topic, line.Measure))];
    }

    public SiteInput Input { get; }

    public Book Book => Input.Book;

    public DateOnly Day => Input.Day;

    public Vocabulary Words => Input.Book.Vocabulary;

    public ImmutableArray<DateOnly> ChangeDays { get; }

    /// <summary>In the order in which the vocabulary has them.</summary>
    public ImmutableArray<Topic> Topics { get; }

    /// <summary>The nations first, then their states.</summary>
    public ImmutableArray<Jurisdiction> Places { get; }

    /// <summary>Everything said on the site's day.</summary>
    public ImmutableArray<LimitStatement> Lines { get; }

    /// <summary>The topics and measures on which something is said on the site's day.</summary>
    public ImmutableHashSet<(string Topic, string Measure)> Shown { get; }

    public string ConditionTitle(string name) => Words.Conditions.TryGetValue(name, out var term) ? term.Title : name;

    /// <summary>Its title, with the unit where two measures share one.</summary>
    public string MeasureTitle(string name) =>
        !Words.Measures.TryGetValue(name, out var measure) ? name
        : Words.Measures.Values.Any(other => other.Name != name && other.Title == measure.Title)
            ? $"{measure.Title} ({measure.Unit.Symbol})"
        : measure.Title;

    /// <summary>A title as a heading: its first letter is a capital.</summary>
    public static string Heading(string title) => title.Length == 0 ? title : char.ToUpperInvariant(title[0]) + title[1..];

    public string PlaceName(string id) => Book.Jurisdiction(id)?.Name ?? id;
}
