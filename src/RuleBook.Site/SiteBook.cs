using System.Collections.Immutable;
using RuleBook.Rules;
using RuleBook.Site.Limits;

namespace RuleBook.Site;

/// <summary>The input with what several pages need of it.</summary>
internal sealed record SiteBook(SiteInput Input)
{
    private readonly Lazy<ImmutableArray<LimitLine>> lines = new(() =>
        [.. Input.Book.Jurisdictions.SelectMany(place => LimitLines.Of(Input.Book, new VehicleKinds(Input.Book.Vocabulary), place, Input.Day))]);

    public Book Book => Input.Book;

    public DateOnly Day => Input.Day;

    public Vocabulary Words => Input.Book.Vocabulary;

    public VehicleKinds Kinds { get; } = new(Input.Book.Vocabulary);

    public ImmutableArray<DateOnly> ChangeDays { get; } = Limits.ChangeDays.Of(Input.Book);

    /// <summary>In the order in which the vocabulary has them.</summary>
    public ImmutableArray<Topic> Topics { get; } = [.. Input.Book.Vocabulary.Topics.Values.OrderBy(topic => topic.Mark)];

    /// <summary>The nations first, then their states.</summary>
    public ImmutableArray<Jurisdiction> Places { get; } =
        [.. Input.Book.Jurisdictions.OrderBy(place => place.Within is not null).ThenBy(place => place.Id, StringComparer.Ordinal)];

    /// <summary>The topics and measures on which something is said on the site's day.</summary>
    public ImmutableHashSet<(string Topic, string Measure)> Shown => shown.Value;

    /// <summary>Everything said on the site's day.</summary>
    public ImmutableArray<LimitLine> Lines => lines.Value;

    public string ConditionTitle(string name) => Words.Conditions.TryGetValue(name, out var term) ? term.Title : name;

    public string MeasureTitle(string name) => Words.Measures.TryGetValue(name, out var measure) ? measure.Title : name;

    /// <summary>A title as a heading: its first letter is a capital.</summary>
    public static string Heading(string title) => title.Length == 0 ? title : char.ToUpperInvariant(title[0]) + title[1..];

    public string PlaceName(string id) => Book.Jurisdiction(id)?.Name ?? id;
}
