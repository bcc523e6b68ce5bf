using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Jobs.Reading;

/// <summary>Refuses facts of a job that cannot hold together, naming both places.</summary>
internal sealed class Contradictions(Fields job, Job read)
{
    public static void Find(Fields job, Fields? vehicle, Fields? modification, Job read)
    {
        var find = new Contradictions(job, read);
        if (vehicle is not null)
            find.InVehicle(vehicle);
        find.Combination(vehicle?.Node("ratings") as Mapping, read.Plan.Ratings);
        find.Axles(vehicle?.Node("ratings") as Mapping, read.Plan.Ratings);
        find.Combination(modification?.Node("ratings") as Mapping, read.Plan.Rerated);
        find.Trailer(job.Node("trailer") as Mapping);
    }

    private void InVehicle(Fields vehicle)
    {
        if (read is { Built: { } built, FirstRegistered: { } first } && built.Earliest > first.Latest)
            Refuse(
                vehicle.Node("built"),
                vehicle.Node("first-registered"),
                $"built in {built} and first registered on {first}",
                "a vehicle is built before it is registered"
            );
        var work = (job.Node("dates") as Mapping)?.Find("work");
        if (read is { Built: { } made, Dates.Work: { } day } && work is not null && day < made.Earliest)
            Refuse(
                work,
                vehicle.Node("built"),
                $"the work is done on {day:yyyy-MM-dd} and the vehicle built in {made}",
                "the work comes after the vehicle is built"
            );
        if (
            read.Words.GetValueOrDefault("category") is not { } word
            || read.Plan.Reference.Categories.FirstOrDefault(each => each.Category == word) is not { } category
        )
            return;
        var at = vehicle.Node("category");
        if (read.Plan.Ratings.GvmKg is { } gvm && !category.HasGvm(gvm))
            Refuse(
                at,
                (vehicle.Node("ratings") as Mapping)?.Find("gvm"),
                $"the category is {word}, but the GVM is {Numbers.Show(gvm)} kg",
                $"{word} has {category.GvmWords}"
            );
        if (read.Plan.Seats is { } seats && !category.HasSeats(seats))
            Refuse(
                at,
                vehicle.Node("seats"),
                $"the category is {word}, but there are {seats} seats",
                $"{word} has {category.SeatWords}, the driver's counted"
            );
        if (read.Plan is { TareKg: { } tare, Ratings.GvmKg: { } most } && tare > most)
            Refuse(
                vehicle.Node("tare"),
                (vehicle.Node("ratings") as Mapping)?.Find("gvm"),
                $"the tare of {Numbers.Show(tare)} kg is above the GVM of {Numbers.Show(most)} kg",
                "the GVM is the mass with the load"
            );
    }

    private void Combination(Mapping? at, Ratings? ratings)
    {
        if (at is not null && ratings is { GvmKg: { } gvm, GcmKg: { } gcm } && gcm < gvm)
            Refuse(
                at.Find("gcm"),
                at.Find("gvm"),
                $"the GCM of {Numbers.Show(gcm)} kg is below the GVM of {Numbers.Show(gvm)} kg",
                "the GCM counts the vehicle and its trailer"
            );
    }

    /// <summary>Of the maker's ratings: a GVM asked for above the axle ratings is answered, not refused.</summary>
    private void Axles(Mapping? at, Ratings ratings)
    {
        if (at is not null && ratings is { GvmKg: { } most, FrontAxleKg: { } front, RearAxleKg: { } rear } && front + rear < most)
            Refuse(
                at.Find("gvm"),
                at.Find("front-axle"),
                $"the GVM of {Numbers.Show(most)} kg is above the {Numbers.Show(front + rear)} kg that both axles are rated for",
                "the axle ratings together are not below the GVM"
            );
    }

    private void Trailer(Mapping? trailer)
    {
        if (trailer?.Find("ratings") is Mapping at && read.Plan.Trailer?.Limits is { AtmKg: { } atm, GtmKg: { } gtm } && gtm > atm)
            Refuse(
                at.Find("gtm"),
                at.Find("atm"),
                $"the GTM of {Numbers.Show(gtm)} kg is above the ATM of {Numbers.Show(atm)} kg",
                "the ATM counts the ball load too"
            );
    }

    private void Refuse(Node? here, Node? there, string text, string tip) =>
        job.Add("contradiction", here?.Mark ?? job.Mark, there is null ? text : $"{text} ({there.Mark})", tip);
}
