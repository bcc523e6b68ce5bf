using Fractions;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>
/// What a job makes known of the mass ratings: as they will apply, how far they grow, and what the category says of a GVM.
/// </summary>
internal static class RatingFacts
{
    private const string Gvm = KnownWords.Gvm;

    /// <summary>Adds the ratings, their increases, and the GVM over the sum of the axle ratings.</summary>
    public static void Add(Dictionary<string, Derived> measures, Job job, Vocabulary vocabulary)
    {
        AddRatings(measures, job);
        AddOtherRatings(measures, job);
        AddCategoryGvm(measures, job, vocabulary);
        AddAxleSum(measures, job);
    }

    private static void AddRatings(Dictionary<string, Derived> measures, Job job)
    {
        foreach (var rating in KnownWords.Ratings)
        {
            var stated = job.Measures.GetValueOrDefault(rating);
            var asked = job.Measures.GetValueOrDefault($"new-{rating}");
            if ((asked ?? stated) is { } after)
                measures[$"new-{rating}"] = new Derived(
                    Interval.Of(after.Base),
                    $"{after} ({(asked is null ? "unchanged" : "asked for")})"
                );
            if (asked is null)
                continue;
            measures[$"{rating}-increase"] = stated is null
                ? new Derived(Interval.Anything, "the rating before is not stated")
                : new Derived(Interval.Of(asked.Base - stated.Base), $"{asked} - {stated} = {Numbers.Show(asked.Base - stated.Base)} kg");
        }
    }

    /// <summary>Ratings that a job states beside those.</summary>
    private static void AddOtherRatings(Dictionary<string, Derived> measures, Job job)
    {
        if (job.Plan.Rerated is not { } rerated)
            return;
        var stated = job.Plan.Ratings;
        Add(KnownWords.FrontAxle, rerated.FrontAxleKg, stated.FrontAxleKg);
        Add(KnownWords.RearAxle, rerated.RearAxleKg, stated.RearAxleKg);
        Add(KnownWords.UnbrakedTow, rerated.UnbrakedTowKg, stated.UnbrakedTowKg);
        Add(KnownWords.Ball, rerated.BallKg, stated.BallKg);

        void Add(string rating, Fraction? asked, Fraction? before)
        {
            if ((asked ?? before) is { } applies)
                measures[$"new-{rating}"] = new Derived(
                    Interval.Of(applies),
                    $"{Numbers.Show(applies)} kg ({(asked is null ? "unchanged" : "asked for")})"
                );
            if (asked is not { } after)
                return;
            measures[$"{rating}-increase"] = before is { } was
                ? new Derived(Interval.Of(after - was), $"{Numbers.Show(after)} - {Numbers.Show(was)} = {Numbers.Show(after - was)} kg")
                : new Derived(Interval.Anything, "the rating before is not stated");
        }
    }

    /// <summary>
    /// A GVM that is not stated lies within the category's own bounds. Ratings are whole kilograms, so an open end begins a kilogram
    /// further on.
    /// </summary>
    private static void AddCategoryGvm(Dictionary<string, Derived> measures, Job job, Vocabulary vocabulary)
    {
        if (
            measures.ContainsKey(Gvm)
            || !job.Words.TryGetValue(KnownWords.Category, out var category)
            || !vocabulary.CategoryGvms.TryGetValue(category, out var gvm)
            || (gvm.Assumed && job.Unknown.Contains(Gvm))
        )
            return;
        var why = gvm.Assumed
            ? $"not stated; a vehicle of category {category} is taken to be no heavier"
            : $"not stated; that of category {category}";
        measures[Gvm] = new Derived(new Interval(gvm.Over + Fraction.One, gvm.AtMost), why);
    }

    private static void AddAxleSum(Dictionary<string, Derived> measures, Job job)
    {
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        if (ratings.GvmKg is { } gvm && ratings.FrontAxleKg + ratings.RearAxleKg is { } axles)
            measures[KnownWords.GvmOverAxles] = new Derived(
                Interval.Of(gvm - axles),
                $"{Numbers.Show(gvm)} - {Numbers.Show(axles)} = {Numbers.Show(gvm - axles)} kg"
            );
    }
}
