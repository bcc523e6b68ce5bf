using System.Collections.Immutable;
using RuleBook.Figures;

namespace RuleBook.Answers;

/// <summary>The ratings that loads are held against, as nouns.</summary>
internal static class LoadSubjects
{
    private static readonly ImmutableArray<string> OfVehicle = ["gvm", "front-axle", "rear-axle"];

    /// <summary>The subjects that a lighter trailer relieves.</summary>
    internal static ImmutableArray<string> OfTrailer { get; } = ["gcm", "braked-tow", "unbraked-tow", "atm", "gtm", "towbar", "coupling"];

    /// <summary>The subjects that a smaller ball load relieves.</summary>
    internal static ImmutableArray<string> OfBall { get; } =
    ["ball", "towbar-ball", "coupling-ball", "gvm", "rear-axle", "rear-axle-tyres"];

    /// <summary>The subjects against which the heaviest state known could not be held.</summary>
    internal static ImmutableArray<string> Unjudged(MassAnswer masses)
    {
        var checks = (masses.Loaded ?? masses.Unladen)
            .Left.Concat(masses.Towing?.Planned?.Checks ?? [])
            .Concat(masses.Towing?.Weighed?.Checks ?? [])
            .ToArray();
        var asked = masses.Towing is null ? OfVehicle : [.. OfVehicle, "gcm", "ball"];
        return [.. asked.Where(subject => checks.All(check => check.Subject != subject))];
    }

    /// <summary>The noun of a subject; the subject itself where it is not known.</summary>
    public static string Noun(string subject) =>
        subject switch
        {
            "gvm" => "GVM",
            "gcm" => "GCM",
            "front-axle" => "the front axle rating",
            "rear-axle" => "the rear axle rating",
            "front-axle-tyres" => "what the front tyres carry",
            "rear-axle-tyres" => "what the rear tyres carry",
            "atm" => "the trailer's ATM",
            "gtm" => "the trailer's GTM",
            "braked-tow" => "the braked towing mass",
            "unbraked-tow" => "the unbraked towing mass",
            "towbar" => "the towbar's rating",
            "coupling" => "the coupling's rating",
            "ball" => "the ball load limit",
            "towbar-ball" => "the towbar's ball load",
            "coupling-ball" => "the coupling's ball load",
            "advised-gvm" => "the GVM that the maker advises at this ball load",
            _ => subject,
        };
}
