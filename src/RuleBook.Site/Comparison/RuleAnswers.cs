using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Limits;
using RuleBook.Site.Views;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Comparison;

/// <summary>What one version of a rule answers for one vehicle.</summary>
internal sealed class RuleAnswers(SiteBook site, ComparedVehicle vehicle, ResolvedVersion version, bool certain, WhereList? where)
{
    public MatrixCell UpTo(Pathway pathway)
    {
        if (version.Content is not Stated stated)
            return Cell([Nothing()], version.Content is NotRegulated ? Standing(Part.NotRegulated) : "", pathway == Pathway.NoCertificate);
        Tier[] open = [.. stated.Tiers.Where(tier => tier.Pathway == pathway && vehicle.Passes(tier.When) != Truth.No)];
        if (open.Length == 0)
            return Without(stated, pathway);
        if (open.All(TierWords.IsOpen))
            return Cell([new MatrixLine("not-established", "", TierWords.Of(site, open[0], named: false), "")], "", true);
        var lines = open.Select(
            (tier, i) =>
                new MatrixLine(
                    TierWords.IsOpen(tier) ? "not-established" : Wording.Of(pathway),
                    open.Length == 1 ? "" : $"{(char)('A' + i)} {Alternatives.Name(tier.Limits, Title)}",
                    TierWords.Of(site, tier, open.Length > 1),
                    Say.When(site.Words, vehicle.Open(tier.When))
                )
        );
        var known = open.SelectMany(tier =>
                tier.Limits.Where(limit => limit.Kind != LimitKind.NotEstablished).Select(limit => version.Evidence.Of(tier, limit))
            )
            .ToArray();
        return Cell(
            [.. lines],
            known.Length > 0 ? Phrases.Standing(known.Aggregate((one, other) => one.And(other))) : Standing(Part.Existence),
            true
        );
    }

    public MatrixCell Beyond()
    {
        if (version.Content is not Stated { Beyond: { } beyond })
            return Cell([Nothing()], "");
        var warned = version.WarningOnly ? "; a breach brings a warning only" : "";
        return Cell([new MatrixLine(Wording.Of(beyond), "", Say.Short(beyond) + warned, "")], Standing(Part.Beyond));
    }

    /// <summary>Which parts are added up.</summary>
    public MatrixCell Counts() =>
        version.Measured is { Total: { IsDefaultOrEmpty: false } parts }
            ? Cell(
                [
                    MatrixLine.Of(
                        string.Join(
                            " + ",
                            parts.Select(part => part == KnownWords.TyreLift ? "half the tyre growth" : site.MeasureTitle(part))
                        )
                    ),
                ],
                ""
            )
            : Cell([Nothing()], "");

    /// <summary>Between which points, at which mass.</summary>
    public MatrixCell Measured()
    {
        if (version.Measured is not { } measured)
            return Cell([Nothing()], "");
        var points =
            measured.Between is { IsDefaultOrEmpty: false } between && between is not ["not-established"]
                ? string.Join(" to ", between.Select(Plain))
                : "points not established";
        var mass = measured.MassState is { } state and not "not-established" ? $"at the {Plain(state)} mass" : "mass not established";
        var isKnown = points != "points not established" || !mass.EndsWith("not established", StringComparison.Ordinal);
        return Cell([isKnown ? MatrixLine.Of($"{points}, {mass}") : Nothing()], isKnown ? Standing(Part.Measured) : "");
    }

    /// <summary>
    /// A pathway that the version does not name for this vehicle: known to be closed only where it says what holds beyond its tiers.
    /// </summary>
    private MatrixCell Without(Stated stated, Pathway pathway) =>
        stated.Beyond switch
        {
            { } beyond when beyond == pathway => Cell(
                [new MatrixLine(Wording.Of(pathway), "", "whatever is not named before", "")],
                Standing(Part.Beyond)
            ),
            { } => Cell([new MatrixLine("limit", "", "no such way", "")], Standing(Part.Beyond)),
            null => Cell([MatrixLine.NotEstablished], ""),
        };

    private MatrixLine Nothing() =>
        version.Content is NotRegulated ? new MatrixLine("not-regulated", "", "not regulated", "") : MatrixLine.NotEstablished;

    private string Standing(Part part) => Phrases.Standing(version.Evidence.Of(part));

    private string Title(string measure) => site.Words.Measures.TryGetValue(measure, out var known) ? known.Title : measure;

    private MatrixCell Cell(MatrixLine[] lines, string standing, bool leads = false) =>
        new(
            lines,
            string.Join(
                ", ",
                new[] { certain ? "" : "day open", version.Disputes.IsEmpty || standing.Length == 0 ? "" : "disputed", standing }.Where(
                    text => text.Length > 0
                )
            ),
            where is not null && (standing.Length > 0 || leads) ? where.Id(version) : "",
            Links.Rule(version.Rule)
        );

    private static string Plain(string word) => word.Replace('-', ' ');
}
