using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Benchmarks;

/// <summary>The limits that au-qld has on 27 November 2026, as somebody would write them by hand in C#.</summary>
internal static class HandWritten
{
    private static readonly Outcome Within = new(Pathway.NoCertificate, Pathway.NoCertificate);
    private static readonly Outcome Certified = new(Pathway.Certificate, Pathway.Certificate);
    private static readonly Outcome BeyondNoCertificate = new(Pathway.Certificate, Pathway.Prohibited);
    private static readonly Outcome BeyondCertificate = new(Pathway.Approval, Pathway.Prohibited);

    public static Outcome Judge(Job job)
    {
        var verdict = job.Raises ? RideHeight(job) : Within;
        return job.HasOtherTyres ? verdict.And(Tyres(job)) : verdict;
    }

    private static Outcome RideHeight(Job job)
    {
        if (job.Gvm > 4500 || job.SuspensionLift < 0 || !job.FourWheelDrive)
            return Outcome.Open;
        if (job.SuspensionLift <= 50 && job.TyreGrowth <= 50 && job.BodyLift <= 0 && job.TwiceTotalLift <= 150)
            return Within;
        return job.SuspensionLift <= 75 && job.TyreGrowth <= 50 && job.BodyLift <= 50 && job.TwiceTotalLift <= 300
            ? Certified
            : BeyondCertificate;
    }

    private static Outcome Tyres(Job job)
    {
        var open = job.Gvm > 4500 || job.TyreGrowth < 0;
        bool beyond;
        switch (job.Category)
        {
            case "MC" or "NA" or "NB1":
                open |= !job.FourWheelDrive;
                beyond = (job.FourWheelDrive && job.TyreGrowth > 50) || job.TyreWidth > 150 || job.TrackIncrease > 50;
                break;
            case "MA" or "MB":
                beyond = job.TyreGrowth > 15 || job.TyreWidth > 130 || job.TrackIncrease > 25;
                break;
            default:
                return Outcome.Open;
        }

        return beyond ? BeyondNoCertificate
            : open ? Outcome.Open
            : Within;
    }
}
