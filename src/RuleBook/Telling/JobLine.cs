using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The job in one line, so that a wrong input is seen at once.</summary>
internal static class JobLine
{
    /// <summary><c>W-0131: MC, suspension lift 45 mm, 265/65R17 -> 265/70R17, GVM 3500 -> 3850 kg, trailer 2890 kg</c>.</summary>
    public static string Of(Job job)
    {
        string[] parts =
        [
            .. Vehicle(job),
            .. Measures(job, isLift: true),
            .. Changes(job),
            .. Masses(job),
            .. Measures(job, isLift: false),
        ];
        return $"{job.Name ?? "The job"}: {(parts.Length == 0 ? "a vehicle of which nothing is stated" : string.Join(", ", parts))}";
    }

    private static IEnumerable<string> Vehicle(Job job)
    {
        if ((job.Words.GetValueOrDefault("category") ?? job.Words.GetValueOrDefault("vehicle-kind")) is { } kind)
            yield return kind.Replace('-', ' ');
        if (job.Built is { } built)
            yield return $"built {built.Text}";
    }

    /// <summary>How much it is raised comes first; what else is stated of it last, where the line may end.</summary>
    private static IEnumerable<string> Measures(Job job, bool isLift) =>
        job
            .Measures.Where(each =>
                Stated(each.Key) && !each.Value.Base.IsZero && (each.Key is KnownWords.SuspensionLift or KnownWords.BodyLift) == isLift
            )
            .OrderBy(each => each.Key, StringComparer.Ordinal)
            .Select(each => $"{each.Key.Replace('-', ' ')} {each.Value}");

    private static IEnumerable<string> Changes(Job job)
    {
        foreach (var lift in (string[])[KnownWords.SuspensionLift, KnownWords.BodyLift])
            if (job.Unknown.Contains(lift))
                yield return $"{lift.Replace('-', ' ')} not known";
        if (job.Unknown.Contains(FactSet.TyreGrowth))
            yield return "size of the tyres fitted not known";
        if (job.Plan.Heights.After is not null)
            yield return "heights measured";
        if (job.Plan.FrontSprings is not null || job.Plan.RearSprings is not null)
            yield return "springs";
        if (job.FittedTyre is { } fitted)
            yield return Tyres(fitted, job.PlacardTyres);
        if (job.Plan.WheelOffset is { } offset)
            yield return $"wheel offset {Offset(offset.BeforeMm)} -> {Offset(offset.AfterMm)}";
        foreach (var (name, before, after) in Ratings(job))
            yield return $"{name} {(before is { } was ? $"{Numbers.Show(was, 0)} -> " : "to ")}{Numbers.Show(after, 0)} kg";
    }

    private static string Offset(Fractions.Fraction? mm) => mm is { } known ? $"{Numbers.Show(known)} mm" : "not known";

    /// <summary>By size; of a size on the placard with load index and speed symbol, which is then what changes.</summary>
    private static string Tyres(TyreSize fitted, ImmutableArray<TyreSize> placard)
    {
        var whole = placard.Any(size => size.Designation == fitted.Designation);
        string Told(TyreSize size) => whole ? size.ToString() : size.Designation;
        return $"tyres {(placard.IsEmpty ? "" : $"{string.Join(" or ", placard.Select(Told))} -> ")}{Told(fitted)}";
    }

    private static IEnumerable<string> Masses(Job job)
    {
        var accessories = job.Plan.Items.Count(item =>
            item.Kind == ItemKind.FixedAccessory && job.Plan.Tanks.All(tank => tank.Path != item.Path)
        );
        if (accessories > 0)
            yield return accessories == 1 ? "1 accessory" : $"{accessories} accessories";
        if (job.Plan.Tanks.Count(tank => tank.Path.StartsWith("modification", StringComparison.Ordinal)) is > 0 and var tanks)
            yield return tanks == 1 ? "1 tank" : $"{tanks} tanks";
        if (job.Plan.Trailer is { } trailer)
            yield return (trailer.MassKg is { } mass ? $"trailer {Numbers.Show(mass, 0)} kg" : "trailer")
                + (trailer.BallKg is { } ball ? $" with {Numbers.Show(ball, 0)} kg on the ball" : "");
        if (job.Plan.Weighed is not null)
            yield return "weighed";
    }

    /// <summary>Ratings are told with what they were.</summary>
    private static bool Stated(string measure) =>
        !measure.StartsWith("new-", StringComparison.Ordinal)
        && measure
            is not (
                "gvm"
                or "gcm"
                or "front-axle"
                or "rear-axle"
                or "ball"
                or "braked-tow"
                or "unbraked-tow"
                or "tare"
                or "trailer-mass"
                or "net-shipping-weight"
                or "declared-gross-weight"
            );

    private static IEnumerable<(string Name, Fractions.Fraction? Before, Fractions.Fraction After)> Ratings(Job job)
    {
        if (job.Plan.Rerated is not { } rerated)
            yield break;
        var was = job.Plan.Ratings;
        if (rerated.GvmKg is { } gvm)
            yield return ("GVM", was.GvmKg, gvm);
        if (rerated.GcmKg is { } gcm)
            yield return ("GCM", was.GcmKg, gcm);
        if (rerated.FrontAxleKg is { } front)
            yield return ("front axle", was.FrontAxleKg, front);
        if (rerated.RearAxleKg is { } rear)
            yield return ("rear axle", was.RearAxleKg, rear);
        if (rerated.BrakedTowKg is { } braked)
            yield return ("braked towing mass", was.BrakedTowKg, braked);
        if (rerated.UnbrakedTowKg is { } unbraked)
            yield return ("unbraked towing mass", was.UnbrakedTowKg, unbraked);
        if (rerated.BallKg is { } ball)
            yield return ("ball load limit", was.BallKg, ball);
    }
}
