using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law;

/// <summary>A state of the book that was given a name, so that it can be cited and found again.</summary>
/// <param name="Name">Year, month and number within the month: <c>2026.11.1</c>.</param>
/// <param name="Day">The day on which it was named.</param>
/// <param name="Digest">The digest of the book (see <see cref="Book.Digest"/>).</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Edition(string Name, DateOnly Day, string Digest, Mark Mark)
{
    /// <summary>What it brings against the edition before it.</summary>
    internal ImmutableArray<News> News { get; init; } = [];

    private (int Year, int Month, int Number) Order =>
        Name.Split('.').Select(part => int.TryParse(part, out var number) ? number : 0).ToArray() is [var year, var month, var number]
            ? (year, month, number)
            : default;

    /// <summary>Whether it may follow another in the list: neither its day nor its name is an earlier one.</summary>
    /// <param name="before">The edition before it.</param>
    internal bool Follows(Edition before) => Day >= before.Day && Order.CompareTo(before.Order) > 0;
}

/// <summary>One thing that an edition brings.</summary>
/// <param name="Kind">What kind of consequence it has.</param>
/// <param name="Places">Ids of the jurisdictions that it concerns; empty for all of them.</param>
/// <param name="From">From which day answers differ; null where that is no matter of a day.</param>
/// <param name="Text">What changes for whom, as a sentence.</param>
internal sealed record News(NewsKind Kind, ImmutableArray<string> Places, DateOnly? From, string Text);

/// <summary>Consequences of an edition, in the order in which they are told.</summary>
internal enum NewsKind
{
    /// <summary>A past answer was wrong.</summary>
    Corrected,

    /// <summary>The law changed, or more of it is known: answers differ.</summary>
    Law,

    /// <summary>The same answers rest on better evidence.</summary>
    Evidence,

    /// <summary>The tool tells or takes something that it did not.</summary>
    Tool,
}
