using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Benchmarks;

/// <summary>One line of the same limits for engines that take expressions: what it asks of a job, and what holds then.</summary>
internal sealed record Line(string When, Outcome Outcome)
{
    private const string Within = "SuspensionLift <= 50 && TyreGrowth <= 50 && BodyLift <= 0 && TwiceTotalLift <= 150";
    private const string Certified = "SuspensionLift <= 75 && TyreGrowth <= 50 && BodyLift <= 50 && TwiceTotalLift <= 300";
    private const string Raised = "Raises && Gvm <= 4500 && SuspensionLift >= 0 && FourWheelDrive";
    private const string OffRoadOrGoods = "HasOtherTyres && (Category == \"MC\" || Category == \"NA\" || Category == \"NB1\")";
    private const string Car = "HasOtherTyres && (Category == \"MA\" || Category == \"MB\")";

    private static readonly Outcome BeyondNoCertificate = new(Pathway.Certificate, Pathway.Prohibited);

    /// <summary>All of them; the verdict is the most onerous of those that hold, and no certificate where none does.</summary>
    public static IReadOnlyList<Line> All { get; } =
    [
        new("Raises && Gvm > 4500", Outcome.Open),
        new("Raises && Gvm <= 4500 && SuspensionLift < 0", Outcome.Open),
        new("Raises && Gvm <= 4500 && SuspensionLift >= 0 && !FourWheelDrive", Outcome.Open),
        new($"{Raised} && {Within}", new(Pathway.NoCertificate, Pathway.NoCertificate)),
        new($"{Raised} && !({Within}) && {Certified}", new(Pathway.Certificate, Pathway.Certificate)),
        new($"{Raised} && !({Within}) && !({Certified})", new(Pathway.Approval, Pathway.Prohibited)),
        new("HasOtherTyres && Gvm > 4500", Outcome.Open),
        new($"{OffRoadOrGoods} && (TyreGrowth < 0 || !FourWheelDrive)", Outcome.Open),
        new($"{OffRoadOrGoods} && FourWheelDrive && TyreGrowth > 50", BeyondNoCertificate),
        new($"{OffRoadOrGoods} && TyreWidth > 150", BeyondNoCertificate),
        new($"{OffRoadOrGoods} && TrackIncrease > 50", BeyondNoCertificate),
        new($"{Car} && TyreGrowth < 0", Outcome.Open),
        new($"{Car} && TyreGrowth > 15", BeyondNoCertificate),
        new($"{Car} && TyreWidth > 130", BeyondNoCertificate),
        new($"{Car} && TrackIncrease > 25", BeyondNoCertificate),
        new("HasOtherTyres && Category == \"MD1\"", Outcome.Open),
    ];
}
