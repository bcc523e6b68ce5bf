using System.Collections.Immutable;
using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;

namespace RuleBook.Figures;

/// <summary>A re-rating that takes a vehicle out of its category.</summary>
/// <param name="Stated">The category on the plate.</param>
/// <param name="Judged">The categories that the new GVM leads to; more than one where the seats would tell and are not stated.</param>
/// <param name="GvmKg">The GVM asked for, kg.</param>
public sealed record CategoryChange(string Stated, ImmutableArray<CategoryBounds> Judged, Fraction GvmKg);

/// <summary>Of which category a vehicle is once the modification is made.</summary>
internal static class VehicleCategory
{
    public const string Fact = KnownWords.Category;

    /// <summary>The change that a re-rating brings; null where the vehicle stays in its category or it is not known.</summary>
    public static CategoryChange? ChangeOf(Job job)
    {
        var all = job.Plan.Reference.Categories;
        if (
            job.Plan.Rerated?.GvmKg is not { } gvm
            || job.Words.GetValueOrDefault(Fact) is not { } stated
            || all.FirstOrDefault(each => each.Category == stated) is not { Family: { } family } own
            || own.HasGvm(gvm)
        )
            return null;
        ImmutableArray<CategoryBounds> judged =
        [
            .. all.Where(each => each.Family == family && each.HasGvm(gvm) && (job.Plan.Seats is not { } seats || each.HasSeats(seats))),
        ];
        return judged.IsEmpty ? null : new CategoryChange(stated, judged, gvm);
    }

    /// <summary>The words of a job with the category that will be; none where it cannot be told.</summary>
    public static ImmutableDictionary<string, string> Words(Job job) =>
        ChangeOf(job) switch
        {
            null => job.Words,
            { Judged: [var one] } => job.Words.SetItem(Fact, one.Category),
            _ => job.Words.Remove(Fact),
        };
}
