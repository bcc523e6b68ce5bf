using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>Names what nobody has established in a finding.</summary>
internal static class GapReader
{
    public static IEnumerable<Gap> Read(Finding finding, Jurisdiction place, Vocabulary vocabulary)
    {
        var rule = finding.Version.Rule;
        switch (finding.Version.Content)
        {
            case NotEstablished unknown when finding.Version.From is null && finding.Version.Sources.IsEmpty:
                yield return new Gap(
                    rule.Id,
                    $"nothing is recorded for that day on {Wording.WithinSentence(rule.Title)}",
                    unknown.Ask,
                    unknown.Open
                );
                break;
            case NotEstablished unknown:
                yield return new Gap(
                    rule.Id,
                    $"nobody has established the limits for {Wording.WithinSentence(rule.Title)}",
                    unknown.Ask,
                    unknown.Open
                );
                break;
            case Stated stated:
                var open = stated
                    .Tiers.Where(tier => finding.Judged.Holds(tier) == Truth.Unknown)
                    .SelectMany(tier => tier.Limits.Where(limit => limit.Kind == LimitKind.NotEstablished).Select(limit => (tier, limit)));
                foreach (var (tier, limit) in open)
                    yield return new Gap(
                        rule.Id,
                        $"nobody has established which {vocabulary.Measures[limit.Measure].Title} is {Wording.Spoken(tier.Pathway)}",
                        place.Ask.Name,
                        place.Ask.Url
                    );
                if (stated.Beyond is null && !stated.Tiers.Any(tier => finding.Judged.Holds(tier) == Truth.Yes))
                    yield return new Gap(
                        rule.Id,
                        $"nobody has established what holds beyond the limits for {Wording.WithinSentence(rule.Title)}",
                        place.Ask.Name,
                        place.Ask.Url
                    );
                break;
        }
    }
}
