using System.Collections.Immutable;
using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>Applies the exceptions with which a rule is adopted, and the changes by which a version differs from an earlier one.</summary>
internal static class Departures
{
    /// <summary>
    /// The adopted tiers with ends of limits and conditions replaced, tiers dropped, and tiers added after those of the same pathway or
    /// after the one named.
    /// </summary>
    public static Content Apply(Content content, ImmutableArray<Departure> departures) =>
        content is Stated stated ? departures.Aggregate(stated, Apply) : content;

    /// <summary>The content with what its tiers cite named in full, because who takes it over has other sources by the same ids.</summary>
    public static Content Named(Content content, string jurisdiction) =>
        content is Stated stated && stated.Tiers.Any(tier => !tier.Sources.IsEmpty)
            ? stated with
            {
                Tiers =
                [
                    .. stated.Tiers.Select(tier =>
                        tier with
                        {
                            Sources = [.. tier.Sources.Select(citation => Named(citation, jurisdiction))],
                        }
                    ),
                ],
            }
            : content;

    private static Citation Named(Citation citation, string jurisdiction) =>
        citation.Cite.Contains('/', StringComparison.Ordinal) ? citation : citation with { Cite = $"{jurisdiction}/{citation.Cite}" };

    private static Stated Apply(Stated stated, Departure departure)
    {
        if (departure.Added is { } added)
        {
            var at =
                departure.After is { } name && stated.Tiers.LastOrDefault(tier => tier.Name == name) is { } before
                    ? stated.Tiers.LastIndexOf(before) + 1
                    : stated.Tiers.TakeWhile(tier => tier.Pathway <= added.Pathway).Count();
            return stated with { Tiers = stated.Tiers.Insert(at, added) };
        }

        if (departure.Beyond is { } beyond)
            return stated with { Beyond = beyond.Pathway };
        if (departure.Dropped)
            return stated with { Tiers = stated.Tiers.RemoveAll(tier => tier.Name == departure.Tier) };
        var tiers = stated.Tiers.Select(tier => tier.Name == departure.Tier ? Change(tier, departure) : tier);
        // Alternatives that are all given one 'when' are one tier.
        return stated with { Tiers = [.. departure.When is null ? tiers : tiers.DistinctBy(tier => (tier.Name, tier.Mark, tier.When))] };
    }

    private static Tier Change(Tier tier, Departure departure) =>
        tier with
        {
            Limits =
            [
                .. tier.Limits.Select(limit =>
                    departure.Limits.FirstOrDefault(own => own.Measure == limit.Measure) is { } own ? Replace(limit, own) : limit
                ),
                .. departure.Limits.Where(own => tier.Limits.All(limit => limit.Measure != own.Measure)),
            ],
            Pathway = departure.Pathway ?? tier.Pathway,
            When = departure.When ?? tier.When,
            Provided = departure.Provided ?? tier.Provided,
            Codes = departure.Codes ?? tier.Codes,
            Note = departure.Note ?? tier.Note,
            Sources = [.. tier.Sources, .. departure.Sources],
        };

    /// <summary>An end that the exception does not name stays as the adopted rule has it.</summary>
    internal static Limit Replace(Limit adopted, Limit own) =>
        adopted.Bounds is { } theirs && own.Bounds is { } ends
            ? own with
            {
                Bounds = new Bounds(ends.Lower ?? theirs.Lower, ends.Upper ?? theirs.Upper),
            }
            : own;
}
