namespace RuleBook.Benchmarks;

/// <summary>
/// A job of which everything is known that Queensland's rules of ride height and tyres ask for. Lengths in mm, mass in kg, width in per
/// cent.
/// </summary>
public sealed record Job(
    string Category,
    bool FourWheelDrive,
    int Gvm,
    int SuspensionLift,
    int BodyLift,
    int TyreGrowth,
    int TyreWidth,
    int TrackIncrease
)
{
    private static readonly string[] Categories = ["MC", "NA", "NB1", "MA", "MD1"];

    /// <summary>Jobs at the limits and on both sides of them, by chance, the same at each run; each modifies something.</summary>
    public static Job[] Some(int count)
    {
        var random = new Random(20261127);
        int One(params ReadOnlySpan<int> of) => of[random.Next(of.Length)];
        var jobs = new List<Job>();
        while (jobs.Count < count)
        {
            var job = new Job(
                Categories[random.Next(Categories.Length)],
                random.Next(5) > 0,
                One(2900, 3200, 3500, 4500, 4501),
                One(-10, 0, 0, 40, 50, 51, 75, 76, random.Next(160)),
                One(0, 0, 0, 1, 25, 50, 51),
                One(-20, 0, 0, 15, 16, 30, 50, 51, 60),
                One(90, 100, 100, 110, 130, 131, 150, 151),
                One(0, 0, 0, 25, 26, 50, 51)
            );
            if (job.Raises || job.HasOtherTyres)
                jobs.Add(job);
        }

        return [.. jobs];
    }

    /// <summary>Whether it moves what rules of ride height read.</summary>
    public bool Raises => SuspensionLift != 0 || BodyLift != 0 || TyreGrowth != 0;

    /// <summary>Whether it moves what rules of tyres and wheels read.</summary>
    public bool HasOtherTyres => TyreGrowth != 0 || TyreWidth != 100 || TrackIncrease != 0;

    /// <summary>Twice the sum of suspension, body and half the growth of the tyres.</summary>
    public int TwiceTotalLift => (SuspensionLift + BodyLift) * 2 + TyreGrowth;
}
