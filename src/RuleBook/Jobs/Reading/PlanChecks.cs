using RuleBook.Facts;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Finds figures of a job that contradict each other.</summary>
internal static class PlanChecks
{
    public static void Run(Fields job, Fields? vehicle, Fields? modification, Fields? measured, Job read, Vocabulary vocabulary)
    {
        var plan = read.Plan;
        if (plan.Start.Problem is { } start)
            job.Add(
                "contradiction",
                (vehicle?.Node("tare-axles") ?? measured?.Node("weighbridge"))?.Mark ?? job.Mark,
                start,
                "correct the mass or the axles"
            );
        else if (plan.Start.TotalKg is not null && Budgets.Unladen(read).KnownKg is { IsPositive: false } left)
            job.Add(
                "contradiction",
                modification?.Node("accessories")?.Mark ?? job.Mark,
                $"the accessories take off more than the vehicle weighs: {Numbers.Show(left)} kg would be left",
                "correct the tare or what is taken off"
            );
        if (TowingPlans.Of(read).Problem is { } towing)
            job.Add("contradiction", job.Node("trailer")?.Mark ?? job.Mark, towing, "leave one of the three out, or correct it");
        if (plan.Weighed is { } readings && Weighing.Of(readings, plan.WeighedToleranceKg).Error is { } weighing)
            job.Add(
                "contradiction",
                measured!.Node("weighbridge")!.Mark,
                weighing,
                "weigh again, or state measured.uncertainty.weighbridge"
            );
        var occupants = plan.Items.Count(item => item.Kind == ItemKind.Occupant);
        if (plan.Seats is { } seats && occupants > seats)
            job.Add(
                "contradiction",
                job.Node("load")!.Mark,
                $"there are {occupants} occupants, but {seats} seats",
                "correct the seats or the occupants"
            );
        if (Lifts.Contradiction(read) is { } lift && modification?.Node("suspension-lift") is { } stated)
            job.Add("contradiction", stated.Mark, lift, "leave the lift out, or correct one of the two");
        if (
            plan.WheelOffset?.TrackIncreaseMm is { } wider
            && modification?.Node(KnownWords.TrackIncrease) is { } track
            && read.Measures.GetValueOrDefault(KnownWords.TrackIncrease) is { } increase
            && increase.Base != wider
        )
            job.Add(
                "contradiction",
                track.Mark,
                $"the track is stated to grow by {increase}, but the offsets of the wheels give {Numbers.Show(wider)} mm",
                "leave it out, or correct one of the two"
            );
        foreach (var (condition, met) in DecidedConditions.Of(read, vocabulary))
            if (read.Shown.TryGetValue(condition, out var said) && said != met && job.Node("shown") is Mapping shown)
                job.Add(
                    "contradiction",
                    shown.Find(condition)!.Mark,
                    $"{condition} is given as {(said ? "met" : "not met")}, but the figures of the job say otherwise",
                    "leave it out, or correct the figures"
                );
    }
}
