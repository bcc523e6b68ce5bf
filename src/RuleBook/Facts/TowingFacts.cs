using System.Collections.Immutable;
using Fractions;
using RuleBook.Figures;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Facts;

/// <summary>What a job makes known of the trailer for the rules on what may be towed.</summary>
internal static class TowingFacts
{
    /// <summary>Whether the towing vehicle's maker gives a towing mass.</summary>
    private const string MakerGives = KnownWords.MakerGivesTowingMass;

    /// <summary>Adds the trailer's ratings and its mass as a share of the unladen mass of the towing vehicle.</summary>
    public static void Add(Dictionary<string, Derived> measures, Job job)
    {
        if (job.Plan.Trailer is not { } trailer)
            return;
        measures[KnownWords.TrailerGtm] = Rated(trailer.Limits.GtmKg, "GTM");
        measures[KnownWords.TrailerAtm] = Rated(trailer.Limits.AtmKg, "ATM");
        measures[KnownWords.TrailerShareOfUnladen] =
            Budgets.Unladen(job).TotalKg is { IsPositive: true } unladen && measures[KnownWords.TrailerMass].Value.Exact is { } alone
                ? new Derived(
                    Interval.Of(alone / unladen * new Fraction(100)),
                    $"{Numbers.Show(alone)} kg over an unladen mass of {Numbers.Show(unladen)} kg"
                )
                : new Derived(Interval.Anything, "the mass of the trailer or the unladen mass of the vehicle is not known");
    }

    private static Derived Rated(Fraction? kg, string name) =>
        kg is { } rating
            ? new Derived(Interval.Of(rating), $"{Numbers.Show(rating)} kg (stated)")
            : new Derived(Interval.Anything, $"a trailer is given, its {name} is not");

    /// <summary>A towing mass that is stated is one that the maker gives; without one the job has to say that there is none.</summary>
    public static ImmutableDictionary<string, string> Known(Job job, ImmutableDictionary<string, string> words)
    {
        if (words.ContainsKey(MakerGives) || job.Plan.Trailer is not { } trailer)
            return words;
        var ratings = job.Plan.Ratings.Overlaid(job.Plan.Rerated);
        var given = trailer.Limits.Braked is false ? ratings.UnbrakedTowKg : ratings.BrakedTowKg;
        return given is null ? words : words.SetItem(MakerGives, "yes");
    }
}
