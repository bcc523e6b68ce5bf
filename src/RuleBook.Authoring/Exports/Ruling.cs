using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Exports;

/// <summary>The rules of modification of a place over days on which the same versions are in force.</summary>
/// <param name="Place">By which vehicles are joined to it.</param>
/// <param name="First">The first of the days.</param>
/// <param name="Last">The last of them.</param>
/// <param name="Table">The decision table.</param>
internal sealed record Ruling(string Place, DateOnly First, DateOnly Last, DecisionTable Table)
{
    private static readonly DateOnly Earliest = new(1900, 1, 1);
    private static readonly DateOnly Latest = new(2999, 12, 31);

    /// <summary>Of a place on a day, with all days around it that have the same table.</summary>
    public static Ruling On(Book book, Jurisdiction place, DateOnly day)
    {
        var tables = TableBook.Of(book);
        var (first, last) = tables.Span(place, day);
        return new Ruling(place.Id, first ?? Earliest, last ?? Latest, tables.Table(place, JobDates.On(day)));
    }

    /// <summary>What judges a job with these days, which need not be the same; it holds for every day.</summary>
    public static Ruling Of(Book book, Jurisdiction place, JobDates dates) =>
        new(place.Id, Earliest, Latest, TableBook.Of(book).Table(place, dates));
}
