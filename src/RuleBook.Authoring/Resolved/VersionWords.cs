using System.Globalization;
using System.Text;
using RuleBook.Answers;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Resolved;

/// <summary>What a resolved version says, a line for each thing that can decide.</summary>
internal static class VersionWords
{
    public static void Write(StringBuilder text, ResolvedVersion version, Vocabulary vocabulary)
    {
        if (version.Measured is { } measured)
            text.Append(
                CultureInfo.InvariantCulture,
                $"      measured {Between(measured)}, {measured.MassState ?? "mass state not given"}, total of {Total(version, measured)}\n"
            );
        foreach (var allowance in version.Measured?.Allowances ?? [])
            text.Append(CultureInfo.InvariantCulture, $"      {allowance.Measure} {allowance.Words}\n");
        switch (version.Content)
        {
            case NotRegulated:
                text.Append("      not regulated\n");
                break;
            case NotEstablished unknown:
                text.Append(
                    unknown.Indication is { } indication ? $"      not established; indication {indication}\n" : "      not established\n"
                );
                break;
            case Stated stated:
                foreach (var tier in stated.Tiers)
                    Write(text, version, tier, vocabulary);
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"      beyond: {(stated.Beyond is { } beyond ? Wording.Of(beyond) : "not-established")}\n"
                );
                break;
        }

        if (version.WarningOnly)
            text.Append("      a breach brings a warning only\n");
        foreach (var dispute in version.Disputes)
            text.Append(CultureInfo.InvariantCulture, $"      disputed: {dispute.About}; taken: {dispute.Taken}\n");
        var cites = version
            .Sources.Select(cited =>
                $"{cited.Source.Jurisdiction}/{cited.Source.Id}"
                + $"{(cited.Citation.Clause is { } clause ? $" {clause}" : "")}{Carries(cited.Citation)}"
            )
            .Distinct();
        foreach (var cite in cites)
            text.Append(CultureInfo.InvariantCulture, $"      source: {cite}\n");
    }

    private static void Write(StringBuilder text, ResolvedVersion version, Tier tier, Vocabulary vocabulary)
    {
        text.Append(
            CultureInfo.InvariantCulture,
            $"      {Wording.Of(tier.Pathway)}{(tier.Name == Wording.Of(tier.Pathway) ? "" : $" ({tier.Name})")}"
        );
        if (!tier.When.Tests.IsEmpty)
            text.Append(CultureInfo.InvariantCulture, $" when {LimitWords.Of(tier.When, vocabulary)}");
        if (!tier.Codes.IsEmpty)
            text.Append(CultureInfo.InvariantCulture, $" codes {string.Join(", ", tier.Codes)}");
        text.Append('\n');
        foreach (var limit in tier.Limits)
            text.Append(
                CultureInfo.InvariantCulture,
                $"        {LimitWords.Of(limit, vocabulary)}{Uncited(limit, version.Evidence.Of(tier, limit))}\n"
            );
        foreach (var condition in tier.Provided)
            text.Append(CultureInfo.InvariantCulture, $"        provided {condition}\n");
    }

    private static string Carries(Citation citation) => citation.Carries is { } words ? $"; carries {string.Join(", ", words)}" : "";

    private static string Uncited(Limit limit, Standing standing) =>
        limit.Kind == LimitKind.NotEstablished || standing.Basis is not null ? "" : " (no source)";

    private static string Between(Measured measured) =>
        measured.Between.IsDefaultOrEmpty ? "points not given" : string.Join(" to ", measured.Between);

    private static string Total(ResolvedVersion version, Measured measured) =>
        string.Join(", ", version.Parts) + (measured.Total.IsDefaultOrEmpty ? " (the usual parts; none are stated)" : "");
}
