using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>
/// A tier that is a table by classes of one measure (<c>by: gvm</c>, <c>classes:</c>) is read as a tier for each class, named by it and
/// open within its range. The classes follow on one another without a gap and without an overlap, as the law's own tables do.
/// </summary>
internal static class ClassTable
{
    /// <summary>The tiers of the classes.</summary>
    /// <param name="shared">What holds for every class: the pathway, conditions, codes, limits that all have.</param>
    /// <param name="by">The measure that parts the classes.</param>
    /// <param name="classes">Each with its range.</param>
    /// <param name="problems">Receives where they do not follow on one another.</param>
    public static ImmutableArray<Tier> Tiers(Tier shared, Measure by, ImmutableArray<ClassRow> classes, List<Problem> problems)
    {
        foreach (var (one, next) in classes.Zip(classes.Skip(1)))
            if (Fault(one, next) is { } fault)
                problems.Add(fault);
        return [.. classes.Select(row => Of(shared, by, row))];
    }

    private static Tier Of(Tier shared, Measure by, ClassRow row) =>
        shared with
        {
            Name = row.Name,
            When = new Predicate([.. shared.When.Tests, new FactTest(by.Name, [], row.Range, row.Mark)]),
            Limits = [.. shared.Limits.Where(limit => row.Limits.All(own => own.Measure != limit.Measure)), .. row.Limits],
            Sources = [.. shared.Sources, .. row.Sources],
            Note = row.Note ?? shared.Note,
            Mark = row.Mark,
        };

    private static Problem? Fault(ClassRow one, ClassRow next)
    {
        if (
            one.Range.Upper is not { } end
            || next.Range.Lower is not { } start
            || start.Value < end.Value
            || (start.Value == end.Value && start.Closed && end.Closed)
        )
            return Problem.Error(
                "classes-overlap",
                next.Mark,
                $"'{next.Name}' begins where '{one.Name}' has not ended",
                "write the classes in rising order, each from where the one before it ends"
            );
        return start.Value == end.Value && (start.Closed || end.Closed)
            ? null
            : Problem.Error(
                "classes-gap",
                next.Mark,
                $"between '{one.Name}' and '{next.Name}' there is a gap, in which no class holds",
                "begin each class where the one before it ends (under 4501 lb, at-least 4501 lb); where the law itself leaves a "
                    + "gap, write each class as a tier"
            );
    }
}

/// <summary>One class of such a table.</summary>
/// <param name="Name">The name of its tier.</param>
/// <param name="Range">Of the measure that parts the classes.</param>
/// <param name="Limits">Its own.</param>
/// <param name="Sources">Beside those of the table.</param>
/// <param name="Note">Instead of that of the table.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record ClassRow(
    string Name,
    Bounds Range,
    ImmutableArray<Limit> Limits,
    ImmutableArray<Citation> Sources,
    string? Note,
    Mark Mark
);
